import { checkNumber } from './check-number.ts';
import { mercuryDensityAt0Celsius } from './exact-definitions.ts';
import { polynomial } from './polynomial.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

/** From freezing to where the formula was measured, in degrees Celsius. */
export const mercuryLimit = { min: -38, max: 350 } as const;

/** Powers of t from t¹ to t⁴ in the growth of a volume of mercury, per °C to the power, times 10⁸. */
export const mercuryGrowth = [18144.01, 0.7016, 2.8625e-3, 2.617e-6];

/**
 * Density of mercury at 101.325 kPa, in kg/m³: ρ₀ / (1 + 10⁻⁸ t (18144.01 + 0.7016 t + …)).
 * `celsius` −38…350; problems: `not-finite`, `out-of-range`.
 * Source: J. A. Beattie, B. E. Blaisdell, J. Kaye, H. T. Gerry and C. A. Johnson, An experimental study of the absolute
 * temperature scale VIII, Proceedings of the American Academy of Arts and Sciences 74 (1941) 371–388; coefficients
 * from memory, as they stand in the table of P. H. Bigg, British Journal of Applied Physics 15 (1964) 1111.
 */
export function mercuryDensity(celsius: number): Result<number> {
  const problem = checkNumber('celsius', celsius, mercuryLimit);
  if (problem !== undefined) return fail(problem);
  return succeed(mercuryDensityAt0Celsius / (1 + 1e-8 * celsius * polynomial(celsius, mercuryGrowth)));
}
