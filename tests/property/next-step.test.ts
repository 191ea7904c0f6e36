import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { accountOf } from '../../src/calculators/advisor/account.ts';
import { priors } from '../../src/calculators/advisor/priors.ts';
import { symmetricEigen } from '../../src/calculators/advisor/matrix.ts';
import {
  formatExact,
  generations,
  inUnit,
  nextStep,
  parseReading,
  pressureUnit,
  pressureUnits,
  screwsOf,
} from '../../src/calculators/index.ts';
import type { NextStep, Screw, SessionEvent, SetUp } from '../../src/calculators/index.ts';
import { mmHg } from '../engine/invented.ts';
import { stepOf } from '../engine/session.ts';
import { tries } from '../property-runs.ts';
import { tolerances } from '../tolerances.ts';

const ambientPa = 101_325;
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });

const thread = fc.record({ closing: between(0, 3), opening: between(0, 3) });

/** Linkages of the five generations, and any other matrix. */
const linkage: fc.Arbitrary<readonly Screw[]> = fc.integer({ min: 2, max: 8 }).chain((n) =>
  fc.oneof(
    fc
      .record({ generation: fc.constantFrom(...generations), fixed: fc.integer({ min: 1, max: n }) })
      .map(({ generation, fixed }) => {
        const screws = screwsOf(generation, n, { fixed });
        return screws.ok ? screws.value : [{ moves: Array.from({ length: n }, (_, i) => (i === 0 ? 1 : 0)) }];
      }),
    fc.array(fc.record({ moves: fc.array(between(-2, 2), { minLength: n, maxLength: n }) }), {
      minLength: 1,
      maxLength: n,
    }),
  ),
);

const setUpWith = (wild: boolean): fc.Arbitrary<SetUp> =>
  fc
    .record({
      screws: linkage,
      threads: fc.array(fc.option(thread, { nil: undefined }), { minLength: 8, maxLength: 8 }),
      tolerancePa: wild ? fc.oneof(between(1e-3, 1), between(1, 1e5)) : between(500, 4_000),
      resolutionPa: wild ? between(1, 1e4) : between(50, 1_000),
      flutterPa: wild ? fc.oneof(fc.constant(0), between(0, 1e4)) : between(0, 800),
      more: fc.record(
        {
          confidence: between(0.5, 0.999),
          targetRpm: between(300, 20_000),
          lockShiftTurns: between(0, wild ? 1 : 0.05),
          effectPaPerTurn: between(100, 1e6),
        },
        { requiredKeys: [] },
      ),
    })
    .map(({ screws, threads, tolerancePa, resolutionPa, flutterPa, more }) => ({
      carburettors: screws[0]!.moves.length,
      screws: screws.map(({ moves }, j) => {
        const turnsLeft = threads[j];
        return turnsLeft ? { moves, turnsLeft } : { moves };
      }),
      tolerancePa,
      gauge: { resolutionPa, flutterPa },
      ...more,
    }));

const lastBelowAmbient = ambientPa * (1 - Number.EPSILON);

/** Anything that the protocol allows, in any order. */
const wildEvents = ({ carburettors, screws }: SetUp, maxLength: number): fc.Arbitrary<SessionEvent[]> => {
  const minute = fc.oneof(between(-100, 100), fc.constantFrom(-1e6, 0, 1e6));
  const carburettor = fc.integer({ min: 1, max: carburettors });
  const depressionPa = fc.oneof(between(0, lastBelowAmbient), fc.constantFrom(0, 1e-300, lastBelowAmbient));
  const turns = fc.oneof(between(-1, 1), fc.constantFrom(-50, 50, 0, 1e-12));
  return fc.array(
    fc.oneof(
      fc.record(
        { kind: fc.constant('reading' as const), carburettor, depressionPa, rpm: between(-100, 3e4), minute },
        { requiredKeys: ['kind', 'carburettor', 'depressionPa'] },
      ),
      fc.record(
        {
          kind: fc.constant('turn' as const),
          screw: fc.integer({ min: 1, max: screws.length }),
          turns,
          minute,
        },
        { requiredKeys: ['kind', 'screw', 'turns'] },
      ),
    ),
    { maxLength, size: 'max' },
  );
};

