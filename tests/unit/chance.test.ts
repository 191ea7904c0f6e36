import { describe, expect, test } from 'vitest';
import { chanceOf, isBetter } from '../../src/calculators/advisor/chance.ts';
import { normalVectors } from '../../src/calculators/advisor/normal-vectors.ts';
import { normalCdf } from '../../src/calculators/index.ts';

const independent = (n: number, variance: number): number[][] =>
  Array.from({ length: n }, (_, i) => Array.from({ length: n }, (__, j) => (i === j ? variance : 0)));

/** Three standard errors of a share of 400 draws. */
const luck = (share: number): number => 3 * Math.sqrt((share * (1 - share)) / 400);

describe('chanceOf(mean, covariance, widening, tolerancePa)', () => {
  test.each([0.3, 1, 2, 3])(
    'two depressions, each with sd 1, within %d: 2 Φ(tolerance/√2) − 1',
    (tolerance) => {
      const exact = 2 * normalCdf(tolerance / Math.SQRT2) - 1;
      const { within } = chanceOf([5, 5], independent(2, 1), 1, tolerance);
      expect(Math.abs(within - exact)).toBeLessThanOrEqual(luck(exact));
    },
  );

  test('the mean range of n normal numbers is d₂: 1.128, 1.693, 2.059, 2.534 for 2, 3, 4, 6 (ISO 7870-2:2013, table 2; from memory)', () => {
    for (const [n, range] of [
      [2, 1.128],
      [3, 1.693],
      [4, 2.059],
      [6, 2.534],
    ] as const) {
      // The range of n has a standard deviation of about 0.85; of 400 draws 0.043.
      const { spreadPa } = chanceOf(new Array<number>(n).fill(0), independent(n, 1), 1, 1);
      expect(Math.abs(spreadPa - range)).toBeLessThan(3 * 0.043);
    }
  });

  test('a widening of 4 is twice the standard deviation', () => {
    const mean = [0, 1, -2];
    expect(chanceOf(mean, independent(3, 1), 4, 3)).toEqual(chanceOf(mean, independent(3, 4), 1, 3));
  });

  test('what is known exactly is within or not', () => {
    expect(chanceOf([1, 2, 3], independent(3, 0), 1, 2)).toEqual({ within: 1, spreadPa: 2 });
    expect(chanceOf([1, 2, 3], independent(3, 0), 1, 1.999)).toEqual({ within: 0, spreadPa: 2 });
  });

  test('what is common to all does not count', () => {
    const common = [
      [1e6, 1e6],
      [1e6, 1e6],
    ];
    expect(chanceOf([7, 7.5], common, 1, 0.6).within).toBe(1);
  });

  test('an estimate that is no number is never within', () => {
    expect(chanceOf([NaN, NaN], independent(2, 1), 1, 1e9).within).toBe(0);
  });
});

test('isBetter(a, b): the greater chance, and of equal ones the smaller spread', () => {
  expect(isBetter({ within: 0.5, spreadPa: 9 }, { within: 0.4, spreadPa: 1 })).toBe(true);
  expect(isBetter({ within: 0.4, spreadPa: 1 }, { within: 0.4, spreadPa: 2 })).toBe(true);
  expect(isBetter({ within: 0.4, spreadPa: 2 }, { within: 0.4, spreadPa: 2 })).toBe(false);
});

describe('normalVectors(length)', () => {
  test('are 400, each with its negative, and the same at every call', () => {
    for (const length of [2, 5, 8]) {
      const vectors = normalVectors(length);
      expect(vectors).toHaveLength(400);
      vectors.slice(0, 200).forEach((vector, k) => {
        expect(vector).toHaveLength(length);
        expect(vectors[200 + k]!.map((entry) => 0 - entry)).toEqual(vector);
      });
      expect(normalVectors(length)).toBe(vectors);
    }
  });

  test('have variance 1 and no correlation, but for the luck of the draw', () => {
    const vectors = normalVectors(4);
    for (let i = 0; i < 4; i++)
      for (let j = 0; j <= i; j++) {
        const moment = vectors.reduce((sum, vector) => sum + vector[i]! * vector[j]!, 0) / vectors.length;
        // 200 independent ones: standard errors √(2/200) and √(1/200).
        expect(Math.abs(moment - (i === j ? 1 : 0))).toBeLessThan(3 * Math.sqrt((i === j ? 2 : 1) / 200));
      }
  });
});
