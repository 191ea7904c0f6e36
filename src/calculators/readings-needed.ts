import { checkNumber } from './check-number.ts';
import { combine } from './reading-uncertainty.ts';
import type { Uncertainty } from './reading-uncertainty.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';
import { studentTQuantile } from './student-t-quantile.ts';

/** How one reading scatters, and the step of its scale; both in pascals. */
export type ReadingScatter = {
  /** Standard deviation of one reading of many: what a mean of several divides. */
  readonly scatterPa: number;
  /** Step of the scale: readings that fall on the same mark share its rounding, so no mean divides it. */
  readonly resolutionPa: number;
};

export type Resolving = {
  /** Two-sided, such as 0.95. */
  readonly confidence: number;
  /** Chance to see a difference that is really there, above 0.5; left out, it is not asked for. */
  readonly power?: number;
};

/** More readings than this nobody takes; the count itself is then of no use. */
export const mostReadingsNeeded = 10_000;

/**
 * Uncertainty of the difference of two means of `count` readings each: u² = 2 s²/n + 2 r²/12 (GUM 4.2.3, 5.1.2, F.2.2.1).
 * The scatter counts as estimated from these readings, with 2(n − 1) degrees of freedom, the scale as known;
 * together by Welch and Satterthwaite (GUM G.4.1, eq. G.2b).
 */
export const differenceUncertainty = (
  { scatterPa, resolutionPa }: ReadingScatter,
  count: number,
): Uncertainty =>
  combine([
    { variancePa2: (2 * scatterPa ** 2) / count, degreesOfFreedom: 2 * (count - 1) },
    { variancePa2: resolutionPa ** 2 / 6, degreesOfFreedom: Infinity },
  ]);

/**
 * The smallest difference, in pascals, that so many readings of each of two carburettors resolve: Student's t at the
 * confidence times the uncertainty of the difference; with a power, the t of the power is added to it.
 * `count` is at least 2. Source: NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.2.2 (t in place of the normal
 * quantile, with the degrees of freedom of the count itself) and 7.3.1; from memory.
 */
export function resolvableDifference(
  scatter: ReadingScatter,
  count: number,
  { confidence, power }: Resolving,
): number {
  const { standardUncertaintyPa, degreesOfFreedom } = differenceUncertainty(scatter, count);
  const t = studentTQuantile((1 + confidence) / 2, degreesOfFreedom);
  const tOfPower = power === undefined ? 0 : studentTQuantile(power, degreesOfFreedom);
  return (t + tOfPower) * standardUncertaintyPa;
}

/** What no number of readings gets below: the rounding of the scale, which every mean keeps. */
export const finestDifference = (resolutionPa: number, resolving: Resolving): number =>
  resolvableDifference({ scatterPa: 0, resolutionPa }, 2, resolving);

/**
 * Readings of each of two carburettors that resolve a difference: the smallest count, from 2, whose
 * `resolvableDifference` is no larger. Both its factors fall with the count, so halving finds it.
 * Problems: `not-finite`, `out-of-range`; `below-the-step` where the rounding of the scale hides the difference from any
 * number of readings, or from `mostReadingsNeeded`.
 */
export function readingsNeeded(
  scatter: ReadingScatter,
  differencePa: number,
  resolving: Resolving,
): Result<number> {
  const problem =
    checkNumber('scatterPa', scatter.scatterPa, { min: 0 }) ??
    checkNumber('resolutionPa', scatter.resolutionPa, { min: 0 }) ??
    checkNumber('differencePa', differencePa, { above: 0 });
  if (problem) return fail(problem);
  const resolves = (count: number): boolean =>
    resolvableDifference(scatter, count, resolving) <= differencePa;
  if (!resolves(mostReadingsNeeded))
    return fail({
      kind: 'below-the-step',
      field: 'differencePa',
      value: differencePa,
      limit: { min: resolvableDifference(scatter, mostReadingsNeeded, resolving) },
    });
  let tooFew = 1;
  let enough = mostReadingsNeeded;
  while (enough - tooFew > 1) {
    const between = Math.floor((tooFew + enough) / 2);
    if (resolves(between)) enough = between;
    else tooFew = between;
  }
  return succeed(enough);
}
