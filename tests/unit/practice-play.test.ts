import { describe, expect, test } from 'vitest';
import {
  adviceOf,
  benchSetUpOf,
  continueReplay,
  countedThread,
  countedTurns,
  idleThread,
  inventEngine,
  isSettled,
  mostHand,
  nudgeHand,
  nudgeTap,
  offSpeedRpm,
  passTime,
  playAction,
  playFor,
  playReading,
  practiceEngineExample,
  practicePaces,
  practiceSteps,
  pressVent,
  startPlay,
  startReplay,
  startRun,
  truthAt,
  ventPressSeconds,
  workDone,
} from '../../src/calculators/index.ts';
import type { Exercise, Play, PracticeAction, PracticeRun, Replay } from '../../src/calculators/index.ts';
import { stepSeconds, warmK } from '../../src/calculators/practice/constants.ts';
import { valueOfChecked } from '../../src/calculators/value-of-checked.ts';
import { mmHg } from '../engine/invented.ts';

const begin = (change: Partial<Exercise> = {}): PracticeRun => {
  const exercise = { ...practiceEngineExample, ...change };
  return startRun(exercise, valueOfChecked(inventEngine(exercise)));
};
const doing = (play: Play, ...actions: PracticeAction[]): Play =>
  actions.reduce((before, action) => playAction(before, action).play, play);

describe('time for the person', () => {
  test.each(practicePaces)('frames of a screen add up to the engine’s time at %i times', (pace) => {
    const first = startPlay(begin());
    let play = first;
    for (let frame = 0; frame < 90; frame += 1) play = playFor(play, 1 / 60, pace);
    expect(play.owedSeconds).toBeGreaterThanOrEqual(0);
    expect(play.owedSeconds).toBeLessThan(stepSeconds);
    expect(play.run.state.seconds + play.owedSeconds).toBeCloseTo(1.5 * pace, 9);
    // The same steps in one go give the same engine to the last digit.
    expect(play.run.state).toEqual(passTime(first.run, play.run.state.seconds).state);
  });

  test('a frame shorter than a step passes nothing, and is owed', () => {
    const first = startPlay(begin());
    const play = playFor(first, stepSeconds / 2, 1);
    expect(play.run).toBe(first.run);
    expect(play.owedSeconds).toBe(stepSeconds / 2);
    expect(playFor(play, stepSeconds / 2, 1).run.state.seconds).toBe(stepSeconds);
  });
});

test('the vent springs shut, and the line is empty by then', () => {
  const shut = doing(startPlay(passTime(begin(), 2)), { kind: 'select', cylinder: null });
  const pressed = pressVent(shut);
  expect(pressed.run.state.controls.venting).toBe(true);
  const halfway = playFor(pressed, ventPressSeconds / 2, 1);
  expect(halfway.run.state.controls.venting).toBe(true);
  const after = playFor(halfway, ventPressSeconds / 2, 1);
  expect(after.run.state.controls.venting).toBe(false);
  expect(after.ventShutsAt).toBeNull();
  const { engine, state } = after.run;
  expect(engine.ambientPa - state.linePa).toBeLessThan(engine.gauge.resolutionPa / 100);
  expect(playFor(after, 1, 1).run.entries).toHaveLength(after.run.entries.length);
});

test('hand and tap are nudged within their ranges', () => {
  const { hand, tap } = practiceSteps;
  let play = startPlay(begin());
  const nudge = (by: number) => (play = doing(play, nudgeHand(play, by)));
  nudge(-hand.fine);
  expect(play.run.state.controls.hand).toBe(0);
  nudge(hand.coarse);
  nudge(-hand.fine);
  expect(play.run.state.controls.hand).toBeCloseTo(hand.coarse - hand.fine, 12);
  nudge(5);
  expect(play.run.state.controls.hand).toBe(mostHand);
  play = doing(play, nudgeTap(play, tap));
  expect(play.run.state.controls.tap).toBe(1);
  play = doing(play, nudgeTap(play, -tap));
  expect(play.run.state.controls.tap).toBeCloseTo(1 - tap, 12);
});

