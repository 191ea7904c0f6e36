import { checkNumber } from './check-number.ts';
import { polynomial } from './polynomial.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

/** Where the formula holds, in degrees Celsius (scale of 1968); above 100 °C the water is kept from boiling. */
export const kellLimit = { min: 0, max: 150 } as const;

/** Powers of t above the line, in kg/m³ per °C to the power; from t⁰ to t⁵. */
export const kellNumerator = [
  999.83952, 16.945176, -7.9870401e-3, -46.170461e-6, 105.56302e-9, -280.54253e-12,
];
/** The one power of t below it. A printed copy has 16.897850e-3, two digits exchanged. */
export const kellDenominator = 16.87985e-3;

/**
 * Density of pure water without dissolved air at 101.325 kPa, in kg/m³.
 * `celsius` 0…150; problems: `not-finite`, `out-of-range`.
 * Source: G. S. Kell, Density, thermal expansivity, and compressibility of liquid water from 0° to 150 °C, Journal of
 * Chemical and Engineering Data 20 (1975) 97–105, eq. 16.
 */
export function waterDensityKell(celsius: number): Result<number> {
  const problem = checkNumber('celsius', celsius, kellLimit);
  return problem === undefined
    ? succeed(polynomial(celsius, kellNumerator) / (1 + kellDenominator * celsius))
    : fail(problem);
}
