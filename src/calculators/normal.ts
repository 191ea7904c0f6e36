import { continuedFraction } from './continued-fraction.ts';

/** Density of the standard normal distribution at z. */
export const normalDensity = (z: number): number => Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI);

/**
 * Probability that a standard normal variable lies below z; about 1e-14 of the smaller tail.
 *
 * Source: M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions (1964): the series
 * 26.2.11 in the middle, the continued fraction 26.2.14 in the tails.
 */
export const normalCdf = (z: number): number => normalTail(-z);

/** Probability that a standard normal variable lies above z. */
export function normalTail(z: number): number {
  if (z < 0) return 1 - normalTail(-z);
  if (z < seriesEnd) return 0.5 - normalCentre(z);
  // Below 1e-320 from here on; the fraction needs no terms for what is nothing.
  if (z > 39) return 0;
  return normalDensity(z) / continuedFraction(z, (k) => [k, z]);
}

/** Probability that a standard normal variable lies between 0 and z. */
export function normalCentre(z: number): number {
  if (Math.abs(z) >= seriesEnd) return Math.sign(z) * (0.5 - normalTail(Math.abs(z)));
  let term = z;
  let total = z;
  for (let odd = 3; Math.abs(term) > 1e-17 * Math.abs(total); odd += 2) {
    term *= (z * z) / odd;
    total += term;
  }
  return normalDensity(z) * total;
}

/** Here the tail is 0.07, so that the series loses one digit of it at most. */
const seriesEnd = 1.5;

/**
 * The z below which a standard normal variable lies with the probability p, 0 < p < 1.
 *
 * Start: Abramowitz and Stegun 26.2.23 (error below 4.5e-4); then Halley's steps on the tail or,
 * near the middle, on the probability from 0.
 */
export function normalQuantile(p: number): number {
  if (!(p > 0 && p < 1)) throw new RangeError(`probability ${p}`);
  if (p > 0.5) return -lowerHalfQuantile(1 - p, p - 0.5);
  return lowerHalfQuantile(p, 0.5 - p);
}

/** The quantile of `tail` ≤ 1/2; `centre` is 1/2 − tail, without the rounding of that difference. */
function lowerHalfQuantile(tail: number, centre: number): number {
  const t = Math.sqrt(-2 * Math.log(tail));
  let z =
    t - (2.515517 + t * (0.802853 + t * 0.010328)) / (1 + t * (1.432788 + t * (0.189269 + t * 0.001308)));
  for (let step = 0; step < 3; step += 1) {
    const excess = centre < 0.25 ? centre - normalCentre(z) : normalTail(z) - tail;
    const newton = excess / normalDensity(z);
    z += newton / (1 - 0.5 * z * newton);
  }
  return -z;
}
