import { mean } from './mean.ts';

/** A list with at least two numbers, so that a scatter can be seen. */
export type AtLeastTwo = readonly [number, number, ...number[]];

/**
 * Sample standard deviation (n − 1 in the denominator) of at least two numbers, in their unit.
 *
 * Two passes, the second corrected by the residual of the mean; the corrected form keeps eight
 * digits where deviations are 1e-8 of the values (NIST StRD NumAcc4). Source: T. F. Chan,
 * G. H. Golub, R. J. LeVeque, Algorithms for computing the sample variance: analysis and
 * recommendations, The American Statistician 37 (1983), 242–247, eq. 1.7.
 */
export function sampleStandardDeviation(values: AtLeastTwo): number {
  const centre = mean(values);
  let squares = 0;
  let residual = 0;
  for (const value of values) {
    squares += (value - centre) ** 2;
    residual += value - centre;
  }
  return Math.sqrt((squares - residual ** 2 / values.length) / (values.length - 1));
}
