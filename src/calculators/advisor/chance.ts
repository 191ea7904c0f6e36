import { choleskyFactor, type Matrix } from './matrix.ts';
import { normalVectors } from './normal-vectors.ts';

export type Chance = { readonly within: number; readonly spreadPa: number };

/**
 * The chance that highest less lowest depression lies within the tolerance, and the mean of highest less lowest,
 * for depressions with a mean and a covariance, over the fixed normal vectors.
 */
export const chanceOf = (
  mean: readonly number[],
  covariance: Matrix,
  widening: number,
  tolerancePa: number,
): Chance => {
  const n = mean.length;
  const factor = choleskyFactor(covariance);
  const scale = Math.sqrt(widening);
  const vectors = normalVectors(n);
  let within = 0;
  let sum = 0;
  for (const vector of vectors) {
    let highest = -Infinity;
    let lowest = Infinity;
    for (let i = 0; i < n; i++) {
      const row = factor[i]!;
      let step = 0;
      for (let k = 0; k <= i; k++) step += row[k]! * vector[k]!;
      const depression = mean[i]! + scale * step;
      if (depression > highest) highest = depression;
      if (depression < lowest) lowest = depression;
    }
    const spread = highest - lowest;
    sum += spread;
    // Below 0 only where an estimate is no number, and that must never count as within.
    if (spread >= 0 && spread <= tolerancePa) within++;
  }
  return { within: within / vectors.length, spreadPa: sum / vectors.length };
};

/** Whether a chance is better than another; equal chances are told apart by the smaller spread. */
export const isBetter = (a: Chance, b: Chance): boolean =>
  a.within > b.within || (a.within === b.within && a.spreadPa < b.spreadPa);
