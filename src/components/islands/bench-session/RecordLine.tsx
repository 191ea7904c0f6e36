import { useEffect, useState } from 'preact/hooks';
import { isEnded, type StoredSession } from '../../../device/stored-session.ts';
import { Field } from './Field.tsx';
import { detailsWords, sessionName } from './record-words.ts';
import type { BenchActions } from './use-bench.ts';
import type { Removal } from './use-removal.ts';

/** A session of the list: open, rename, delete. */
export function RecordLine({
  session,
  actions,
  removal,
}: {
  session: StoredSession;
  actions: BenchActions;
  removal: Removal;
}) {
  const { head } = session;
  const [name, setName] = useState<string | null>(null);
  const field = `name-${head.id}`;
  const renaming = name !== null;
  useEffect(() => {
    if (renaming) document.getElementById(field)?.focus();
  }, [renaming]);
  const called = sessionName(session);
  const close = (): void => {
    setName(null);
    document.getElementById(`rename-${head.id}`)?.focus();
  };
  const keep = async (): Promise<void> => {
    await actions.rename(head.id, name?.trim() ?? '');
    close();
  };

  return (
    <li>
      <button class="plain name" type="button" onClick={() => actions.open(session)}>
        {isEnded(head) ? 'Show' : 'Go on with'} {called}
      </button>
      <span class="quiet">{detailsWords(session)}</span>
      <span class="doings">
        <button
          id={`rename-${head.id}`}
          class="plain"
          type="button"
          aria-expanded={renaming}
          onClick={() => setName(renaming ? null : head.name)}
        >
          Rename<span class="unseen"> {called}</span>
        </button>{' '}
        <button class="plain" type="button" onClick={() => void removal.remove(session)}>
          Delete<span class="unseen"> {called}</span>
        </button>
      </span>
      {renaming && (
        <form
          class="panel"
          onSubmit={(event) => {
            event.preventDefault();
            void keep();
          }}
        >
          <Field
            id={field}
            label="Engine, as you call it"
            wrong={undefined}
            value={name}
            long
            onInput={setName}
          />
          <p class="actions">
            <button class="button first" type="submit">
              Keep this name
            </button>
            <button class="button" type="button" onClick={close}>
              Leave it
            </button>
          </p>
        </form>
      )}
    </li>
  );
}
