import { useState } from 'preact/hooks';
import { formatExact, plainLine } from '../../../calculators/index.ts';
import { largestRecordBytes, readRecordFile, type RecordFault } from '../../../device/session-record.ts';
import type { StoredSession } from '../../../device/stored-session.ts';
import { DamagedSessions } from './DamagedSessions.tsx';
import { storedFrom } from './sessions.ts';
import type { BenchActions, BenchState } from './use-bench.ts';
import { generationWords } from './generation-words.ts';
import { dateWords, verdictWords } from './record-words.ts';

const faultWords = (fault: RecordFault, file: string): string => {
  switch (fault.kind) {
    case 'too-large':
      return `“${file}” is larger than a session can be (${formatExact(largestRecordBytes)} bytes). Nothing was changed.`;
    case 'empty':
      return `“${file}” is empty. Nothing was changed.`;
    case 'unreadable':
      return `“${file}” could not be read. Choose it once more. Nothing was changed.`;
    case 'not-text':
    case 'not-json':
    case 'not-a-session':
      return `“${file}” is not a session that was saved here. Nothing was changed.`;
    case 'newer':
      return `“${file}” was written by a newer version of this site (form ${formatExact(fault.schema)}). Open it with a page that is up to date. Nothing was changed.`;
    case 'field':
      return `“${file}” is damaged: ${fault.field} is not what it should be. Nothing was changed.`;
    case 'checksum':
      return `“${file}” is damaged: its checksum does not fit its content. Nothing was changed.`;
  }
};

/** The sessions of this device, and the ways to begin. */
export function StartView({
  state,
  actions,
  onSetUp,
}: {
  state: BenchState;
  actions: BenchActions;
  onSetUp: () => void;
}) {
  const [wrong, setWrong] = useState<string | null>(null);
  const [said, setSaid] = useState('');

  const take = async (file: File): Promise<void> => {
    setWrong(null);
    const read = await readRecordFile(file);
    if (!read.ok) return setWrong(faultWords(read.fault, plainLine(file.name)));
    const known = state.sessions.find(({ head }) => head.id === read.record.id);
    if (known && known.events.length > read.record.events.length)
      return setWrong(
        `The session in “${plainLine(file.name)}” is here already, with more entries. Nothing was changed.`,
      );
    await actions.addSession(storedFrom(read.record));
    setSaid('Read from the file.');
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
      {wrong !== null && (
        <p class="wrong" role="alert">
          {wrong}
        </p>
      )}
      <p class="unseen" role="status">
        {said}
      </p>
      {state.sessions.length > 0 && (
        <section aria-labelledby="records">
          <h2 id="records">Sessions on this device</h2>
          <ul class="records">
            {state.sessions.map((session) => (
              <SessionLine key={session.head.id} session={session} onOpen={() => actions.open(session)} />
            ))}
          </ul>
        </section>
      )}
      <DamagedSessions damaged={state.damaged} />
    </div>
  );
}

function SessionLine({ session: { head, events }, onOpen }: { session: StoredSession; onOpen: () => void }) {
  const name = plainLine(head.name); // a file may bring one that turns the line around
  const ended = head.signOff !== null && head.signOff.verdict !== 'under-way';
  return (
    <li>
      <button class="plain" type="button" onClick={onOpen}>
        {ended ? 'Show' : 'Go on with'} {name || dateWords(head.startedAt)}
      </button>
      <span class="quiet">
        {name ? `${dateWords(head.startedAt)} · ` : ''}
        {head.setUp.carburettors} carburettors · {generationWords[head.generation].toLowerCase()} ·{' '}
        {events.length} entries · {head.signOff ? verdictWords[head.signOff.verdict] : 'open'}
      </span>
    </li>
  );
}
