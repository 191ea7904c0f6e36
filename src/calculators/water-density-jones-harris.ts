import { checkNumber } from './check-number.ts';
import { polynomial } from './polynomial.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

/** Where the formula holds, in degrees Celsius (scale of 1990). */
export const jonesHarrisLimit = { min: 5, max: 40 } as const;

/** From t⁰ to t⁴, in kg/m³ per °C to the power. */
export const jonesHarrisCoefficients = [999.85308, 6.32693e-2, -8.523829e-3, 6.943248e-5, -3.821216e-7];

/**
 * Density of pure water without dissolved air at 101.325 kPa, in kg/m³.
 * `celsius` 5…40; problems: `not-finite`, `out-of-range`.
 * Source: F. E. Jones and G. L. Harris, ITS-90 density of water formulation for volumetric standards calibration,
 * Journal of Research of the National Institute of Standards and Technology 97 (1992) 335–340, eq. 5.
 */
export function waterDensityJonesHarris(celsius: number): Result<number> {
  const problem = checkNumber('celsius', celsius, jonesHarrisLimit);
  return problem === undefined ? succeed(polynomial(celsius, jonesHarrisCoefficients)) : fail(problem);
}
