import { describe, expect, test } from 'vitest';
import { chanceOfRange, chanceOfRangeWithShared } from '../../src/calculators/chance-of-range.ts';
import type { Known } from '../../src/calculators/chance-of-range.ts';
import { normalCdf } from '../../src/calculators/normal.ts';
import { seededNormal, seededRandom } from '../seeded-random.ts';
import { tolerances } from '../tolerances.ts';

const { absolute } = tolerances.chance;
const known = (centre: number, scale: number, degreesOfFreedom = Infinity): Known => ({
  centre,
  scale,
  degreesOfFreedom,
});
const alike = (count: number, degreesOfFreedom = Infinity) =>
  Array.from({ length: count }, () => known(0, 1, degreesOfFreedom));

test('chanceOfRange(two alike, w) is 2Φ(w/(σ√2)) − 1', () => {
  for (const scale of [0.01, 1, 300]) {
    for (const ratio of [0.01, 0.3, 1, 2.7, 6]) {
      const expected = 2 * normalCdf(ratio / Math.SQRT2) - 1;
      const chance = chanceOfRange([known(250, scale), known(250, scale)], ratio * scale);
      expect(Math.abs(chance - expected)).toBeLessThanOrEqual(absolute);
    }
  }
});

test('chanceOfRange(two unlike, w) is Φ((w − δ)/σ) − Φ((−w − δ)/σ), also where one is known far better', () => {
  for (const [one, other, apart, width] of [
    [1, 1, 3, 2],
    [1, 1e-4, 0.5, 1],
    [1, 1e3, 10, 500],
    [2, 3, 20, 4],
    [399, 3, 0, 1333],
  ] as const) {
    const scale = Math.hypot(one, other);
    const expected = normalCdf((width - apart) / scale) - normalCdf((-width - apart) / scale);
    const chance = chanceOfRange([known(0, one), known(apart, other)], width);
    expect(Math.abs(chance - expected)).toBeLessThanOrEqual(absolute);
  }
});

test('chanceOfRange(n alike, w) at the printed 5 % points of the range is 0.95', () => {
  // Upper 5 % points of the range of n normal values: E. S. Pearson, H. O. Hartley, Biometrika Tables for
  // Statisticians, volume 1, table 22, printed to two decimals; half a unit there moves the chance by 0.0008.
  for (const [count, point] of [
    [2, 2.77],
    [3, 3.31],
    [4, 3.63],
    [5, 3.86],
    [6, 4.03],
    [8, 4.29],
  ] as const) {
    expect(Math.abs(chanceOfRange(alike(count), point) - 0.95)).toBeLessThanOrEqual(0.0008);
  }
});

test('chanceOfRange(two alike with one degree of freedom, w) is that of a doubled Cauchy variable', () => {
  // The difference of two Cauchy variables is a Cauchy variable of twice the scale.
  for (const width of [0.1, 1, 5, 100]) {
    const expected = (2 / Math.PI) * Math.atan(width / 2);
    expect(Math.abs(chanceOfRange(alike(2, 1), width) - expected)).toBeLessThanOrEqual(absolute);
  }
});

test('chanceOfRange(…) at the ends', () => {
  expect(chanceOfRange(alike(4), 0)).toBe(0);
  expect(chanceOfRange(alike(4), 60)).toBeGreaterThan(1 - absolute);
  expect(chanceOfRange(alike(8), 60)).toBeLessThanOrEqual(1);
  expect(chanceOfRange([known(0, 1), known(1e6, 1)], 100)).toBe(0);
  // Each lies within 6.71 of its centre but for 1e-11: the two cannot meet.
  expect(chanceOfRange([known(0, 1), known(14, 1)], 0.5)).toBe(0);
});

describe('against trials with a fixed seed, within three standard deviations of the trials', () => {
  const trials = 100_000;
  const normal = seededNormal(seededRandom(20260711));
  /** A t variable with whole degrees of freedom: a normal one over the root of a mean of squares. */
  const student = (degreesOfFreedom: number) => {
    if (degreesOfFreedom === Infinity) return normal();
    let squares = 0;
    for (let k = 0; k < degreesOfFreedom; k += 1) squares += normal() ** 2;
    return normal() / Math.sqrt(squares / degreesOfFreedom);
  };

  const share = (values: readonly Known[], loadings: readonly number[], width: number) => {
    let within = 0;
    for (let trial = 0; trial < trials; trial += 1) {
      const shared = normal();
      const drawn = values.map(
        ({ centre, scale, degreesOfFreedom }, i) =>
          centre + scale * student(degreesOfFreedom) + shared * (loadings[i] ?? 0),
      );
      if (Math.max(...drawn) - Math.min(...drawn) <= width) within += 1;
    }
    return within / trials;
  };

  test.each([
    ['three unlike', [known(0, 1), known(0.5, 2), known(-1, 0.7)], [], 3.5],
    ['four, one read twice only', [known(0, 1, 1), known(0.5, 1), known(1, 1), known(0, 1)], [], 3],
    ['six of few degrees of freedom', [3, 4, 5, 3, 4, 5].map((df, i) => known(i * 0.2, 1, df)), [], 4],
    ['four that share a drift', alike(4), [-1, 0, 1, 2], 3.5],
    ['two known well that share a large drift', [known(0, 0.1), known(0, 0.1)], [-1, 1], 1],
  ] as const)('%s', (_, values, loadings, width) => {
    const chance =
      loadings.length === 0 ? chanceOfRange(values, width) : chanceOfRangeWithShared(values, loadings, width);
    const deviation = Math.sqrt((chance * (1 - chance)) / trials);
    expect(chance).toBeGreaterThan(0.02);
    expect(chance).toBeLessThan(0.98);
    expect(Math.abs(share(values, loadings, width) - chance)).toBeLessThanOrEqual(3 * deviation);
  });
});

test('chanceOfRangeWithShared(two, loadings, w) has the closed form of one larger deviation', () => {
  for (const [scale, apart, width] of [
    [1, 2, 3],
    [0.1, 2, 1],
    [1, 0.01, 2],
    [0.05, 3, 1],
  ] as const) {
    const expected = 2 * normalCdf(width / Math.hypot(scale, scale, apart)) - 1;
    const chance = chanceOfRangeWithShared([known(5, scale), known(5, scale)], [1, 1 + apart], width);
    expect(Math.abs(chance - expected)).toBeLessThanOrEqual(absolute);
  }
});

test('a shared error that moves all alike does not matter', () => {
  const values = [known(0, 1), known(1, 2), known(0, 1)];
  expect(chanceOfRangeWithShared(values, [3, 3, 3], 4)).toBe(chanceOfRange(values, 4));
});
