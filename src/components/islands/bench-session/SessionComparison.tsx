import { useEffect, useState } from 'preact/hooks';
import {
  compareSessions,
  describeProblem,
  describeSessionComparison,
  isSameLinkage,
} from '../../../calculators/index.ts';
import type { StoredSession } from '../../../device/stored-session.ts';
import { dateWords, sessionName } from './record-words.ts';
import type { Mark } from './words.ts';

type ComparisonProps = {
  readonly sessions: readonly StoredSession[];
  readonly mark: Mark;
  readonly onClose: () => void;
};

/** Two sessions of one engine side by side. Newest first, so the earlier one is the later of a list. */
export function SessionComparison({ sessions, mark, onClose }: ComparisonProps) {
  const partners = (of: StoredSession): readonly StoredSession[] =>
    sessions.filter((other) => other !== of && isSameLinkage(of.head.setUp, other.head.setUp));
  const choices = sessions.filter((session) => partners(session).length > 0);
  const [firstId, setFirst] = useState('');
  const [secondId, setSecond] = useState('');
  useEffect(() => document.getElementById('comparison')?.focus(), []);
  const first = choices.find(({ head }) => head.id === firstId) ?? choices[0];
  const others = first ? partners(first) : [];
  const second =
    others.find(({ head }) => head.id === secondId) ??
    others.find(({ head }) => head.name === first?.head.name) ??
    others[0];
  if (!first || !second) return null;
  const [then, now] = sessions.indexOf(first) > sessions.indexOf(second) ? [first, second] : [second, first];

  return (
    <section class="flow comparison" aria-labelledby="comparison">
      <h2 id="comparison" tabIndex={-1}>
        Two sessions compared
      </h2>
      <Chosen id="compared-first" label="Session" sessions={choices} chosen={first} onChange={setFirst} />
      <Chosen id="compared-second" label="With" sessions={others} chosen={second} onChange={setSecond} />
      {then.head.name !== now.head.name && (
        <p class="text">Their names differ. Compare them only if both are of one engine.</p>
      )}
      <Compared then={then} now={now} mark={mark} />
      <p class="actions">
        <button
          class="button"
          type="button"
          onClick={() => {
            onClose();
            document.getElementById('records')?.focus();
          }}
        >
          Close the comparison
        </button>
      </p>
    </section>
  );
}

function Chosen({
  id,
  label,
  sessions,
  chosen,
  onChange,
}: {
  id: string;
  label: string;
  sessions: readonly StoredSession[];
  chosen: StoredSession;
  onChange: (id: string) => void;
}) {
  return (
    <div class="question">
      <label for={id}>{label}</label>
      <p>
        <select
          id={id}
          class="write long"
          value={chosen.head.id}
          onChange={(event) => onChange(event.currentTarget.value)}
        >
          {sessions.map((session) => (
            <option key={session.head.id} value={session.head.id}>
              {session.head.name
                ? `${dateWords(session.head.startedAt)} · ${sessionName(session)}`
                : sessionName(session)}
            </option>
          ))}
        </select>
      </p>
    </div>
  );
}

function Compared({ then, now, mark }: { then: StoredSession; now: StoredSession; mark: Mark }) {
  const compared = compareSessions(
    { setUp: then.head.setUp, events: then.events },
    { setUp: now.head.setUp, events: now.events },
  );
  if (!compared.ok) return <p class="errors">{describeProblem(compared.problem)}</p>;
  const words = describeSessionComparison(compared.value, now.head.setUp, now.head.unit, mark);
  return (
    <>
      {words.sentences.map((sentence) => (
        <p key={sentence} class="text">
          {sentence}
        </p>
      ))}
      <Columns
        id="compared-carburettors"
        caption={`How far each carburettor stood above (+) or below (−) the mean of all, in ${words.unit}: as found and as left then, what moved from then to now, as found and as left now.`}
        heads={['Carb.', 'found then', 'left then', 'moved', 'found now', 'left now']}
        rows={words.carburettors.map(({ name, found, left, moved }) => [
          name,
          found.then,
          left.then,
          moved,
          found.now,
          left.now,
        ])}
      />
      <Columns
        id="compared-screws"
        caption={`All turns of each screw together, opening (+) or closing (−); and what one turn did, in ${words.unit}, with the range that holds it with 95 %.`}
        heads={['Screw', 'turned then', 'turned now', 'a turn then', 'a turn now']}
        rows={words.screws.map(({ name, turns, effect }) => [
          name,
          turns.then,
          turns.now,
          effect.then,
          effect.now,
        ])}
      />
      <p class="aside">
        Then: {dateWords(then.head.startedAt)}. Now: {dateWords(now.head.startedAt)}.
      </p>
    </>
  );
}

function Columns({
  id,
  caption,
  heads,
  rows,
}: {
  id: string;
  caption: string;
  heads: readonly string[];
  rows: readonly (readonly string[])[];
}) {
  const numeric = (column: number): string => (column === 0 ? '' : 'num');
  return (
    <div>
      <p class="aside text" id={id}>
        {caption}
      </p>
      <table class="table" aria-labelledby={id}>
        <thead>
          <tr>
            {heads.map((head, column) => (
              <th key={head} scope="col" class={numeric(column)}>
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(([name, ...cells]) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              {cells.map((cell, column) => (
                <td key={column} class="num">
                  {cell}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