/** What happens at a bench: readings near 300 mmHg, turns of less than one. */
const benchEvents = ({ carburettors, screws }: SetUp, maxLength: number): fc.Arbitrary<SessionEvent[]> =>
  fc.array(
    fc.oneof(
      {
        weight: 2,
        arbitrary: fc.record({
          kind: fc.constant('reading' as const),
          carburettor: fc.integer({ min: 1, max: carburettors }),
          depressionPa: between(150 * mmHg, 450 * mmHg),
        }),
      },
      {
        weight: 1,
        arbitrary: fc.record({
          kind: fc.constant('turn' as const),
          screw: fc.integer({ min: 1, max: screws.length }),
          turns: between(-1, 1),
        }),
      },
    ),
    { maxLength, size: 'max' },
  );

const session = (
  wild: boolean,
  maxLength: number,
): fc.Arbitrary<{ readonly setUp: SetUp; readonly events: readonly SessionEvent[] }> =>
  setUpWith(wild).chain((setUp) =>
    (wild ? wildEvents(setUp, maxLength) : benchEvents(setUp, maxLength)).map((events) => ({
      setUp,
      events,
    })),
  );

const numbersOf = ({ step, estimate }: NextStep): number[] => [
  ...estimate.depressionPa,
  ...estimate.standardUncertaintyPa,
  estimate.spreadPa,
  estimate.chanceWithin,
  estimate.effectPaPerTurn,
  estimate.visits,
  ...estimate.turnsLeft.flatMap((left) => (left ? [left.closing, left.opening] : [])),
  ...(step.kind === 'turn' ? [step.turns, step.read, ...step.expectedDepressionPa] : []),
];

describe('nextStep(setUp, events) on any legal events', () => {
  test('never throws; its numbers are finite, the chance is one, uncertainties are not negative', () => {
    fc.assert(
      fc.property(session(true, 200), ({ setUp, events }) => {
        const next = stepOf(setUp, events);
        const { estimate, step } = next;
        expect(numbersOf(next).filter((value) => !Number.isFinite(value))).toEqual([]);
        expect(estimate.chanceWithin).toBeGreaterThanOrEqual(0);
        expect(estimate.chanceWithin).toBeLessThanOrEqual(1);
        expect(Math.min(estimate.spreadPa, ...estimate.standardUncertaintyPa)).toBeGreaterThanOrEqual(0);
        const first = setUp.effectPaPerTurn ?? priors.effectPaPerTurn;
        expect(Math.abs(Math.log(estimate.effectPaPerTurn / first))).toBeLessThanOrEqual(
          priors.effectLogReach * (1 + 1e-12),
        );
        expect(estimate.depressionPa).toHaveLength(setUp.carburettors);
        expect(estimate.turnsLeft).toHaveLength(setUp.screws.length);
        if (step.kind === 'done')
          expect(estimate.chanceWithin).toBeGreaterThanOrEqual(setUp.confidence ?? 0.95);
      }),
      tries(150),
    );
  });

  test('never asks for a turn past the thread that is left, nor for none at all', () => {
    fc.assert(
      fc.property(session(true, 60), ({ setUp, events }) => {
        const { step, estimate } = stepOf(setUp, events);
        if (step.kind !== 'turn') return;
        const left = estimate.turnsLeft[step.screw - 1] ?? null;
        expect(step.turns).not.toBe(0);
        expect(Math.abs(step.turns * 60 - Math.round(step.turns * 60))).toBeLessThanOrEqual(
          tolerances.turns.absolute,
        );
        if (!left) return;
        expect(step.turns).toBeLessThanOrEqual(left.opening);
        expect(step.turns).toBeGreaterThanOrEqual(-left.closing);
      }),
      tries(150),
    );
  });

  test('keeps the covariance symmetric and positive semi-definite, but for rounding of the largest it had', () => {
    fc.assert(
      fc.property(session(true, 30), ({ setUp, events }) => {
        let largest: number[] = [];
        for (let count = 0; count <= events.length; count++) {
          const { covariance } = accountOf(setUp, events.slice(0, count)).belief;
          const variances = covariance.map((row, i) => row[i]!);
          largest = variances.map((variance, i) => Math.max(variance, largest[i] ?? 0));
          covariance.forEach((row, i) => row.forEach((value, j) => expect(value).toBe(covariance[j]![i])));
          expect(Math.min(...variances)).toBeGreaterThanOrEqual(0);
          if (count < events.length) continue;
          const scaled = covariance.map((row, i) =>
            row.map((value, j) => value / Math.sqrt((largest[i] || 1) * (largest[j] || 1))),
          );
          expect(Math.min(...symmetricEigen(scaled).values)).toBeGreaterThanOrEqual(
            -tolerances.covariance.relative,
          );
        }
      }),
      tries(60),
    );
  });

  test('bad numbers give a problem in plain JSON, never an exception', () => {
    const anyNumber = fc.oneof(fc.double(), fc.constantFrom(0, -1, NaN, Infinity, 1e309));
    const bad = fc.record({
      carburettors: fc.oneof(fc.integer({ min: 0, max: 9 }), anyNumber),
      screws: fc.array(fc.record({ moves: fc.array(anyNumber, { maxLength: 4 }) }), { maxLength: 4 }),
      tolerancePa: anyNumber,
      gauge: fc.record({ resolutionPa: anyNumber, flutterPa: anyNumber }),
      confidence: anyNumber,
    });
    const badEvents = fc.array(
      fc.oneof(
        fc.record({ kind: fc.constant('reading' as const), carburettor: anyNumber, depressionPa: anyNumber }),
        fc.record({ kind: fc.constant('turn' as const), screw: anyNumber, turns: anyNumber }),
      ),
      { maxLength: 4 },
    );
    fc.assert(
      fc.property(bad, badEvents, (setUp, events) => {
        const result = nextStep(setUp, events);
        if (result.ok) expect(numbersOf(result.value).every(Number.isFinite)).toBe(true);
        else expect(result.problem.kind).toMatch(/^[a-z-]+$/);
      }),
    );
  });
});

