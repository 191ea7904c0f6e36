/** A list that cannot be empty, so that a mean always exists. */
export type AtLeastOne = readonly [number, ...number[]];

/**
 * Arithmetic mean of at least one number, in their unit.
 *
 * The second pass adds the mean of the residuals, which takes out the rounding of the first sum.
 * Source: T. F. Chan, G. H. Golub, R. J. LeVeque, Algorithms for computing the sample variance:
 * analysis and recommendations, The American Statistician 37 (1983), 242–247.
 */
export function mean(values: AtLeastOne): number {
  const first = sum(values) / values.length;
  return first + sum(values.map((value) => value - first)) / values.length;
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
