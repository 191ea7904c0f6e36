import { describe, expect, test } from 'vitest';
import { screwsOf } from '../../src/calculators/linkage.ts';
import type { Generation, LinkageOptions } from '../../src/calculators/linkage.ts';
import { matchedTo, referenceWeights, screwContrasts } from '../../src/calculators/matched-to.ts';

const contrasts = (
  generation: Generation,
  weights: readonly number[],
  options: LinkageOptions = {},
): number[][] => {
  const screws = screwsOf(generation, weights.length, options);
  if (!screws.ok) throw new Error(JSON.stringify(screws.problem));
  // Whole fractions; the last digit is the solver's.
  return screwContrasts(screws.value, weights).map((row) =>
    row.map((weight) => Number(weight.toFixed(12)) + 0),
  );
};

describe('matchedTo(generation, means, fixed)', () => {
  const means = [212, 248, 251, 187];

  test('fixed-reference: the carburettor without an adjuster', () => {
    expect(matchedTo('fixed-reference', means, 4)).toEqual({ kind: 'carburettor', carburettor: 4 });
  });

  test('bypass-screws: the body left alone, else each other', () => {
    expect(matchedTo('bypass-screws', means, 1)).toEqual({ kind: 'carburettor', carburettor: 1 });
    expect(matchedTo('bypass-screws', means, undefined)).toEqual({ kind: 'mean' });
  });

  test('all-adjustable: the two that read closest, ties to the lowest numbers', () => {
    expect(matchedTo('all-adjustable', means, undefined)).toEqual({
      kind: 'closest-two',
      carburettors: [2, 3],
    });
    expect(matchedTo('all-adjustable', [5, 9, 5, 9], undefined)).toEqual({
      kind: 'closest-two',
      carburettors: [1, 3],
    });
  });

  test('separate-cables and paired-screws: each other, whatever `fixed` says', () => {
    expect(matchedTo('separate-cables', means, 2)).toEqual({ kind: 'mean' });
    expect(matchedTo('paired-screws', means, 2)).toEqual({ kind: 'mean' });
  });
});

test('referenceWeights(…) sum to 1', () => {
  expect(referenceWeights({ kind: 'mean' }, 4)).toEqual([0.25, 0.25, 0.25, 0.25]);
  expect(referenceWeights({ kind: 'carburettor', carburettor: 3 }, 4)).toEqual([0, 0, 1, 0]);
  expect(referenceWeights({ kind: 'closest-two', carburettors: [2, 3] }, 4)).toEqual([0, 0.5, 0.5, 0]);
});

describe('screwContrasts(screws, weights)', () => {
  test('one screw each: the carburettor less the reference', () => {
    expect(contrasts('all-adjustable', [0, 0.5, 0.5])).toEqual([
      [1, -0.5, -0.5],
      [0, 0.5, -0.5],
      [0, -0.5, 0.5],
    ]);
    expect(contrasts('separate-cables', [0.5, 0.5])).toEqual([
      [0.5, -0.5],
      [-0.5, 0.5],
    ]);
  });

  test('one fixed: the carburettor less the fixed one', () => {
    expect(contrasts('fixed-reference', [0, 1, 0], { fixed: 2 })).toEqual([
      [1, -1, 0],
      [0, -1, 1],
    ]);
  });

  test('paired screws of four: within each outer pair, then pair to pair', () => {
    expect(contrasts('paired-screws', [0.25, 0.25, 0.25, 0.25])).toEqual([
      [1, -1, 0, 0],
      [0, 0, -1, 1],
      [0, -1, 1, 0],
    ]);
  });

  test('paired screws of six: within the trios, then trio to trio', () => {
    const sixth = 1 / 6;
    expect(contrasts('paired-screws', [sixth, sixth, sixth, sixth, sixth, sixth])).toEqual([
      [1, -1, 0, 0, 0, 0],
      [0, 0, 1, -1, 0, 0],
      [0, 0, 0, 0, -1, 1],
      [0, 1, 0, -1, 0, 0],
      [0, 0, 0, -1, 1, 0],
    ]);
  });

  test('fewer screws than needed: the best that they can do', () => {
    // One screw that moves the first two of four against the rest.
    expect(contrasts('paired-screws', [0.25, 0.25, 0.25, 0.25], { groups: [[1, 2]] })).toEqual([
      [0.5, 0.5, -0.5, -0.5],
    ]);
  });

  test('two screws for one thing share it', () => {
    expect(contrasts('paired-screws', [0.5, 0.5], { groups: [[1], [1]] })).toEqual([
      [0.5, -0.5],
      [0.5, -0.5],
    ]);
  });

  test('a screw that moves all of them has nothing to level', () => {
    expect(contrasts('paired-screws', [0.5, 0.5], { groups: [[1, 2], [1]] })).toEqual([
      [0, 0],
      [1, -1],
    ]);
  });
});
