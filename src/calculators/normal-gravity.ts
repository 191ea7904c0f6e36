import { checkNumber } from './check-number.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

/** Gravity at the equator in m/s², and how it grows with sin² of the latitude and shrinks with sin² of twice that. */
export const gravityAtEquator = 9.780327;
export const gravityWithLatitude = 0.0053024;
export const gravityWithDoubleLatitude = 0.0000058;
/** What a metre of height takes away, in m/s² per m. */
export const gravityPerMetre = 3.086e-6;

/** Heights for which the loss counts as linear, in metres. */
export const gravityHeightLimit = { min: -500, max: 10_000 } as const;

/**
 * Acceleration of free fall in m/s² at a latitude in degrees (north or south) and a height above the sea in metres:
 * 9.780327 (1 + 0.0053024 sin²φ − 0.0000058 sin²2φ) − 3.086 × 10⁻⁶ H. What lies underground changes it by up to 0.00005
 * of it. Problems: `not-finite`, `out-of-range`.
 * Source: H. Moritz, Geodetic Reference System 1980, Bulletin Géodésique 54 (1980) 395–405, the short series of normal
 * gravity; with the term of height as the National Physical Laboratory gives it in answers on pressure, seen in a copy.
 */
export function normalGravity(latitudeDegrees: number, heightM = 0): Result<number> {
  const problem =
    checkNumber('latitudeDegrees', latitudeDegrees, { min: -90, max: 90 }) ??
    checkNumber('heightM', heightM, gravityHeightLimit);
  if (problem !== undefined) return fail(problem);
  const latitude = (latitudeDegrees * Math.PI) / 180;
  const growth =
    gravityWithLatitude * Math.sin(latitude) ** 2 - gravityWithDoubleLatitude * Math.sin(2 * latitude) ** 2;
  return succeed(gravityAtEquator * (1 + growth) - gravityPerMetre * heightM);
}
