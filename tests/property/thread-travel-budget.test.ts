import fc from 'fast-check';
import { expect, test } from 'vitest';
import { threadTravelBudget } from '../../src/calculators/thread-travel-budget.ts';
import type {
  AdjusterBudget,
  ThreadTravel,
  ThreadTravelBudget,
} from '../../src/calculators/thread-travel.ts';
import { tolerances } from '../tolerances.ts';

const near = tolerances.turns.absolute;
const lengthMm = fc.double({ min: 0, max: 10, noNaN: true });
const adjuster = fc.record({
  showing: fc.record({ closingMm: lengthMm, openingMm: lengthMm }),
  plannedTurns: fc.double({ min: -4, max: 4, noNaN: true }),
});
const travel: fc.Arbitrary<ThreadTravel> = fc.record({
  generation: fc.constantFrom('separate-cables' as const, 'all-adjustable' as const),
  pitchMm: fc.double({ min: 0.2, max: 2, noNaN: true }),
  starts: fc.integer({ min: 1, max: 3 }),
  engagementMm: lengthMm,
  minimumEngagementMm: lengthMm,
  unscrewsWhen: fc.constantFrom('closing' as const, 'opening' as const),
  adjusters: fc.array(adjuster, { minLength: 1, maxLength: 8 }),
});

const budget = (given: ThreadTravel): ThreadTravelBudget => {
  const result = threadTravelBudget(given);
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value;
};

const leastLeft = (adjusters: readonly AdjusterBudget[], shift = 0) =>
  Math.min(
    ...adjusters.flatMap(({ afterwards }) => [afterwards.closing + shift, afterwards.opening - shift]),
  );

test('no other of 1,000 common moves leaves more on the worst side', () => {
  const shifts = fc.array(fc.double({ min: -60, max: 60, noNaN: true }), {
    minLength: 1000,
    maxLength: 1000,
    size: 'max',
  });
  fc.assert(
    fc.property(travel, shifts, (given, others) => {
      const { adjusters, commonMove } = budget(given);
      if (commonMove === null) throw new Error('these sets have a common move');
      expect(others).toHaveLength(1000);
      expect(Math.abs(leastLeft(commonMove.adjusters) - commonMove.leastLeftTurns)).toBeLessThanOrEqual(near);
      expect(Math.max(...others.map((shift) => leastLeft(adjusters, shift)))).toBeLessThanOrEqual(
        commonMove.leastLeftTurns + near,
      );
    }),
    { numRuns: 100 },
  );
});

test('the first to run out has the least left, and the common move never leaves less', () => {
  fc.assert(
    fc.property(travel, (given) => {
      const { adjusters, runsOutFirst, commonMove, fits } = budget(given);
      expect(runsOutFirst.turnsLeft).toBe(leastLeft(adjusters));
      expect(commonMove?.leastLeftTurns).toBeGreaterThanOrEqual(runsOutFirst.turnsLeft - near);
      if (fits) expect(commonMove?.fits).toBe(true);
    }),
  );
});

test('all the thread there is stays the same: what one way gains the other loses', () => {
  fc.assert(
    fc.property(travel, (given) => {
      const { adjusters, commonMove } = budget(given);
      for (const { turnsLeft, afterwards } of [...adjusters, ...(commonMove?.adjusters ?? [])]) {
        const all = turnsLeft.closing + turnsLeft.opening;
        expect(Math.abs(afterwards.closing + afterwards.opening - all)).toBeLessThanOrEqual(near);
        expect(Math.min(turnsLeft.closing, turnsLeft.opening)).toBeGreaterThanOrEqual(0);
      }
    }),
  );
});

test('opening and closing may change their names', () => {
  fc.assert(
    fc.property(travel, (given) => {
      const mirrored = budget({
        ...given,
        unscrewsWhen: given.unscrewsWhen === 'opening' ? 'closing' : 'opening',
        adjusters: given.adjusters.map(({ showing, plannedTurns = 0 }) => ({
          showing: { closingMm: showing.openingMm, openingMm: showing.closingMm },
          plannedTurns: -plannedTurns,
        })),
      }).commonMove;
      const { commonMove } = budget(given);
      expect(Math.abs((mirrored?.turns ?? NaN) + (commonMove?.turns ?? NaN))).toBeLessThanOrEqual(near);
      expect(
        Math.abs((mirrored?.leastLeftTurns ?? NaN) - (commonMove?.leastLeftTurns ?? NaN)),
      ).toBeLessThanOrEqual(near);
    }),
  );
});

test('the order of the adjusters and the unit of length do not matter', () => {
  fc.assert(
    fc.property(travel, fc.double({ min: 0.01, max: 100, noNaN: true }), (given, unit) => {
      const { commonMove, runsOutFirst } = budget(given);
      const backwards = budget({ ...given, adjusters: [...given.adjusters].reverse() });
      expect(backwards.commonMove?.turns).toBe(commonMove?.turns);
      expect(backwards.runsOutFirst.turnsLeft).toBe(runsOutFirst.turnsLeft);
      const inOtherUnit = budget({
        ...given,
        pitchMm: given.pitchMm * unit,
        engagementMm: (given.engagementMm ?? 0) * unit,
        minimumEngagementMm: (given.minimumEngagementMm ?? 0) * unit,
        adjusters: given.adjusters.map((one) => ({
          ...one,
          showing: { closingMm: one.showing.closingMm * unit, openingMm: one.showing.openingMm * unit },
        })),
      });
      expect(
        Math.abs((inOtherUnit.commonMove?.turns ?? NaN) - (commonMove?.turns ?? NaN)),
      ).toBeLessThanOrEqual(near);
    }),
  );
});