test('a needle is settled a second after the last action, once its middle stands', () => {
  expect(isSettled(begin())).toBe(false);
  expect(isSettled(passTime(begin(), 30))).toBe(true);
  const still = doing(startPlay(begin()), { kind: 'tap', opening: 0.15 });
  expect(isSettled(still.run)).toBe(false);
  const settled = playFor(still, 15, 1);
  expect(isSettled(settled.run)).toBe(true);
  const moved = doing(settled, { kind: 'hand', reach: 0.2 });
  expect(isSettled(moved.run)).toBe(false);
  expect(isSettled(playFor(moved, 1.2, 1).run)).toBe(false);
  expect(isSettled(playFor(moved, 15, 1).run)).toBe(true);
  expect(offSpeedRpm(begin())).toBe(1100 - begin().engine.targetRpm);
});

describe('a settled needle', () => {
  const run = begin();
  const { resolutionPa } = run.engine.gauge;
  /** What the eye saw in the first and in the second half of the last second, in steps of the gauge. */
  const saw = (before: readonly number[], after: readonly number[], seconds = 5): PracticeRun => ({
    ...run,
    state: {
      ...run.state,
      seconds,
      watched: [before, after].flatMap((seen) =>
        Array.from({ length: 25 }, (_, k) => seen[k % seen.length]! * resolutionPa),
      ),
    },
  });

  test('may swing as far as it likes, if the middle of its swing stands', () => {
    expect(isSettled(saw([40, 46], [40, 46]))).toBe(true);
    expect(isSettled(saw([40, 46], [42, 44]))).toBe(true);
    expect(isSettled(saw([40, 46], [40, 44]))).toBe(false);
    expect(isSettled(saw([40, 46], [42, 46]))).toBe(false);
  });

  test('has moved by less than half a step, up or down', () => {
    expect(isSettled(saw([40], [40.4]))).toBe(true);
    expect(isSettled(saw([40], [40.6]))).toBe(false);
    expect(isSettled(saw([40], [39.6]))).toBe(true);
    expect(isSettled(saw([40], [39.4]))).toBe(false);
  });

  test('is watched for a whole second after the last of all actions', () => {
    expect(isSettled(saw([40], [40], 0.99))).toBe(false);
    expect(isSettled(saw([40], [40], 1))).toBe(true);
    const at = (seconds: number) => ({
      ...doing(startPlay(begin()), { kind: 'select', cylinder: 1 }).run.entries[0]!,
      seconds,
    });
    const entries = [at(1), at(2), at(9.5)];
    expect(isSettled({ ...saw([40], [40], 10), entries })).toBe(false);
    expect(isSettled({ ...saw([40], [40], 11), entries })).toBe(true);
  });
});

test('turns are counted as they were made; what a nut dragged stays unseen', () => {
  const play = doing(
    startPlay(begin({ fault: 'slipped-nut', grade: 4 })),
    { kind: 'turn', screw: 1, turns: 0.5 },
    { kind: 'loosen', screw: 1 },
    { kind: 'turn', screw: 1, turns: 0.25 },
    { kind: 'turn', screw: 1, turns: -0.125 },
    { kind: 'tighten', screw: 1, held: false },
    { kind: 'idle-screw', turns: -1 },
  );
  const { engine, state } = play.run;
  expect(countedTurns(playReading(play).run)).toEqual([0.125, 0, 0, 0]);
  expect(countedTurns(play.run)).toEqual([0.125, 0, 0, 0]);
  expect(state.controls.screwTurns[0]).not.toBe(0.125);
  const [thread] = engine.screws.map((screw) => screw.thread);
  expect(countedThread(play.run)[0]).toEqual({
    closing: thread!.closing + 0.125,
    opening: thread!.opening - 0.125,
  });
  expect(idleThread(play.run)).toEqual({ closing: 5, opening: 7 });
  expect(workDone(play.run)).toBe(5);
});

test('a reading needs a selector that connects something', () => {
  const shut = doing(startPlay(begin()), { kind: 'select', cylinder: null });
  expect(playReading(shut)).toBe(shut);
  const read = playReading(doing(shut, { kind: 'select', cylinder: 2 }));
  expect(read.run.entries.at(-1)).toMatchObject({ kind: 'reading', cylinder: 2 });
});

test('the bench session beside it asks for what was not read, and knows the carburettor without a screw', () => {
  const run = begin({ generation: 'fixed-reference' });
  const setUp = benchSetUpOf(run.engine);
  expect(setUp.fixed).toBe(run.engine.fixed);
  expect(setUp.opens).toEqual(setUp.screws.map(() => 'anticlockwise'));
  expect(benchSetUpOf(begin().engine)).not.toHaveProperty('fixed');
  expect(valueOfChecked(adviceOf(run, null)).step).toMatchObject({ kind: 'read', carburettor: 1 });
  const read = playReading(startPlay(passTime(run, 3))).run;
  expect(valueOfChecked(adviceOf(read, null)).step).toMatchObject({ kind: 'read', carburettor: 2 });
});

