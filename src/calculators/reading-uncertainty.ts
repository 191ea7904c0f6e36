import type { Gauge } from './protocol.ts';

/** A value's standard uncertainty in pascals, and the degrees of freedom that it rests on. */
export type Uncertainty = {
  readonly standardUncertaintyPa: number;
  /** Infinity where nothing was estimated from a scatter. */
  readonly degreesOfFreedom: number;
};

/**
 * Variance, in Pa², of one reading of a gauge: u² = a²/3 + r²/12, with the flutter a as half-width
 * of a rectangular distribution and the resolution r as its full width.
 *
 * Source: JCGM 100:2008, Evaluation of measurement data: Guide to the expression of uncertainty in
 * measurement (GUM), 4.3.7 and F.2.2.1.
 */
export const readingVariancePa2 = (gauge: Gauge): number =>
  gauge.flutterPa ** 2 / 3 + gauge.resolutionPa ** 2 / 12;

/** Standard uncertainty of one reading, in pascals: the root of that variance. */
export const readingStandardUncertaintyPa = (gauge: Gauge): number => Math.sqrt(readingVariancePa2(gauge));

/**
 * Standard uncertainty of the mean of `count` readings of one carburettor, in pascals.
 *
 * u² = s²/n + a²/(3n) + r²/12 (GUM 4.2.3 and 5.1.2). Flutter differs from reading to reading, so a
 * mean of n divides it; readings that fall on the same mark share their rounding, so r²/12 stays.
 * Scatter and told flutter both stand in the sum: where the scatter *is* the flutter the result is
 * at most √2 too wide; where the flutter was told too small, or two readings agree by luck, it is
 * not too narrow. With one reading there is no scatter and the told figures remain.
 *
 * Degrees of freedom by Welch and Satterthwaite (GUM G.4.1, eq. G.2b), the told figures counting
 * as exactly known.
 */
export function meanUncertainty(
  gauge: Gauge,
  count: number,
  scatter?: { readonly standardDeviationPa: number; readonly degreesOfFreedom: number },
): Uncertainty {
  const told = gauge.flutterPa ** 2 / 3 / count + gauge.resolutionPa ** 2 / 12;
  const seen = scatter === undefined ? 0 : scatter.standardDeviationPa ** 2 / count;
  return combine([
    { variancePa2: told, degreesOfFreedom: Infinity },
    { variancePa2: seen, degreesOfFreedom: scatter?.degreesOfFreedom ?? Infinity },
  ]);
}

/** Combined standard uncertainty of independent contributions (GUM 5.1.2, eq. G.2b). */
export function combine(
  contributions: readonly { readonly variancePa2: number; readonly degreesOfFreedom: number }[],
): Uncertainty {
  let variance = 0;
  let fourth = 0;
  for (const { variancePa2, degreesOfFreedom } of contributions) {
    variance += variancePa2;
    fourth += variancePa2 ** 2 / degreesOfFreedom;
  }
  return {
    standardUncertaintyPa: Math.sqrt(variance),
    degreesOfFreedom: fourth > 0 ? variance ** 2 / fourth : Infinity,
  };
}
