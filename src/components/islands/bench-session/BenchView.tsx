import { useEffect, useMemo, useState } from 'preact/hooks';
import {
  benchDefaults,
  computeBench,
  describeProblem,
  describeTurnSize,
  expectedAfterTurn,
  formatChance,
  formatFixed,
  formatPressure,
  settleComma,
  stopTimer,
  type Problem,
} from '../../../calculators/index.ts';
import { nowMs, nowText } from '../../../device/clock.ts';
import type { SessionHead, StoredSession } from '../../../device/stored-session.ts';
import { siteAddress } from '../../../device/site-address.ts';
import { keepScreenOn } from '../../../device/wake-lock.ts';
import { stripMarks } from '../../../drawing/strip-marks.ts';
import { Bar } from './Bar.tsx';
import { Entry } from './Entry.tsx';
import { EstimateTable } from './EstimateTable.tsx';
import { Log } from './Log.tsx';
import { MoveSection } from './MoveSection.tsx';
import { ReadPanel } from './ReadPanel.tsx';
import { NotSavedBanner, SavedLine } from './SavedLine.tsx';
import { StepActions } from './StepActions.tsx';
import { StripPlot } from './StripPlot.tsx';
import { ThreadTable } from './ThreadTable.tsx';
import { TurnForm } from './TurnForm.tsx';
import { UnwatchedQuestion } from './UnwatchedQuestion.tsx';
import type { BenchActions, BenchState } from './use-bench.ts';
import { useEngineTime } from './use-engine-time.ts';
import { useEntry } from './use-entry.ts';
import { allOf, figure, figureWithUnit, screwName, type Figures, type Mark } from './words.ts';
import { WrongWayQuestion } from './WrongWayQuestion.tsx';

type Props = {
  readonly session: StoredSession;
  readonly state: BenchState;
  readonly actions: BenchActions;
  readonly mark: Mark;
  readonly onEnd: () => void;
  readonly onLeave: () => void;
  readonly onSaveFile: () => void;
};

