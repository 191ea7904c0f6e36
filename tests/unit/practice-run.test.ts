import { describe, expect, test } from 'vitest';
import {
  bringSpeedBack,
  firstState,
  inventEngine,
  passTime,
  perform,
  practiceEngineExample,
  reviewRun,
  sessionEventsOf,
  startRun,
  trueSpreadPa,
  truthAt,
  workDone,
  writeReading,
} from '../../src/calculators/index.ts';
import type { Exercise, PracticeAction, PracticeEngine, PracticeRun } from '../../src/calculators/index.ts';
import { tooHotK } from '../../src/calculators/practice/constants.ts';

const exercise: Exercise = {
  ...practiceEngineExample,
  generation: 'separate-cables',
  carburettors: 2,
  seed: 12,
};
const invented = inventEngine(exercise);
if (!invented.ok) throw new Error(JSON.stringify(invented.problem));
const engine: PracticeEngine = invented.value;
const atWork = bringSpeedBack(engine, firstState(engine, 1));
const started = (): PracticeRun => ({ ...startRun(exercise, engine), state: atWork });
const done = (run: PracticeRun, ...actions: PracticeAction[]) =>
  actions.reduce((before, action) => perform(before, action).run, run);
const reads = (run: PracticeRun): PracticeRun => {
  const read = writeReading(run);
  if (read === null) throw new Error('nothing selected');
  return read;
};

describe('a run', () => {
  test('what was written down: readings with speed and time, and the turns between loosening and tightening', () => {
    const read = passTime(started(), 3);
    const run = done(
      reads(read),
      { kind: 'loosen', screw: 2 },
      { kind: 'turn', screw: 2, turns: 0.25 },
      { kind: 'turn', screw: 2, turns: -0.125 },
      { kind: 'tighten', screw: 2, held: true },
      { kind: 'loosen', screw: 1 },
      { kind: 'tighten', screw: 1, held: true },
    );
    const events = sessionEventsOf(run);
    expect(events.map(({ kind }) => kind)).toEqual(['reading', 'turn']);
    expect(events[0]).toMatchObject({ carburettor: 1, minute: read.state.seconds / 60 });
    expect(events[1]).toMatchObject({ screw: 2, turns: 0.125 });
  });

  test('a reading with a nut loose is not written down, for it is not a locked one', () => {
    const loose = reads(done(started(), { kind: 'loosen', screw: 1 }));
    expect(loose.entries.at(-1)).toMatchObject({ kind: 'reading', nutsTight: false });
    expect(sessionEventsOf(loose)).toEqual([]);
    const tight = reads(done(loose, { kind: 'tighten', screw: 1, held: true }));
    expect(sessionEventsOf(tight)).toMatchObject([{ kind: 'reading', carburettor: 1 }]);
  });

  test('workDone counts readings, screws and nuts, and nothing else', () => {
    const run = done(
      started(),
      { kind: 'hand', reach: 0.2 },
      { kind: 'loosen', screw: 1 },
      { kind: 'turn', screw: 1, turns: 0.1 },
      { kind: 'fan', on: true },
      { kind: 'tighten', screw: 1, held: true },
    );
    expect(workDone(run)).toBe(3);
    expect(workDone(reads(run))).toBe(4);
  });

  test('counts the seconds in which it was too hot, and keeps the hottest', () => {
    const run = started();
    const hot = { ...run, state: { ...run.state, metalK: tooHotK + 20 } };
    expect(passTime(run, 3).tooHotSeconds).toBe(0);
    const later = passTime(hot, 3);
    expect(later.tooHotSeconds).toBeCloseTo(3, 9);
    expect(later.hottestK).toBeGreaterThan(tooHotK);
    expect(passTime({ ...hot, tooHotSeconds: 60 }, 3).tooHotSeconds).toBeCloseTo(63, 9);
  });

  test('small movements of hand and tap are one entry', () => {
    const run = done(
      started(),
      { kind: 'hand', reach: 0.2 },
      { kind: 'hand', reach: 0.21 },
      { kind: 'tap', opening: 0.5 },
      { kind: 'tap', opening: 0.4 },
      { kind: 'hand', reach: 0.22 },
    );
    expect(run.entries.map((entry) => entry.kind === 'action' && entry.action)).toEqual([
      { kind: 'hand', reach: 0.21 },
      { kind: 'tap', opening: 0.4 },
      { kind: 'hand', reach: 0.22 },
    ]);
  });

  test('turning a screw twice, or reading twice, is two entries', () => {
    const run = done(
      started(),
      { kind: 'loosen', screw: 1 },
      { kind: 'turn', screw: 1, turns: 0.1 },
      { kind: 'turn', screw: 1, turns: 0.1 },
    );
    expect(reads(reads(run)).entries).toHaveLength(5);
  });

  test('a nut that is loosened twice is one work, and one that is tightened begins another', () => {
    const work = done(
      started(),
      { kind: 'loosen', screw: 1 },
      { kind: 'turn', screw: 1, turns: 0.25 },
      { kind: 'loosen', screw: 1 },
      { kind: 'turn', screw: 1, turns: 0.25 },
      { kind: 'tighten', screw: 1, held: true },
      { kind: 'loosen', screw: 1 },
      { kind: 'turn', screw: 1, turns: 0.125 },
      { kind: 'tighten', screw: 1, held: true },
    );
    expect(sessionEventsOf(work)).toMatchObject([
      { kind: 'turn', screw: 1, turns: expect.closeTo(0.5, 9) },
      { kind: 'turn', screw: 1, turns: expect.closeTo(0.125, 9) },
    ]);
  });

  test('the minute of a turn is that in which its nut was tightened', () => {
    const turned = passTime(
      done(started(), { kind: 'loosen', screw: 2 }, { kind: 'turn', screw: 2, turns: 0.25 }),
      6,
    );
    const [event] = sessionEventsOf(done(turned, { kind: 'tighten', screw: 2, held: true }));
    expect(event).toMatchObject({ kind: 'turn', minute: expect.closeTo((atWork.seconds + 6) / 60, 9) });
  });
});

