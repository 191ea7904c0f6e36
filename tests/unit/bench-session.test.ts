import { describe, expect, test } from 'vitest';
import { exampleSessions } from '../../src/calculators/example-sessions.ts';
import {
  benchDefaults,
  benchSessionExample,
  computeBench,
  expectedAfterTurn,
  mostMovedCarburettor,
  parseReadings,
  parseSetUp,
} from '../../src/calculators/index.ts';
import type { Bench, BenchSetUp, SessionEvent } from '../../src/calculators/index.ts';
import { mmHg } from '../engine/invented.ts';
import { stepOf } from '../engine/session.ts';

const { setUp: bare, events: balanced } = exampleSessions['all-adjustable'];
const setUp: BenchSetUp = { ...bare, opens: bare.screws.map(() => 'anticlockwise') };

const read = (carburettor: number, depressionMmHg: number): SessionEvent => ({
  kind: 'reading',
  carburettor,
  depressionPa: depressionMmHg * mmHg,
});
const turn = (screw: number, turns: number): SessionEvent => ({ kind: 'turn', screw, turns });

const benchOf = (
  events: readonly SessionEvent[],
  fromEvent: number | null = null,
  of: BenchSetUp = setUp,
): Bench => {
  const bench = computeBench(of, events, fromEvent);
  if (!bench.ok) throw new Error(JSON.stringify(bench.problem));
  return bench.value;
};

const firstReadings = [read(1, 212), read(2, 248), read(3, 251), read(4, 187)];

describe('computeBench(setUp, events, null), before the sign-off round', () => {
  test('has the step and the estimates of nextStep', () => {
    const next = stepOf(setUp, firstReadings.slice(0, 2));
    const bench = benchOf(firstReadings.slice(0, 2));
    expect(bench.step).toEqual(next.step);
    expect(bench.estimate).toEqual(next.estimate);
    expect(benchOf(balanced).step).toEqual({ kind: 'done' });
    expect(bench).toMatchObject({ beforeTurnPa: null, doubtful: null, wrongWay: null, round: null });
  });

  test('has the confidence that was told, or 0.95', () => {
    expect(benchOf([]).confidence).toBe(0.95);
    expect(benchOf([], null, { ...setUp, confidence: 0.8 }).confidence).toBe(0.8);
  });

  test('passes the problems of nextStep on', () => {
    expect(computeBench({ ...setUp, tolerancePa: 0 }, [], null)).toMatchObject({
      ok: false,
      problem: { kind: 'out-of-range', field: 'tolerancePa' },
    });
    expect(computeBench(setUp, [read(5, 200)], 0)).toMatchObject({ ok: false, problem: { kind: 'index' } });
  });

  test('after a turn shows where every carburettor stood before it', () => {
    const bench = benchOf([...firstReadings, turn(4, -0.25)]);
    expect(bench.beforeTurnPa).toEqual(stepOf(setUp, firstReadings).estimate.depressionPa);
    expect(bench.estimate.depressionPa[3]).toBeGreaterThan(bench.beforeTurnPa![3]!);
  });

  test('shows a doubtful reading beside what was expected', () => {
    const { step, doubtful } = benchOf([...firstReadings, read(2, 320)]);
    expect(step).toEqual({ kind: 'read', carburettor: 2, reason: 'doubtful' });
    expect(doubtful!.readPa).toBe(320 * mmHg);
    expect(Math.abs(doubtful!.expectedPa - 248 * mmHg)).toBeLessThan(mmHg);
  });

  test('names a reading that went against its turn', () => {
    const { wrongWay } = benchOf([...firstReadings, turn(4, -0.25), read(4, 150)]);
    expect(wrongWay).toMatchObject({ turnEvent: 4, screw: 4, carburettor: 4 });
    expect(wrongWay!.expectedChangePa).toBeGreaterThan(0);
    expect(wrongWay!.seenChangePa).toBeLessThan(0);
  });
});

