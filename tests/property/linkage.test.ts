import fc from 'fast-check';
import { expect, test } from 'vitest';
import { generations, hasFreeCommonMove, screwsOf } from '../../src/calculators/linkage.ts';
import type { LinkageOptions } from '../../src/calculators/linkage.ts';

const count = fc.integer({ min: 2, max: 8 });

/** A generation with options that suit its number of carburettors. */
const linkage = fc.tuple(fc.constantFrom(...generations), count).chain(([generation, carburettors]) =>
  fc.record({
    generation: fc.constant(generation),
    carburettors: fc.constant(carburettors),
    options: fc.record(
      {
        fixed: fc.integer({ min: 1, max: carburettors }),
        groups: fc.array(fc.uniqueArray(fc.integer({ min: 1, max: carburettors }), { minLength: 1 }), {
          minLength: 1,
          maxLength: carburettors,
        }),
      },
      { requiredKeys: ['fixed', 'groups'] },
    ),
  }),
);

test('every screw has one entry a carburettor, of 0 and 1, and moves at least one', () => {
  fc.assert(
    fc.property(linkage, ({ generation, carburettors, options }) => {
      const screws = screwsOf(generation, carburettors, options);
      expect(screws.ok).toBe(true);
      for (const { moves } of screws.ok ? screws.value : []) {
        expect(moves).toHaveLength(carburettors);
        expect(moves.every((move) => move === 0 || move === 1)).toBe(true);
        expect(moves).toContain(1);
      }
    }),
  );
});

test('n screws of one each, or n − 1 that leave the fixed one alone', () => {
  fc.assert(
    fc.property(linkage, ({ generation, carburettors, options }) => {
      fc.pre(generation !== 'paired-screws');
      const screws = screwsOf(generation, carburettors, options);
      const totals = Array.from({ length: carburettors }, (_, i) =>
        (screws.ok ? screws.value : []).reduce((total, { moves }) => total + (moves[i] ?? 0), 0),
      );
      const leavesOne = generation === 'fixed-reference' || generation === 'bypass-screws';
      expect(totals).toEqual(totals.map((_, i) => (leavesOne && i + 1 === options.fixed ? 0 : 1)));
    }),
  );
});

test('the free common move is there where all screws together move all carburettors alike', () => {
  for (const generation of ['separate-cables', 'all-adjustable'] as const) {
    expect(hasFreeCommonMove(generation)).toBe(true);
  }
  for (const generation of ['fixed-reference', 'paired-screws', 'bypass-screws'] as const) {
    expect(hasFreeCommonMove(generation)).toBe(false);
  }
});

test('anything at all gives screws or a problem, never an exception', () => {
  const anyNumber = fc.oneof(fc.integer({ min: -2, max: 10 }), fc.double());
  const options = fc.record(
    {
      fixed: anyNumber,
      groups: fc.array(fc.array(anyNumber, { maxLength: 4 }), { maxLength: 4 }),
      thread: fc.array(fc.option(fc.record({ closing: anyNumber, opening: anyNumber }), { nil: null }), {
        maxLength: 8,
      }),
    },
    { requiredKeys: [] },
  );
  fc.assert(
    fc.property(fc.constantFrom(...generations), anyNumber, options, (generation, carburettors, given) => {
      const result = screwsOf(generation, carburettors, given as LinkageOptions);
      if (result.ok) {
        expect(result.value.length).toBeGreaterThan(0);
        for (const { turnsLeft } of result.value) {
          expect(Math.min(turnsLeft?.closing ?? 0, turnsLeft?.opening ?? 0)).toBeGreaterThanOrEqual(0);
        }
      } else expect(result.problem.kind).toMatch(/^[a-z-]+$/);
    }),
  );
});