describe('the review', () => {
  test('tells the truth: openings, spread first and now, turns, heat', () => {
    const before = started();
    const run = passTime(
      done(
        before,
        { kind: 'loosen', screw: 1 },
        { kind: 'turn', screw: 1, turns: 0.25 },
        { kind: 'turn', screw: 1, turns: -0.5 },
        { kind: 'tighten', screw: 1, held: true },
      ),
      5,
    );
    const review = reviewRun(run);
    expect(review.first.spreadPa).toBe(trueSpreadPa(run.engine, firstState(run.engine, 0).controls));
    expect(review.now.spreadPa).toBe(trueSpreadPa(run.engine, run.state.controls));
    expect(review).toMatchObject({ readings: 0, moves: 2, turns: 0.75, nutsTight: true, fault: null });
    expect(review.course.map(({ entry }) => entry.kind)).toEqual(['action', 'action', 'action']);
    expect(review.now.openings[0]!).toBeLessThan(review.first.openings[0]!);
    expect(review.now.openings.reduce((sum, each) => sum + each, 0)).toBeCloseTo(2, 9);
    expect(review.hottestK).toBeGreaterThanOrEqual(run.engine.startK);
  });

  test('says within exactly when the spread is no more than the tolerance', () => {
    const run = started();
    const spreadPa = trueSpreadPa(engine, run.state.controls);
    const within = (tolerancePa: number) => reviewRun({ ...run, engine: { ...engine, tolerancePa } }).within;
    expect(within(spreadPa)).toBe(true);
    expect(within(1.001 * spreadPa)).toBe(true);
    expect(within(0.999 * spreadPa)).toBe(false);
  });

  test('counts readings, and the turns that a screw really made', () => {
    const { opening } = engine.screws[0]!.thread;
    const run = done(
      reads(reads(started())),
      { kind: 'hand', reach: 0.2 },
      { kind: 'loosen', screw: 1 },
      { kind: 'turn', screw: 1, turns: 99 },
      { kind: 'turn', screw: 1, turns: 1 },
    );
    expect(reviewRun(run)).toMatchObject({ readings: 2, moves: 1, turns: opening });
  });

  test('says so when one nut is still loose', () => {
    const loose = done(started(), { kind: 'loosen', screw: 2 });
    expect(reviewRun(loose).nutsTight).toBe(false);
    expect(reviewRun(done(loose, { kind: 'tighten', screw: 2, held: true })).nutsTight).toBe(true);
  });

  test('tells the true spread after each reading, turn and nipped nut, and after nothing else', () => {
    const run = reads(
      done(
        reads(started()),
        { kind: 'fan', on: true },
        { kind: 'loosen', screw: 1 },
        { kind: 'turn', screw: 1, turns: 0.125 },
        { kind: 'tighten', screw: 1, held: true },
        { kind: 'select', cylinder: 2 },
      ),
    );
    const { course } = reviewRun(run);
    expect(course.map(({ entry }) => (entry.kind === 'action' ? entry.action.kind : entry.kind))).toEqual([
      'reading',
      'turn',
      'tighten',
      'reading',
    ]);
    for (const { entry, spreadPa } of course) expect(spreadPa).toBe(truthAt(run, entry.screwTurns).spreadPa);
    expect(course[1]!.spreadPa).not.toBe(course[0]!.spreadPa);
  });
});