describe('nextStep(setUp, events) is a function of its events alone', () => {
  test('the same events give the same step, and are left as they were', () => {
    fc.assert(
      fc.property(session(false, 25), ({ setUp, events }) => {
        const before = JSON.stringify({ setUp, events });
        const first = stepOf(setUp, events);
        const copy = JSON.parse(before) as { setUp: SetUp; events: SessionEvent[] };
        expect(stepOf(copy.setUp, copy.events)).toEqual(first);
        expect(JSON.stringify({ setUp, events })).toBe(before);
      }),
      tries(60),
    );
  });

  test('dropping the last events is as if they had never been', () => {
    fc.assert(
      fc.property(session(false, 20), fc.nat(), ({ setUp, events }, at) => {
        const kept = at % (events.length + 1);
        const never = stepOf(setUp, events.slice(0, kept));
        const log = [...events];
        stepOf(setUp, log);
        while (log.length > kept) {
          log.pop();
          if (log.length % 5 === 0) stepOf(setUp, log);
        }
        expect(stepOf(setUp, log)).toEqual(never);
      }),
      tries(60),
    );
  });
});

/** The session with carburettor and screw i called order[i]. */
const renumbered = (events: readonly SessionEvent[], order: readonly number[]): SessionEvent[] =>
  events.map((event) =>
    event.kind === 'reading'
      ? { ...event, carburettor: order[event.carburettor - 1]! }
      : { ...event, screw: order[event.screw - 1]! },
  );

