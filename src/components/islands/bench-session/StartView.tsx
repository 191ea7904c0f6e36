import { useState } from 'preact/hooks';
import { later } from '../arriving/Later.tsx';
import type { BenchActions, BenchState } from './use-bench.ts';
import type { Removal } from './use-removal.ts';
import type { Mark } from './words.ts';

const Records = later(async () => (await import('./Records.tsx')).default);

/** The sessions of this device, and the ways to begin. */
export function StartView({
  state,
  actions,
  removal,
  mark,
  onSetUp,
}: {
  state: BenchState;
  actions: BenchActions;
  removal: Removal;
  mark: Mark;
  onSetUp: () => void;
}) {
  const [wrong, setWrong] = useState('');
  const [said, setSaid] = useState('');

  const take = async (file: File): Promise<void> => {
    setWrong('');
    setSaid('');
    const { readSessions } = await import('./read-sessions.ts');
    const taken = await readSessions(file, await actions.lookAgain());
    if (taken.changed.length > 0) await actions.addSessions(taken.changed);
    (taken.ok ? setSaid : setWrong)(taken.said);
  };

  return (
    <div class="flow">
      <p class="actions">
        <button class="button first" type="button" disabled={!state.ready} onClick={onSetUp}>
          Set up a session
        </button>
        <label class="button file">
          Read a session from a file
          <input
            type="file"
            accept="application/json,.json"
            onChange={(event) => {
              const [file] = event.currentTarget.files ?? [];
              if (file) void take(file);
              event.currentTarget.value = '';
            }}
          />
        </label>
      </p>
      {wrong !== '' && (
        <p class="wrong" role="alert">
          {wrong}
        </p>
      )}
      <p class="aside said-now" role="status">
        {said}
      </p>
      {state.sessions.length + state.damaged.length + removal.removed.length > 0 && (
        <Records state={state} actions={actions} removal={removal} mark={mark} />
      )}
    </div>
  );
}
