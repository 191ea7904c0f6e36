import { useEffect } from 'preact/hooks';
import {
  computeBench,
  describeProblem,
  formatChance,
  formatFixed,
  pressureUnit,
} from '../../../calculators/index.ts';
import type { StoredSession } from '../../../device/stored-session.ts';
import { stripMarks } from '../../../drawing/strip-marks.ts';
import { EstimateTable } from './EstimateTable.tsx';
import { saveTable } from './save-sessions.ts';
import { SavedLine } from './SavedLine.tsx';
import { StripPlot } from './StripPlot.tsx';
import type { BenchActions, BenchState } from './use-bench.ts';
import { generationWords } from './generation-words.ts';
import { dateWords, eventWords, verdictWords } from './record-words.ts';
import { figureWithUnit, type Figures, type Mark } from './words.ts';

/** A session that has ended: its result, its name and notes, and everything that was done. */
export function RecordView({
  session,
  state,
  actions,
  mark,
  onSaveFile,
  onAgain,
  onLeave,
  onRemove,
}: {
  session: StoredSession;
  state: BenchState;
  actions: BenchActions;
  mark: Mark;
  onSaveFile: () => void;
  onAgain: () => void;
  onLeave: () => void;
  onRemove: () => void;
}) {
  const { head, events } = session;
  const setUp = head.setUp;
  const figures: Figures = { unit: head.unit, setUp, mark };
  useEffect(() => document.getElementById('record-title')?.focus(), []);
  const computed = computeBench(setUp, events, head.signOff?.fromEvent ?? null);
  if (!computed.ok) return <p class="errors">{describeProblem(computed.problem)}</p>;
  const bench = computed.value;
  const { estimate, round } = bench;
  const marks = stripMarks(bench, events);

  return (
    <div class="flow record-view">
      <h1 id="record-title" tabIndex={-1}>
        Record of a bench session
      </h1>
      <p class="text">
        {dateWords(head.startedAt)} · {setUp.carburettors} carburettors ·{' '}
        {generationWords[head.generation].toLowerCase()} · depression in {pressureUnit(head.unit).symbol}
        {setUp.targetRpm === undefined ? '' : ` at ${formatFixed(setUp.targetRpm, 0)} rpm`}
      </p>
      <p class="hold">
        {head.signOff?.verdict === 'within'
          ? `Signed off: within ${figureWithUnit(setUp.tolerancePa, figures)}${round?.kind === 'complete' ? `, highest less lowest ${figureWithUnit(round.spreadPa, figures)} in the sign-off round` : ''}. ${formatChance(estimate.chanceWithin)} sure.`
          : `Not signed off as within ${figureWithUnit(setUp.tolerancePa, figures)}: ${head.signOff ? verdictWords[head.signOff.verdict] : 'open'}. Chance ${formatChance(estimate.chanceWithin)}.`}
      </p>
      {head.name && <p class="printed">{`Engine: ${head.name}`}</p>}
      {head.notes && <p class="printed">{`Notes: ${head.notes}`}</p>}
      <div class="question">
        <label for="record-name">Engine, as you call it</label>
        <p>
          <input
            id="record-name"
            class="write long"
            autocomplete="off"
            value={head.name}
            maxLength={200}
            onInput={(event) => actions.changeHead({ name: event.currentTarget.value })}
          />
        </p>
      </div>
      <div class="question">
        <label for="record-notes">Notes</label>
        <p>
          <textarea
            id="record-notes"
            class="write long"
            rows={4}
            value={head.notes}
            maxLength={10_000}
            onInput={(event) => actions.changeHead({ notes: event.currentTarget.value })}
          />
        </p>
      </div>
      <SavedLine saved={state.saved} />
      <p class="actions">
        <button class="button first" type="button" onClick={onSaveFile}>
          Save to a file
        </button>
        <button class="button" type="button" onClick={() => print()}>
          Print the record
        </button>
        <button class="button" type="button" onClick={() => void saveTable([session])}>
          Save as a table (CSV)
        </button>
        <button class="button" type="button" onClick={onAgain}>
          Set up the next session on this engine
        </button>
        <button class="button" type="button" onClick={onLeave}>
          All sessions
        </button>
      </p>
      <StripPlot bench={bench} figures={figures} marks={marks} />
      <EstimateTable marks={marks} figures={figures} />
      {events.some(({ kind }) => kind === 'turn') && (
        <p class="text">
          One turn of a screw does about {figureWithUnit(estimate.effectPaPerTurn, figures)} on this engine;
          its next session starts from that.
        </p>
      )}
      <h2>What was done</h2>
      <ol class="entries numbered">
        {events.map((event, index) => (
          <li key={index}>
            <span class="quiet">{index + 1}</span> <span>{eventWords(event, figures)}</span>
          </li>
        ))}
      </ol>
      <p class="actions">
        <button class="plain" type="button" onClick={() => actions.changeHead({ signOff: null })}>
          Go on with this session
        </button>
        <button class="plain" type="button" onClick={onRemove}>
          Delete this record
        </button>
      </p>
    </div>
  );
}
