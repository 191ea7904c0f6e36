import { checkNumber } from './check-number.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

/** Where the formula holds, in degrees Celsius (scale of 1990). */
export const tanakaLimit = { min: 0, max: 40 } as const;

/** a₁ … a₅ of the formula, in °C, °C, °C², °C and kg/m³. */
export const tanakaCoefficients = [-3.983035, 301.797, 522528.9, 69.34881, 999.97495] as const;
const [a1, a2, a3, a4, greatestDensity] = tanakaCoefficients;

/**
 * Density of pure water without dissolved air at 101.325 kPa, in kg/m³: a₅ (1 − (t + a₁)² (t + a₂) / (a₃ (t + a₄))).
 * Its uncertainty is below 0.001 kg/m³. `celsius` 0…40; problems: `not-finite`, `out-of-range`.
 * Source: M. Tanaka, G. Girard, R. Davis, A. Peuto and N. Bignell, Recommended table for the density of water
 * between 0 °C and 40 °C, Metrologia 38 (2001) 301–309, eq. 1, recommended by the CIPM.
 */
export function waterDensityTanaka(celsius: number): Result<number> {
  const problem = checkNumber('celsius', celsius, tanakaLimit);
  if (problem !== undefined) return fail(problem);
  const lost = ((celsius + a1) ** 2 * (celsius + a2)) / (a3 * (celsius + a4));
  return succeed(greatestDensity * (1 - lost));
}
