import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  answerThreadTravelBudget,
  initialForm,
  parseCalculatorLink,
  sayProblem,
  threadTravelBudget,
  threadTravelBudgetFields,
  writeCalculatorLink,
} from '../../src/calculators/index.ts';
import type {
  AdjusterBudget,
  Form,
  FormField,
  ThreadTravel,
  ThreadTravelBudget,
  ThreadTravelBudgetField,
} from '../../src/calculators/index.ts';
import { seededRandom } from '../seeded-random.ts';
import { tries } from '../property-runs.ts';
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
  lockNut: fc.record({ side: fc.constantFrom('closing' as const, 'opening' as const), heightMm: lengthMm }),
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

/** Random common moves that the computed one must beat in every case. */
const shifts = tries(10_000).numRuns;

test(`no other of ${shifts} common moves leaves more on the worst side`, () => {
  fc.assert(
    fc.property(travel, fc.nat(), (given, seed) => {
      const { adjusters, commonMove } = budget(given);
      if (commonMove === null) throw new Error('these sets have a common move');
      const random = seededRandom(seed);
      const others = Array.from({ length: shifts }, () => 120 * random() - 60);
      expect(Math.abs(leastLeft(commonMove.adjusters) - commonMove.leastLeftTurns)).toBeLessThanOrEqual(near);
      expect(
        others.reduce((most, shift) => Math.max(most, leastLeft(adjusters, shift)), -Infinity),
      ).toBeLessThanOrEqual(commonMove.leastLeftTurns + near);
    }),
    tries(20),
  );
});

test('with an idle-speed screw, no other move that it can undo leaves more, and it never runs out', () => {
  const idleScrew = fc.record({
    pitchMm: fc.double({ min: 0.2, max: 2, noNaN: true }),
    showing: fc.record({ closingMm: lengthMm, openingMm: lengthMm }),
    turnsPerAdjusterTurn: fc.double({ min: 0.2, max: 5, noNaN: true }),
  });
  fc.assert(
    fc.property(travel, idleScrew, fc.nat(), (given, idle, seed) => {
      const { adjusters, commonMove, idleScrewLeft } = budget({ ...given, idleScrew: idle });
      const { closing = NaN, opening = NaN } = commonMove?.idleScrewAfterwards ?? {};
      expect(Math.min(closing, opening)).toBeGreaterThanOrEqual(-near);
      const random = seededRandom(seed);
      const ratio = idle.turnsPerAdjusterTurn;
      const least = -(idleScrewLeft?.opening ?? NaN) / ratio;
      const most = (idleScrewLeft?.closing ?? NaN) / ratio;
      for (let count = 0; count < 200; count += 1) {
        const shift = least + (most - least) * random();
        expect(leastLeft(adjusters, shift)).toBeLessThanOrEqual((commonMove?.leastLeftTurns ?? NaN) + near);
      }
      // Without an end of its own it changes nothing.
      const free = budget(given).commonMove;
      if (commonMove?.limitedByIdleScrew === false) expect(commonMove.turns).toBe(free?.turns);
      expect(commonMove?.unlimitedTurns).toBe(free?.turns);
    }),
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
        ...(given.lockNut && {
          lockNut: {
            ...given.lockNut,
            side: given.lockNut.side === 'opening' ? 'closing' : 'opening',
          } as const,
        }),
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
        ...(given.lockNut && { lockNut: { ...given.lockNut, heightMm: given.lockNut.heightMm * unit } }),
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

const { fields, form } = { fields: threadTravelBudgetFields, form: initialForm(threadTravelBudgetFields) };
const typed = fc.constantFrom(
  '',
  '0',
  '1.5',
  '3/4',
  '-1/4',
  '12 thou',
  '0,2',
  'M6',
  '1/4 UNF',
  '4BA',
  'x',
  '1e309',
  '9'.repeat(90),
);
const anyForm: fc.Arbitrary<Form<ThreadTravelBudgetField>> = fc
  .record(
    Object.fromEntries(
      Object.entries<FormField>(fields).map(([name, field]) => [
        name,
        field.kind === 'choice'
          ? fc.constantFrom(...field.choices)
          : fc.oneof(typed, fc.constant(field.initially)),
      ]),
    ),
    { requiredKeys: [] },
  )
  .map((part) => ({ ...form, ...part }));

test('whatever stands in the form, there is an answer, or a sentence for a field of the form', () => {
  fc.assert(
    fc.property(anyForm, (asked) => {
      const result = answerThreadTravelBudget(asked);
      if (result.ok) {
        expect(result.answer.rows).toHaveLength(Number(asked.adjusters));
        expect(JSON.stringify(result.answer)).not.toMatch(/NaN|Infinity|undefined/u);
      } else {
        expect(result.problems.length).toBeGreaterThan(0);
        for (const { field, sentence } of result.problems.map(sayProblem)) {
          expect(fields).toHaveProperty(field);
          expect(sentence).toMatch(/^[A-Z“].*[.]$/u);
        }
      }
    }),
    tries(2000),
  );
});

test('a link gives the same form again', () => {
  fc.assert(
    fc.property(anyForm, (asked) => {
      const link = parseCalculatorLink(fields, writeCalculatorLink(fields, asked));
      if (!link.ok) throw new Error('the link is of our own version');
      const short = Object.fromEntries(
        Object.entries(asked).map(([name, text]) => [
          name,
          text.length > 80 ? fields[name as ThreadTravelBudgetField].initially : text,
        ]),
      );
      expect(link.value.form).toEqual(short);
      expect(link.value.unknownKeys).toEqual([]);
    }),
    tries(500),
  );
});
