import { checkNumber } from './check-number.ts';
import { polynomial } from './polynomial.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

/** Coefficients of the fit, from the lowest power of N/1000, in bar. */
export const motoringFrictionBar = [0.97, 0.15, 0.05] as const;
const pascalsPerBar = 100_000;

/**
 * Mean effective pressure, in pascals, that it takes to motor a four-stroke petrol engine at full throttle:
 * 0.97 + 0.15 (N/1000) + 0.05 (N/1000)² bar, N in revolutions per minute. A fit to engines with four cylinders
 * of 845 to 2000 cm³. Problems: `not-finite`, `out-of-range`.
 * Source: J. B. Heywood, Internal Combustion Engine Fundamentals (1988), eq. 13.6, after Barnes-Moss.
 */
export function motoringFrictionPa(rpm: number): Result<number> {
  const problem = checkNumber('rpm', rpm, { min: 0 });
  if (problem) return fail(problem);
  const thousands = rpm / 1000;
  return succeed(polynomial(thousands, motoringFrictionBar) * pascalsPerBar);
}
