import { checkNumber } from './check-number.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

/**
 * Accuracy classes of Bourdon tube gauges: the limit of the permissible error is so many per cent of the span.
 * Source: EN 837-1:1998, Pressure gauges, part 1, table 11 (seen in a copy).
 */
export const accuracyClasses = [0.1, 0.25, 0.6, 1, 1.6, 2.5, 4] as const;

/** An accuracy of 100 % of the span says nothing; no instrument is marked so. */
export const accuracyClassLimit = { above: 0, max: 100 } as const;

/** The printed limit of a class of EN 837-1, in per cent of the span; null if the standard has no such class. */
export const classLimitPercent = (accuracyClass: number): number | null =>
  accuracyClasses.find((each) => each === accuracyClass) ?? null;

/**
 * Largest error that a gauge may show, either way, in the unit of its span: e = class/100 × span.
 * `accuracyClass` is in per cent of the span, of the standard or not; `span` is the highest less the lowest mark of the
 * scale, above 0: 1 bar for a scale from −1 bar to 0. Problems: `not-finite`, `out-of-range`.
 * Source: EN 837-1:1998, clause 6 and table 11 (seen in a copy).
 */
export function permissibleError(accuracyClass: number, span: number): Result<number> {
  const problem =
    checkNumber('accuracyClass', accuracyClass, accuracyClassLimit) ??
    checkNumber('span', span, { above: 0 });
  return problem ? fail(problem) : succeed((accuracyClass / 100) * span);
}
