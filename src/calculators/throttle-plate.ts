import { checkNumber } from './check-number.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

export type ThrottlePlate = {
  /** Bore of the throttle. */
  readonly boreM: number;
  /** Angle of the shut plate from the cross-section of the bore. */
  readonly closedRadians: number;
  /** Angle at which it stands, from the same cross-section; not below the shut one. */
  readonly plateRadians: number;
};

/**
 * Open area of a butterfly throttle in m², its shaft left out: π D²/4 · (1 − cos ψ / cos ψ₀), seen along the bore.
 * Angles from 0 to a right angle. Problems: `not-finite`, `out-of-range`.
 * Source: J. B. Heywood, Internal Combustion Engine Fundamentals (1988), eq. 7.18 without the terms of the shaft.
 */
export function throttlePlateOpenAreaM2({
  boreM,
  closedRadians,
  plateRadians,
}: ThrottlePlate): Result<number> {
  const problem =
    checkNumber('boreM', boreM, { above: 0 }) ??
    checkNumber('closedRadians', closedRadians, { min: 0, below: Math.PI / 2 }) ??
    checkNumber('plateRadians', plateRadians, { min: closedRadians, max: Math.PI / 2 });
  if (problem) return fail(problem);
  // cos ψ₀ − cos ψ as a product of sines, so that a plate that has hardly moved keeps its digits.
  const opened =
    2 * Math.sin((plateRadians + closedRadians) / 2) * Math.sin((plateRadians - closedRadians) / 2);
  return succeed(((Math.PI * boreM ** 2) / 4) * (opened / Math.cos(closedRadians)));
}
