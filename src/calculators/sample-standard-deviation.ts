import { mean } from './mean.ts';

/** A list with at least two numbers, so that a scatter can be seen. */
export type AtLeastTwo = readonly [number, number, ...number[]];

/**
 * Sample standard deviation (n − 1 in the denominator) of at least two numbers, in their unit.
 *
 * Two passes: the squares are of differences from a mean that is good to its last digit, so it keeps
 * eight digits where deviations are 1e-8 of the values (NIST StRD NumAcc4). Source: T. F. Chan,
 * G. H. Golub, R. J. LeVeque, Algorithms for computing the sample variance: analysis and
 * recommendations, The American Statistician 37 (1983), 242–247, eq. 1.2.
 */
export function sampleStandardDeviation(values: AtLeastTwo): number {
  const centre = mean(values);
  const squares = values.reduce((total, value) => total + (value - centre) ** 2, 0);
  return Math.sqrt(squares / (values.length - 1));
}
