import { useEffect, useMemo, useState } from 'preact/hooks';
import {
  adviceOf,
  benchSetUpOf,
  describeClock,
  describeOffSpeed,
  describeTachometer,
  describeWarmth,
  formatChance,
  lessonOf,
  offSpeedRpm,
  practiceFaults,
  sessionEventsOf,
  workDone,
} from '../../../calculators/index.ts';
import type {
  DescribedExercise,
  NamedFault,
  PracticeFault,
  PracticeFigures,
  PracticeRun,
} from '../../../calculators/index.ts';
import { writeReachedLesson } from '../../../device/reached-lessons.ts';
import { keepScreenOn } from '../../../device/wake-lock.ts';
import { practiceDial } from '../../../drawing/practice-dial.ts';
import { stripMarks } from '../../../drawing/strip-marks.ts';
import { StripPlot } from '../bench-session/StripPlot.tsx';
import { allOf, figureWithUnit } from '../bench-session/words.ts';
import { Dial } from './Dial.tsx';
import { EnginePanel } from './EnginePanel.tsx';
import { FaultForm } from './FaultForm.tsx';
import { GaugePanel } from './GaugePanel.tsx';
import { GoalList } from './GoalList.tsx';
import { MoveLine } from './MoveLine.tsx';
import { PracticeLog } from './PracticeLog.tsx';
import { ScrewPanel } from './ScrewPanel.tsx';
import type { ChosenScrew } from './ScrewPanel.tsx';
import { ThrottleRow } from './ThrottleRow.tsx';
import { usePlay } from './use-play.ts';
import type { WaysToWork } from './WayQuestions.tsx';

interface Props {
  readonly described: DescribedExercise;
  readonly first: PracticeRun;
  readonly figures: PracticeFigures;
  readonly ways: WaysToWork;
  readonly onWays: (ways: WaysToWork) => void;
  readonly onTruth: (run: PracticeRun) => void;
  readonly onLeave: () => void;
}

const sides = [
  ['gauge', 'Gauge'],
  ['screw', 'Screws'],
  ['engine', 'Engine'],
] as const;
type Side = (typeof sides)[number][0];

/** At the running engine: gauge, next move, controls; then goal, fault and log. */
export function EngineView({ described, first, figures, ways, onWays, onTruth, onLeave }: Props) {
  const { engine } = first;
  const dial = useMemo(
    () => practiceDial(engine.gauge.fullScalePa, figures.unit, figures.mark),
    [engine, figures.unit, figures.mark],
  );
  const control = usePlay(first, dial, figures, ways.inWords);
  const { run } = control;
  // Not drawn anew with the figures: its needle is moved past the framework.
  const gauge = useMemo(
    () => (
      <Dial
        dial={dial}
        depressionPa={first.state.needlePa}
        needle={control.needle}
        words="The gauge. Under Engine, the needle can be had in words."
      />
    ),
    [dial],
  );
  const [side, setSide] = useState<Side>('gauge');
  const [screw, setScrew] = useState<ChosenScrew>(1);
  const [roundFrom, setRoundFrom] = useState<number | null>(null);
  const [named, setNamed] = useState<PracticeFault | null>(null);
  useEffect(keepScreenOn, []);
  useEffect(() => document.getElementById('move')?.focus(), []);

  const events = sessionEventsOf(run);
  const work = workDone(run);
  const advice = useMemo(
    () => (ways.beside ? adviceOf(run, roundFrom) : null),
    [ways.beside, events.length, roundFrom],
  );
  const setUp = useMemo(() => benchSetUpOf(engine), [engine]);
  const benchFigures = { ...figures, setUp };
  const goal = useMemo(
    () => (described.lesson === null ? null : lessonOf(described.lesson).goal(run, named)),
    [work, named],
  );
  const reached = goal?.every((part) => part.reached) ?? false;
  useEffect(() => {
    if (reached && described.lesson !== null) writeReachedLesson(described.lesson);
  }, [reached]);

  const warmth = describeWarmth(run.state);
  const offSpeed = describeOffSpeed(offSpeedRpm(run));
  const goTo = (chosen: ChosenScrew): void => {
    setScrew(chosen);
    setSide('screw');
  };
  const name = (fault: NamedFault): void => setNamed(practiceFaults.find((each) => each === fault) ?? null);

  return (
    <div class={`practice on-${side}`}>
      <div class="bar">
        <span>
          <b>{describeClock(run.state.seconds)}</b>
          {control.paused ? ' · paused' : ` · time ×${control.pace}`}
        </span>
        <span class={warmth.state === 'hot' ? 'late' : undefined}>
          {warmth.degrees}, {warmth.state === 'hot' ? 'too hot: fan on, or stop' : warmth.state}
          {run.state.controls.fan && ', fan on'}
        </span>
      </div>
      <div class="instruments">
        {ways.inWords ? (
          <p class="needle-words">
            <button type="button" class="button" onClick={control.lookAtNeedle}>
              Look at the needle
            </button>
          </p>
        ) : (
          gauge
        )}
        <p class="tachometer">
          <output>{describeTachometer(run)}</output>
          <span class="aside">{offSpeed === '' ? 'speed is right' : offSpeed}</span>
        </p>
      </div>
      <MoveLine
        run={run}
        figures={figures}
        advice={advice}
        benchFigures={benchFigures}
        lesson={described.lesson}
        onScrew={goTo}
        onRound={() => setRoundFrom(events.length)}
        onStart={() => control.act(() => ({ kind: 'start' }))}
      />
      <div class="hand-side">
        <ThrottleRow control={control} />
      </div>
      <div class="keys sides" role="group" aria-label="Controls">
        {sides.map(([each, words]) => (
          <button
            key={each}
            type="button"
            class="button"
            aria-pressed={side === each}
            onClick={() => setSide(each)}
          >
            {words}
          </button>
        ))}
      </div>
      <GaugePanel control={control} figures={figures} />
      <ScrewPanel control={control} figures={figures} chosen={screw} onChoose={setScrew} />
      <EnginePanel
        control={control}
        ways={ways}
        onWays={onWays}
        onTruth={() => onTruth(control.runNow())}
        onLeave={onLeave}
      />
      <p class="said" role="status">
        <span key={control.said.number}>{control.said.words}</span>
      </p>
      <div class="proof">
        {goal && <GoalList parts={goal} />}
        {described.faultToFind && <FaultForm fault={engine.fault} onNamed={name} />}
        {advice?.ok && (
          <section aria-labelledby="stand">
            <h2 id="stand">Where the session believes the set stands</h2>
            <StripPlot bench={advice.value} figures={benchFigures} marks={stripMarks(advice.value, events)} />
            {events.length > 0 && (
              <p class="chance">
                <output>{formatChance(advice.value.estimate.chanceWithin)}</output>{' '}
                <span>
                  chance that {allOf(setUp)} are within {figureWithUnit(setUp.tolerancePa, benchFigures)}
                </span>
              </p>
            )}
          </section>
        )}
      </div>
      <PracticeLog run={run} figures={figures} />
    </div>
  );
}