describe('nextStep(setUp, events), every carburettor with its own screw', () => {
  /** Every carburettor read, a few turns with their readings, and another order of the numbers. */
  const ownScrews = fc.integer({ min: 2, max: 6 }).chain((n) =>
    fc.record({
      n: fc.constant(n),
      first: fc.array(between(200 * mmHg, 400 * mmHg), { minLength: n, maxLength: n }),
      moves: fc.array(fc.record({ screw: fc.integer({ min: 1, max: n }), turns: between(-0.3, 0.3) }), {
        maxLength: 4,
      }),
      order: fc.shuffledSubarray(
        Array.from({ length: n }, (_, i) => i + 1),
        { minLength: n },
      ),
    }),
  );

  test('renumbering the carburettors renumbers estimates and advice, where no tie and no draw decides', () => {
    let compared = 0;
    fc.assert(
      fc.property(ownScrews, ({ n, first, moves, order }) => {
        const screws = screwsOf('all-adjustable', n);
        if (!screws.ok) throw new Error(screws.problem.kind);
        const setUp: SetUp = {
          carburettors: n,
          screws: screws.value,
          tolerancePa: 10 * mmHg,
          gauge: { resolutionPa: 5 * mmHg, flutterPa: 3 * mmHg },
        };
        const events: SessionEvent[] = [
          ...first.map((depressionPa, i) => ({ kind: 'reading', carburettor: i + 1, depressionPa }) as const),
          ...moves.map(({ screw, turns }) => ({ kind: 'turn', screw, turns }) as const),
        ];
        const here = stepOf(setUp, events);
        const there = stepOf(setUp, renumbered(events, order));
        order.forEach((number, i) => {
          for (const key of ['depressionPa', 'standardUncertaintyPa'] as const)
            expect(Math.abs(there.estimate[key][number - 1]! - here.estimate[key][i]!)).toBeLessThanOrEqual(
              tolerances.estimate.absolute,
            );
        });
        // Chances are drawn with fixed vectors, one entry a number: only where both are 0 do they decide nothing.
        if (here.estimate.chanceWithin + there.estimate.chanceWithin > 0) return;
        if (here.step.kind === 'turn' && there.step.kind === 'turn') {
          compared++;
          expect(there.step.screw).toBe(order[here.step.screw - 1]);
          expect(there.step.turns).toBe(here.step.turns);
        } else if (here.step.kind === 'read' && here.step.reason === 'after-turn') {
          compared++;
          expect(there.step).toEqual({ ...here.step, carburettor: order[here.step.carburettor - 1] });
        }
      }),
      tries(120),
    );
    expect(compared).toBeGreaterThan(60);
  });
});

test('nextStep does not depend on the unit in which the readings were typed', () => {
  const units = pressureUnits.filter(({ rare }) => !rare);
  fc.assert(
    fc.property(
      fc.array(between(200 * mmHg, 400 * mmHg), { minLength: 4, maxLength: 9 }),
      fc.constantFrom(...units),
      (depressionsPa, unit) => {
        const screws = screwsOf('fixed-reference', 4, { fixed: 2 });
        if (!screws.ok) throw new Error(screws.problem.kind);
        const setUp: SetUp = {
          carburettors: 4,
          screws: screws.value,
          tolerancePa: 10 * mmHg,
          gauge: { resolutionPa: 5 * mmHg, flutterPa: 3 * mmHg },
        };
        const eventsWith = (depressionOf: (pascals: number) => number): SessionEvent[] =>
          depressionsPa.map((pascals, k) => ({
            kind: 'reading',
            carburettor: (k % 4) + 1,
            depressionPa: depressionOf(pascals),
          }));
        const typed = (pascals: number): number => {
          const text = `${formatExact(inUnit(pascals, pressureUnit(unit.id)), { minus: 'hyphen' })} ${unit.symbol}`;
          const reading = parseReading(text, 'mmHg', setUp);
          if (!reading.ok) throw new Error(`${text}: ${reading.problem.kind}`);
          return reading.value;
        };
        const inPascals = stepOf(
          setUp,
          eventsWith((pascals) => pascals),
        );
        const inUnits = stepOf(setUp, eventsWith(typed));
        inUnits.estimate.depressionPa.forEach((value, i) =>
          expect(Math.abs(value - inPascals.estimate.depressionPa[i]!)).toBeLessThanOrEqual(
            tolerances.estimate.absolute,
          ),
        );
        expect(inUnits.step.kind).toBe(inPascals.step.kind);
        if (inUnits.step.kind === 'turn' && inPascals.step.kind === 'turn') {
          expect(inUnits.step.screw).toBe(inPascals.step.screw);
          expect(inUnits.step.turns).toBe(inPascals.step.turns);
        }
      },
    ),
    tries(80),
  );
});