describe('computeBench(setUp, events, null), a screw whose direction is not known', () => {
  const unknown: BenchSetUp = { ...setUp, opens: setUp.opens.map(() => 'unknown') };

  test('is first turned by an eighth at most, with what that is expected to do', () => {
    const { step } = benchOf(firstReadings, null, unknown);
    const plain = benchOf(firstReadings).step;
    if (step.kind !== 'turn' || plain.kind !== 'turn') throw new Error(`${step.kind}, ${plain.kind}`);
    expect(plain).toMatchObject({ screw: 4, trial: false });
    expect(plain.turns).toBe(-0.25);
    expect(step).toMatchObject({ screw: 4, trial: true, read: plain.read });
    expect(step.turns).toBe(-benchDefaults.trialTurns);
    expect(step.expectedDepressionPa).toEqual(expectedAfterTurn(unknown, firstReadings, 4, step.turns));
    const change = (expected: readonly number[]): number => expected[3]! - 187 * mmHg;
    expect(change(step.expectedDepressionPa)).toBeGreaterThan(0);
    expect(change(step.expectedDepressionPa)).toBeLessThan(change(plain.expectedDepressionPa));
  });

  test('keeps a smaller turn as it is', () => {
    const short: BenchSetUp = {
      ...unknown,
      screws: unknown.screws.map((screw) => ({ ...screw, turnsLeft: { closing: 0.17, opening: 0.17 } })),
    };
    const { step } = benchOf(firstReadings, null, short);
    // 0.17 less 0.1 spare, in whole minutes of a clock face.
    expect(step).toMatchObject({ kind: 'turn', trial: true });
    expect(step.kind === 'turn' && step.turns * 60).toBeCloseTo(-4, 9);
  });

  test('one known direction among unknown ones is turned in full', () => {
    const one: BenchSetUp = { ...unknown, opens: ['unknown', 'unknown', 'unknown', 'clockwise'] };
    expect(benchOf(firstReadings, null, one).step).toMatchObject({ screw: 4, turns: -0.25, trial: false });
  });
});

describe('computeBench(setUp, events, fromEvent), the sign-off round', () => {
  const from = balanced.length;
  const within = [read(1, 325), read(2, 325), read(3, 330), read(4, 325)];
  const roundWith = (...more: readonly SessionEvent[]) => benchOf([...balanced, ...more], from);

  test('reads every carburettor once more, in order, whatever the advice says', () => {
    within.forEach((_, k) => {
      const { step, round } = roundWith(...within.slice(0, k));
      expect(step).toEqual({ kind: 'read', carburettor: k + 1, reason: 'sign-off' });
      expect(round).toEqual({ kind: 'under-way', carburettor: k + 1 });
    });
  });

  test('takes them in any order', () => {
    expect(roundWith(within[2]!, within[0]!).round).toEqual({ kind: 'under-way', carburettor: 2 });
  });

  test('complete and within: to be signed off', () => {
    const { step, round } = roundWith(...within);
    expect(step).toEqual({ kind: 'sign-off' });
    expect(round).toMatchObject({ kind: 'complete', within: true });
    expect(round?.kind === 'complete' && round.spreadPa / mmHg).toBeCloseTo(5, 9);
  });

  test('complete and outside: the session goes on and cannot be signed off', () => {
    const outside = roundWith(read(1, 325), read(2, 325), read(3, 337), read(4, 325));
    expect(outside.round).toMatchObject({ kind: 'complete', within: false, furthest: 1 });
    expect(outside.step.kind).not.toBe('sign-off');
    expect(outside.step.kind).not.toBe('done');
  });

  test('outside by its readings while the estimates call it done: the furthest is read again, and may settle it', () => {
    const edge = [read(1, 325), read(2, 325), read(3, 336), read(4, 325)];
    const sure = { ...setUp, confidence: 0.5 };
    const bench = benchOf([...balanced, ...edge], from, sure);
    expect(stepOf(sure, [...balanced, ...edge]).step).toEqual({ kind: 'done' });
    expect(bench.round).toMatchObject({ kind: 'complete', within: false });
    expect(bench.step).toMatchObject({ kind: 'read', reason: 'sign-off-again' });
    const again = benchOf([...balanced, ...edge, read(3, 328)], from, sure);
    expect(again.round).toMatchObject({ kind: 'complete', within: true });
    expect(again.step).toEqual({ kind: 'sign-off' });
  });

  test('a turn breaks it: the advice speaks again', () => {
    const events = [...balanced, ...within, turn(1, 0.25)];
    const { step, round } = benchOf(events, from);
    expect(round).toEqual({ kind: 'broken' });
    expect(step).toEqual(stepOf(setUp, events).step);
    expect(step.kind).toBe('read');
    expect(benchOf(events, null).step).toEqual(step);
  });

  test('a doubtful reading goes first', () => {
    expect(roundWith(read(1, 325), read(2, 420)).step).toEqual({
      kind: 'read',
      carburettor: 2,
      reason: 'doubtful',
    });
  });

  test('readings from before the round do not count', () => {
    expect(benchOf(balanced, from).round).toEqual({ kind: 'under-way', carburettor: 1 });
    expect(benchOf([...balanced, ...within], from + 1).round).toEqual({
      kind: 'under-way',
      carburettor: 1,
    });
  });
});

