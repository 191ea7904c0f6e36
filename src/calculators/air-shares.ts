import { checkDepression } from './check-session.ts';
import { checkNumber } from './check-number.ts';
import { mean } from './mean.ts';
import type { AtLeastOne } from './mean.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

/**
 * What each cylinder draws, as a multiple of what they draw on average: 1 for all of them in a level set.
 * A cylinder draws in proportion to the absolute pressure in its intake, at the same speed, temperature and
 * volumetric efficiency: (p − dᵢ) / mean of (p − d).
 *
 * Depressions in pascals, from 0 and below the ambient pressure. Problems: `not-finite`, `out-of-range`,
 * `depression-beyond-ambient`. Source: J. B. Heywood, Internal Combustion Engine Fundamentals (1988), eq. 2.27.
 */
export function airShares(depressionsPa: AtLeastOne, ambientPa: number): Result<readonly number[]> {
  for (const depressionPa of depressionsPa) {
    const problem =
      checkNumber('ambientPa', ambientPa, { above: 0 }) ??
      checkDepression('depressionPa', depressionPa, ambientPa);
    if (problem) return fail(problem);
  }
  const drawnOnAverage = ambientPa - mean(depressionsPa);
  return succeed(depressionsPa.map((depressionPa) => (ambientPa - depressionPa) / drawnOnAverage));
}
