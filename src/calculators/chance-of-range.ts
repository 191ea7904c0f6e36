import { integrate } from './gauss-legendre.ts';
import { studentTQuantile } from './student-t-quantile.ts';
import { studentTCdf, studentTDensity } from './student-t.ts';

/** What is known of one value: it lies at `centre`, with a Student t distribution of this scale about it. */
export type Known = {
  readonly centre: number;
  /** Above 0, in the unit of `centre`. */
  readonly scale: number;
  readonly degreesOfFreedom: number;
};

/** Left out at either end of every distribution; bounds the error of the chance at about this times the count. */
const negligible = 1e-11;

/**
 * The probability that the highest of several independent values less the lowest is at most `width`.
 *
 * P = ∫ Σᵢ fᵢ(x) Πⱼ≠ᵢ [Fⱼ(x + w) − Fⱼ(x)] dx: value i is the lowest, at x, and all the others lie
 * between x and x + w. No randomness, so the same readings give the same chance everywhere. Source:
 * H. A. David, H. N. Nagaraja, Order Statistics, 3rd edition (2003), section 2.3, for unlike
 * distributions as in chapter 5. From memory; the tests compare it with closed forms and with trials.
 */
export function chanceOfRange(values: readonly Known[], width: number): number {
  const reach = values.map(
    ({ scale, degreesOfFreedom }) => -scale * studentTQuantile(negligible, degreesOfFreedom),
  );
  const from = Math.max(...values.map(({ centre }, j) => centre - width - reach[j]!));
  const to = Math.min(...values.map(({ centre }, j) => centre + reach[j]!));
  if (!(width > 0 && from < to)) return 0;
  const probability = integrate(breakpoints(values, width, from, to), (x) => lowestAt(values, width, x));
  return Math.min(1, Math.max(0, probability));
}

/** Density of "the lowest value is at x and the others are within the width above it". */
function lowestAt(values: readonly Known[], width: number, x: number): number {
  // Sum over i of density i times the others' product, carried along: (s, p) → (s·q + f·p, p·q).
  let sum = 0;
  let product = 1;
  for (const { centre, scale, degreesOfFreedom } of values) {
    const z = (x - centre) / scale;
    const zAbove = (x + width - centre) / scale;
    // On the side of the smaller numbers, so that the difference keeps its digits.
    const between =
      z > 0
        ? studentTCdf(-z, degreesOfFreedom) - studentTCdf(-zAbove, degreesOfFreedom)
        : studentTCdf(zAbove, degreesOfFreedom) - studentTCdf(z, degreesOfFreedom);
    sum = sum * between + (product * studentTDensity(z, degreesOfFreedom)) / scale;
    product *= between;
  }
  return sum;
}

/** Around every centre, and a width below it, at 0, 1, 2, 4, … scales, where a bell changes its shape. */
function breakpoints(values: readonly Known[], width: number, from: number, to: number): number[] {
  const found = new Set([from, to]);
  for (const { centre, scale } of values) {
    for (const middle of [centre, centre - width]) {
      const farthest = Math.max(to - middle, middle - from);
      const steps = [0];
      for (let step = scale; step < farthest; step *= 2) steps.push(step, -step);
      for (const step of steps) if (middle + step > from && middle + step < to) found.add(middle + step);
    }
  }
  return [...found].sort((a, b) => a - b);
}

/**
 * The same where the values also share an error: value i moves by `loadings[i]` times one standard
 * normal number. Given that number the values are independent, so the chance is averaged over it.
 */
export function chanceOfRangeWithShared(
  values: readonly Known[],
  loadings: readonly number[],
  width: number,
): number {
  const apart = Math.max(...loadings) - Math.min(...loadings);
  if (!(apart > 0)) return chanceOfRange(values, width);
  // Equal steps converge faster than any power for a bell; a step must be short beside the narrowest value.
  const narrowest = Math.min(...values.map(({ scale }) => scale));
  const step = Math.max(1 / 64, Math.min(1 / 2, narrowest / apart));
  let chance = 0;
  let weights = 0;
  for (let k = -Math.round(6 / step); k <= Math.round(6 / step); k += 1) {
    const shared = k * step;
    const weight = Math.exp(-0.5 * shared * shared);
    const moved = values.map((value, i) => ({
      ...value,
      centre: value.centre + shared * loadings[i]!,
    }));
    chance += weight * chanceOfRange(moved, width);
    weights += weight;
  }
  return chance / weights;
}