test('the replay warms the same engine up, levels it, and tells where it truly stood', () => {
  const run = begin({ grade: 2, carburettors: 2, generation: 'separate-cables' });
  const { engine } = run;
  let replay = startReplay(run);
  let slices = 0;
  for (; replay.phase === 'warming'; slices += 1) replay = continueReplay(engine, replay);
  expect(slices).toBeGreaterThan(5);
  expect(replay.state.metalK).toBeGreaterThanOrEqual(warmK);
  expect(replay.state.controls.fan).toBe(true);
  for (; replay.phase === 'working'; slices += 1) replay = continueReplay(engine, replay);
  expect(replay.phase).toBe('done');
  expect(continueReplay(engine, replay)).toEqual(replay);
  const { spreadPa, depressionsPa } = replay.steps.at(-1)!;
  expect(spreadPa).toBeLessThan(engine.tolerancePa);
  expect(depressionsPa).toEqual(truthAt(run, replay.state.controls.screwTurns).depressionsPa);
  expect(replay.steps[0]!.depressionsPa).toEqual(truthAt(run, [0, 0]).depressionsPa);
});

describe('a slice of the replay', () => {
  const run = begin({ grade: 3, carburettors: 2, generation: 'fixed-reference' });
  const { engine } = run;
  const warm: Replay = { ...startReplay(run), state: { ...startReplay(run).state, metalK: warmK + 1 } };
  const working = continueReplay(engine, warm);

  test('begins to work once the engine is warm', () => {
    expect(working.phase).toBe('working');
    expect(working.steps).toEqual([]);
  });

  test('tells after a reading where the cylinders stood before it, and after a turn where they stand now', () => {
    let replay = working;
    while (replay.steps.at(-1)?.event.kind !== 'turn') replay = continueReplay(engine, replay);
    expect(replay.steps.map(({ event }) => event.kind).slice(0, 2)).toEqual(['reading', 'reading']);
    const before = truthAt(run, [0]);
    const after = truthAt(run, replay.state.controls.screwTurns);
    expect(before.spreadPa).not.toBe(after.spreadPa);
    for (const { event, depressionsPa, spreadPa } of replay.steps) {
      const truth = event.kind === 'turn' ? after : before;
      expect(depressionsPa).toEqual(truth.depressionsPa);
      expect(spreadPa).toBe(truth.spreadPa);
    }
    const again = continueReplay(engine, replay);
    expect(again.steps.at(-1)!.event.kind).toBe('reading');
    expect(again.steps.at(-1)!.depressionsPa).toEqual(after.depressionsPa);
  });

  test('keeps the hottest that the metal has been', () => {
    const cold = startReplay(run);
    const warming = continueReplay(engine, cold);
    expect(warming.hottestK).toBe(warming.state.metalK);
    expect(warming.hottestK).toBeGreaterThan(cold.hottestK);
    expect(continueReplay(engine, { ...cold, hottestK: 500 }).hottestK).toBe(500);
    expect(continueReplay(engine, { ...working, hottestK: 500 }).hottestK).toBe(500);
    const hotter = continueReplay(engine, { ...working, hottestK: 300 });
    expect(hotter.hottestK).toBe(hotter.state.metalK);
  });

  test('changes nothing any more once the advice has said done or stop', () => {
    for (const phase of ['done', 'stop'] as const) {
      const ended: Replay = { ...working, phase };
      expect(continueReplay(engine, ended)).toBe(ended);
    }
  });

  test('ends where the advice says stop', () => {
    // Neither so coarse a gauge nor twelve readings of each settle whether they lie so close.
    const coarse = {
      ...engine,
      tolerancePa: 0.5 * mmHg,
      gauge: { ...engine.gauge, resolutionPa: 20 * mmHg, flutterPa: 20 * mmHg },
    };
    const steps = Array.from({ length: 24 }, (_, k) => ({
      event: {
        kind: 'reading',
        carburettor: 1 + (k % 2),
        depressionPa: (k % 4 < 2 ? 240 : 245) * mmHg,
      } as const,
      depressionsPa: [240 * mmHg, 245 * mmHg],
      spreadPa: 5 * mmHg,
    }));
    const replay: Replay = { ...working, steps };
    expect(continueReplay(coarse, replay)).toEqual({ ...replay, phase: 'stop' });
  });
});