/** The bench at the running engine: move, reading, keys; then proof and log. */
export function BenchView({ session, state, actions, mark, onEnd, onLeave, onSaveFile }: Props) {
  const { head, events } = session;
  const setUp = head.setUp;
  const figures: Figures = { unit: head.unit, setUp, mark };
  const fromEvent = head.signOff?.fromEvent ?? null;
  // Not anew for every key: only events, set-up and round change what the bench says.
  const computed = useMemo(() => computeBench(setUp, events, fromEvent), [setUp, events, fromEvent]);
  const entry = useEntry(session, computed.ok ? computed.value.step : null, actions);
  const [panel, setPanel] = useState<'turn' | 'read' | null>(null);
  const [believedEvents, setBelievedEvents] = useState<number | null>(null);
  const [systemKeyboard, setSystemKeyboard] = useState(false);
  useEffect(keepScreenOn, []);
  useEngineTime(head.timer, actions);
  useEffect(() => setPanel(null), [events.length]);
  if (!computed.ok) return <p class="errors">{describeProblem(computed.problem)}</p>;

  const bench = computed.value;
  const { step, estimate } = bench;
  const wrongWay = believedEvents === events.length ? null : bench.wrongWay;
  const { turn, insteadTurn, carburettor } = entry;
  const expected = !turn
    ? null
    : insteadTurn
      ? expectedAfterTurn(setUp, events, turn.screw, turn.turns)
      : (entry.stepTurn?.expectedDepressionPa ?? null);
  const expectedPa = carburettor === null ? undefined : expected?.[carburettor - 1];
  const marks = stripMarks(bench, events);
  const inWords = (problem: Problem | null, typed: string): string | null =>
    problem &&
    describeProblem(problem, { typed, formatPressure: (pascals) => formatPressure(pascals, head.unit) });

  const startRound = (): void =>
    actions.changeHead({ signOff: { fromEvent: events.length, verdict: 'under-way' } });
  const end = (verdict: 'within' | 'not-within'): void => {
    const fromEvent = head.signOff?.fromEvent ?? events.length;
    actions.changeHead({
      signOff: { fromEvent, verdict, at: nowText() },
      timer: stopTimer(head.timer, nowMs()),
    });
    onEnd();
  };

  return (
    <div class="bench">
      <Bar head={head} bench={bench} figures={figures} actions={actions} />
      <MoveSection
        bench={bench}
        figures={figures}
        wrongWay={wrongWay}
        shown={state.shown}
        onAmount={() => setPanel('turn')}
      />
      <div class="entry-side">
        <NotSavedBanner saved={state.saved} onSaveFile={onSaveFile} onTryAgain={actions.tryAgain} />
        <UnwatchedQuestion timer={head.timer} unwatchedMs={state.unwatchedMs} actions={actions} />
        {wrongWay ? (
          <WrongWayQuestion
            session={session}
            wrongWay={wrongWay}
            actions={actions}
            onBelieve={() => setBelievedEvents(events.length)}
          />
        ) : (
          <StepActions
            step={step}
            onRound={startRound}
            onSign={() => end('within')}
            onRead={() => setPanel('read')}
            onEnd={() => end('not-within')}
          />
        )}
        {panel === 'turn' && (
          <TurnForm
            setUp={setUp}
            first={turn ?? { screw: 1, turns: benchDefaults.trialTurns }}
            verb="Take this"
            onTake={(taken) => {
              entry.turnInstead(taken);
              setPanel(null);
            }}
            onLeave={() => setPanel(null)}
          />
        )}
        {panel === 'read' && (
          <ReadPanel
            carburettors={estimate.depressionPa.map((_, i) => i + 1)}
            onTake={(chosen) => {
              entry.readInstead(chosen);
              setPanel(null);
            }}
          />
        )}
        {insteadTurn && (
          <p class="aside" role="status">
            To be recorded: {insteadTurn.turns < 0 ? 'closed' : 'opened'}{' '}
            {screwName(setUp, insteadTurn.screw)} by {describeTurnSize(insteadTurn.turns)}.
          </p>
        )}
        {!wrongWay && carburettor !== null && (
          <Entry
            carburettor={carburettor}
            expected={expectedPa === undefined ? null : figure(expectedPa, figures)}
            typed={entry.typed}
            wrong={inWords(entry.problem, entry.typed)}
            question={
              entry.problem?.kind === 'ambiguous-number'
                ? (['grouped', 'decimal'] as const).map((meant) => ({
                    label: settleComma(entry.typed, meant),
                    choose: () => entry.record(settleComma(entry.typed, meant)),
                  }))
                : []
            }
            unit={head.unit}
            mark={mark}
            records={turn ? (entry.typed === '' ? 'the turn' : 'turn and reading') : 'reading'}
            undoes={entry.typed === '' ? `event ${events.length}` : 'last key'}
            canUndo={entry.canUndo}
            systemKeyboard={systemKeyboard}
            speed={
              setUp.targetRpm === undefined
                ? null
                : {
                    typed: entry.speed,
                    target: formatFixed(setUp.targetRpm, 0),
                    wrong: inWords(entry.speedProblem, entry.speed),
                  }
            }
            field={entry.field}
            onType={entry.setTyped}
            onSpeed={entry.setSpeed}
            onUnit={(unit) => actions.changeHead({ unit: unit as SessionHead['unit'] })}
            onUndo={entry.undo}
            onRecord={() => entry.record()}
          />
        )}
      </div>

      <div class="proof">
        <section aria-labelledby="stand">
          <h2 id="stand">Where the set stands</h2>
          <StripPlot bench={bench} figures={figures} marks={marks} />
          <p class="aside">Solid: now. Hollow: before the last turn. Arrow: this move. Line: 95 % sure.</p>
          {bench.believable && (
            <p class="aside">
              A reading of {bench.believable.carburettor} from {figure(bench.believable.lowestPa, figures)} to{' '}
              {figure(bench.believable.highestPa, figures)} goes with all that is known; another is asked for
              again.
            </p>
          )}
          {marks.length > 0 && <EstimateTable marks={marks} figures={figures} />}
          <p class="chance">
            <output>{formatChance(estimate.chanceWithin)}</output>{' '}
            <span>
              chance that {allOf(setUp)} are within {figureWithUnit(setUp.tolerancePa, figures)}. Done at{' '}
              {formatChance(bench.confidence)}.
            </span>
          </p>
        </section>
        <section aria-labelledby="thread">
          <h2 id="thread">Thread left, in turns</h2>
          <ThreadTable turnsLeft={estimate.turnsLeft} figures={figures} />
        </section>
      </div>

      <section class="log" aria-labelledby="log-title">
        <h2 id="log-title">Log</h2>
        <Log events={events} figures={figures} onUndo={entry.undo} onCorrect={actions.correct} />
        <SavedLine saved={state.saved} lasting={state.lasting} />
        <p class="options">
          <button class="plain" type="button" onClick={() => setPanel('read')}>
            Read another carburettor
          </button>{' '}
          <button class="plain" type="button" onClick={() => setPanel('turn')}>
            I turned something else
          </button>{' '}
          <button
            class="plain"
            type="button"
            aria-pressed={systemKeyboard}
            onClick={() => setSystemKeyboard(!systemKeyboard)}
          >
            Use the phone’s keyboard
          </button>{' '}
          <button class="plain" type="button" onClick={onSaveFile}>
            Save to a file
          </button>{' '}
          <button class="plain" type="button" onClick={() => print()}>
            Print the record
          </button>{' '}
          <button class="plain" type="button" onClick={onLeave}>
            Leave the bench
          </button>{' '}
          <button class="plain" type="button" onClick={() => end('not-within')}>
            End without signing off
          </button>{' '}
          <a class="plain" href={siteAddress('/safety/')}>
            Safety
          </a>
        </p>
      </section>
    </div>
  );
}
