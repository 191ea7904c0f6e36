import { useEffect, useState } from 'preact/hooks';
import { isSameLinkage } from '../../../calculators/index.ts';
import { eventsInFiles } from '../../../device/sessions-in-files.ts';
import type { StoredSession } from '../../../device/stored-session.ts';
import { later } from '../arriving/Later.tsx';
import { RecordLine } from './RecordLine.tsx';
import { detailsWords, sessionName } from './record-words.ts';
import { saveAll, saveTable } from './save-sessions.ts';
import type { BenchActions } from './use-bench.ts';
import type { Removal } from './use-removal.ts';
import type { Mark } from './words.ts';

const SessionComparison = later(async () => (await import('./SessionComparison.tsx')).SessionComparison);

/** From so many sessions on there is a field to find one. */
const manySessions = 10;

/** The sessions of this device, newest first, and what can be done with them. */
export function RecordList({
  sessions,
  actions,
  removal,
  mark,
}: {
  sessions: readonly StoredSession[];
  actions: BenchActions;
  removal: Removal;
  mark: Mark;
}) {
  const [sought, setSought] = useState('');
  const [comparing, setComparing] = useState(false);
  const [wrong, setWrong] = useState(false);
  const [, setSaved] = useState(0);
  const [gone] = removal.removed;
  useEffect(() => {
    if (gone) document.getElementById(`bring-back-${gone.head.id}`)?.focus();
  }, [gone]);
  if (sessions.length === 0 && removal.removed.length === 0) return null;

  /** What is loaded only when it is wanted may not come. */
  const orSay = (work: Promise<void>): void => {
    setWrong(false);
    void work.then(
      () => setSaved((times) => times + 1),
      () => setWrong(true),
    );
  };
  const phrase = sought.trim().toLowerCase();
  const shown = sessions.filter((session) => {
    const text = `${sessionName(session)} ${detailsWords(session)} ${session.head.notes}`.toLowerCase();
    return text.includes(phrase);
  });
  const inFiles = eventsInFiles();
  const unsaved = sessions.filter(({ head, events }) => events.length > (inFiles.get(head.id) ?? 0)).length;
  const comparable = sessions.some(({ head }, k) =>
    sessions.slice(k + 1).some((other) => isSameLinkage(head.setUp, other.head.setUp)),
  );

  return (
    <section class="flow" aria-labelledby="records">
      <h2 id="records" tabIndex={-1}>
        Sessions on this device
      </h2>
      {removal.removed.map((session) => (
        <p key={session.head.id} class="actions">
          <span>“{sessionName(session)}” is deleted.</span>
          <button
            id={`bring-back-${session.head.id}`}
            class="button"
            type="button"
            onClick={() =>
              void removal.bringBack(session).then(() => document.getElementById('records')?.focus())
            }
          >
            Bring back<span class="unseen"> {sessionName(session)}</span>
          </button>
          <span class="quiet">Until this page is left.</span>
        </p>
      ))}
      {unsaved > 0 && (
        <p class="aside">
          {unsaved === 1
            ? 'One session is in no file yet, or has gone on since.'
            : `${unsaved} sessions are in no file yet, or have gone on since.`}{' '}
          What is only in a browser can vanish.
        </p>
      )}
      {sessions.length > manySessions && (
        <div class="question">
          <label for="sought">Find a session</label>
          <p>
            <input
              id="sought"
              class="write long"
              type="search"
              autocomplete="off"
              value={sought}
              onInput={(event) => setSought(event.currentTarget.value)}
            />
          </p>
          <p class="quiet" role="status">
            {phrase === '' ? '' : `${shown.length} of ${sessions.length} sessions.`}
          </p>
        </div>
      )}
      <ul class="records">
        {shown.map((session) => (
          <RecordLine key={session.head.id} session={session} actions={actions} removal={removal} />
        ))}
      </ul>
      {sessions.length > 0 && (
        <p class="actions">
          <button class="button" type="button" onClick={() => orSay(saveAll(sessions))}>
            Save all to one file
          </button>
          <button class="button" type="button" onClick={() => orSay(saveTable(sessions))}>
            Save all as a table (CSV)
          </button>
          {comparable && !comparing && (
            <button class="button" type="button" onClick={() => setComparing(true)}>
              Compare two sessions
            </button>
          )}
        </p>
      )}
      {wrong && (
        <p class="wrong" role="alert">
          This part of the page did not load. Try once more, or load the page again.
        </p>
      )}
      {comparing && comparable && (
        <SessionComparison sessions={sessions} mark={mark} onClose={() => setComparing(false)} />
      )}
    </section>
  );
}
