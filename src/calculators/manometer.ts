import { columnPressurePa } from './column-pressure.ts';
import { standardGravity } from './exact-definitions.ts';

/** Upright height of a column of liquid that weighs as much as a pressure: h = p / (ρ g₀), in metres. */
export const columnHeightM = (densityKgPerM3: number, pressurePa: number): number =>
  pressurePa / (densityKgPerM3 * standardGravity);

/** What moves in the tube of a manometer. */
export type Manometer =
  /** Both legs alike; what is read is the difference of the two levels. */
  | { readonly kind: 'u-tube' }
  /** One tube out of a wide well, upright or leaning; what is read is how far the liquid moves along the tube. */
  | {
      readonly kind: 'well';
      readonly boreM: number;
      readonly wellBoreM: number;
      /** Of the tube from the level; a quarter turn is upright. In radians. */
      readonly angleRad: number;
    };

/**
 * Upright height that each metre of reading stands for: 1 in a U-tube; sin θ + (d/D)² from a well, whose own level
 * falls by the share of the areas as the liquid climbs.
 * Source: the hydrostatics of two communicating levels; so in engineering handbooks, seen in copies.
 */
export const uprightPerReading = (manometer: Manometer): number =>
  manometer.kind === 'u-tube'
    ? 1
    : Math.sin(manometer.angleRad) + (manometer.boreM / manometer.wellBoreM) ** 2;

/** The pressure behind a reading along the scale, in pascals: ρ g₀ times the upright height. */
export const manometerPressurePa = (
  densityKgPerM3: number,
  readingM: number,
  manometer: Manometer = { kind: 'u-tube' },
): number => columnPressurePa(densityKgPerM3, readingM * uprightPerReading(manometer));

/** The reading that a pressure makes, in metres along the scale; the inverse of `manometerPressurePa`. */
export const manometerReadingM = (
  densityKgPerM3: number,
  pressurePa: number,
  manometer: Manometer = { kind: 'u-tube' },
): number => columnHeightM(densityKgPerM3, pressurePa) / uprightPerReading(manometer);
