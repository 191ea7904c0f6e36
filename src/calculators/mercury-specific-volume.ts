import { checkNumber } from './check-number.ts';
import { mercuryLimit } from './mercury-density.ts';
import { polynomial } from './polynomial.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

/*
 * Older tables of mercury. They count in the millilitre of 1901, the volume of a gram of water at its densest, which
 * was 1.000028 cm³ (General Conference on Weights and Measures, resolutions of 1901 and 1964): so 13.5955 g to the
 * millilitre at 0 °C where we say 13.5951 g to the cubic centimetre.
 */

/** Volume of a gram of mercury at 0 °C in those tables, mL. */
export const olderMercuryVolumeMl = 0.073554;

/** Growth of a volume, from t⁰ to t³: O. J. Broch's reduction (1885) of the measurements of V. Regnault. From memory. */
export const olderMercuryGrowth = [1, 1.81792e-4, 1.75e-10, 3.5116e-11];

/** The quadratic that stands beneath the table, from t⁰ to t²; the table's own words: accurate to 1 part in 70,000. */
export const olderMercuryQuadratic = [olderMercuryVolumeMl, 1.3245e-5, 1.22823e-9];

/**
 * Volume of a gram of mercury in the older tables, in mL of 1901; it gives all twelve printed volumes from −10 °C to
 * 340 °C within 3 units of the seventh decimal. `celsius` −38…350; problems: `not-finite`, `out-of-range`.
 * Source: Volume of mercury, CRC Handbook of Chemistry and Physics, seen in an excerpt.
 */
export const mercuryVolumeOfOlderTables = (celsius: number): Result<number> =>
  checked(celsius, () => olderMercuryVolumeMl * polynomial(celsius, olderMercuryGrowth));

/** The same by the quadratic; see `mercuryVolumeOfOlderTables`. */
export const mercuryVolumeByQuadratic = (celsius: number): Result<number> =>
  checked(celsius, () => polynomial(celsius, olderMercuryQuadratic));

/** Grams to the millilitre in the older tables: the reciprocal of the volume. Problems as above. */
export function mercuryDensityOfOlderTables(celsius: number): Result<number> {
  const volume = mercuryVolumeOfOlderTables(celsius);
  return volume.ok ? succeed(1 / volume.value) : volume;
}

function checked(celsius: number, compute: () => number): Result<number> {
  const problem = checkNumber('celsius', celsius, mercuryLimit);
  return problem === undefined ? succeed(compute()) : fail(problem);
}
