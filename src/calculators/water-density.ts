import { checkNumber } from './check-number.ts';
import { fail } from './result.ts';
import type { Result } from './result.ts';
import { waterDensityKell } from './water-density-kell.ts';
import { tanakaLimit, waterDensityTanaka } from './water-density-tanaka.ts';

/** Temperatures at which water is a liquid under the open air, in degrees Celsius. */
export const waterLimit = { min: 0, max: 100 } as const;

/**
 * Density of pure water in kg/m³: Tanaka's formula where it holds, Kell's up to 100 °C; they meet within 0.001 kg/m³.
 * Problems: `not-finite`, `out-of-range`.
 */
export function waterDensity(celsius: number): Result<number> {
  const problem = checkNumber('celsius', celsius, waterLimit);
  if (problem !== undefined) return fail(problem);
  return celsius <= tanakaLimit.max ? waterDensityTanaka(celsius) : waterDensityKell(celsius);
}