describe('expectedAfterTurn and mostMovedCarburettor', () => {
  test('expectedAfterTurn(setUp, events, screw, turns) is what nextStep expects of its own turn', () => {
    const { step } = stepOf(setUp, firstReadings);
    if (step.kind !== 'turn') throw new Error(step.kind);
    expect(expectedAfterTurn(setUp, firstReadings, step.screw, step.turns)).toEqual(
      step.expectedDepressionPa,
    );
    expect(expectedAfterTurn(setUp, firstReadings, 1, 0)[0]).toBeCloseTo(212 * mmHg, -1);
  });

  test('mostMovedCarburettor(setUp, screw) is the first of those moved most', () => {
    const paired: BenchSetUp = { ...exampleSessions['paired-screws'].setUp, opens: [] };
    expect([1, 2, 3].map((screw) => mostMovedCarburettor(paired, screw))).toEqual([1, 4, 3]);
  });
});

test('benchSessionExample: its answers make a set-up, its readings a first move', () => {
  const parsed = parseSetUp(benchSessionExample.answers);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
  const readings = parseReadings(benchSessionExample.readings, parsed.value.unit, parsed.value.setUp);
  if (!readings.ok) throw new Error(readings.problem.kind);
  expect(readings.value.map(({ carburettor }) => carburettor)).toEqual([1, 2, 3, 4]);
  const events = readings.value.map(
    ({ carburettor, depressionPa }) => ({ kind: 'reading', carburettor, depressionPa }) as const,
  );
  // Screw 4 has 0.4 turn left to close, not enough for the middle: the level goes down to it, so the highest is opened.
  const { step } = benchOf(events, null, parsed.value.setUp);
  expect(step).toMatchObject({ kind: 'turn', screw: 3, trial: false });
  expect(step.kind === 'turn' && step.turns).toBeGreaterThan(0);
  const plenty = {
    ...parsed.value.setUp,
    screws: parsed.value.setUp.screws.map(({ moves }) => ({ moves })),
  };
  const free = benchOf(events, null, plenty).step;
  expect(free).toMatchObject({ kind: 'turn', screw: 4 });
  expect(free.kind === 'turn' && free.turns).toBeLessThan(0);
});

describe('computeBench(…).believable', () => {
  test('a reading at either end is taken, one beyond it is asked for again', () => {
    const events = [...firstReadings];
    const next = benchOf(events);
    const { believable, step } = next;
    if (!believable || step.kind !== 'turn') throw new Error('a turn was expected');
    const turned: SessionEvent = { kind: 'turn', screw: step.screw, turns: step.turns, minute: 0 };
    const stepAfter = (depressionPa: number) =>
      stepOf(setUp, [
        ...events.map((event) => ({ ...event, minute: 0 })),
        turned,
        { kind: 'reading', carburettor: believable.carburettor, depressionPa, minute: 0 },
      ]).step;
    const doubtful = { kind: 'read', carburettor: believable.carburettor, reason: 'doubtful' };
    for (const [edge, beyond] of [
      [believable.lowestPa, -1],
      [believable.highestPa, 1],
    ] as const) {
      expect(stepAfter(edge - beyond * 5 * mmHg)).not.toEqual(doubtful);
      expect(stepAfter(edge + beyond * 5 * mmHg)).toEqual(doubtful);
    }
  });

  test('nothing is said of a carburettor that has not been read', () => {
    expect(benchOf([]).believable).toBeNull();
  });

  test('is of the small first turn where the direction is not known, not of the whole one', () => {
    const unknown = { ...setUp, opens: setUp.screws.map(() => 'unknown' as const) };
    const { believable, step } = benchOf(firstReadings, null, unknown);
    if (!believable || step.kind !== 'turn') throw new Error('a turn was expected');
    const expectedPa = step.expectedDepressionPa[believable.carburettor - 1]!;
    expect(step.trial).toBe(true);
    expect((believable.lowestPa + believable.highestPa) / 2 / expectedPa).toBeCloseTo(1, 9);
  });

  test('is of the carburettor that the sign-off round asks for', () => {
    const { believable, step } = benchOf(balanced, balanced.length);
    expect(step).toMatchObject({ kind: 'read', reason: 'sign-off' });
    expect(believable?.carburettor).toBe(step.kind === 'read' ? step.carburettor : undefined);
  });
});
