import { columnHeightM, manometerPressurePa, uprightPerReading } from './manometer.ts';
import type { Manometer } from './manometer.ts';

/** What the two sides of the column are joined to. */
export type ColumnSides =
  /** Two carburettors: the column shows their difference. */
  | 'difference'
  /** One carburettor and the open air. */
  | 'depression';

export type ColumnQuestion = {
  readonly kgPerM3: number;
  readonly manometer: Manometer;
  /** Inner diameter of the tube. */
  readonly boreM: number;
  readonly sides: ColumnSides;
  /** Largest difference between two carburettors that the column must show. */
  readonly differencePa: number;
  /** Depression of one carburettor against the air. */
  readonly depressionPa: number;
  /** A reading along the scale, or null. */
  readonly readingM: number | null;
};

export type ColumnAnswer = {
  /** What the column must show: the difference, or the depression. */
  readonly shownPa: number;
  readonly uprightM: number;
  /** The same along the scale; longer than `uprightM` where the tube leans. */
  readonly scaleM: number;
  /** Length of a leg, or of the tube out of the well, with its margin. */
  readonly legM: number;
  /** All of the tube: two legs and a bend, or one leg and what dips into the well. */
  readonly tubeM: number;
  /** All liquid that is in it; in a well-type nearly all of it stands in the well. */
  readonly liquidM3: number;
  /** What a catch pot in each line to the engine must hold. */
  readonly catchM3: number;
  readonly catchPots: 1 | 2;
  /** How high the depression of one carburettor would stand: what pulls when the other side is open to the air. */
  readonly openSideM: number;
  readonly fit: 'fits' | 'too-tall' | 'hard-to-read';
  /** The pressure behind the reading, or null. */
  readonly readPa: number | null;
};

/** Common practice: a quarter more than is expected, and a catch pot for twice all the liquid. */
export const columnMargin = 1.25;
export const catchFactor = 2;
/** Common practice: a well holds twice what the tube takes out of it, so that its foot stays covered. */
export const wellFactor = 2;
/** Ours: tube for the bend or the dip, in metres; the tallest leg that still stands on a bench; the least level that can be read to a twentieth. */
export const bendM = 0.1;
export const tallestLegM = 2;
export const leastLevelM = 0.02;

/**
 * How high a column stands, how long its tube must be, and what catches the liquid.
 *
 * The catch pot does not hang on the depression. When a line slips off or the throttle snaps shut, the pull is several times
 * the column, and no tube of that length is built; then all of the liquid goes over. So each line to the engine
 * has a pot that holds all of it, twice. Common practice, without a published source.
 *
 * `given` holds only positive figures: its bounds are checked where they are read.
 * Source: hydrostatics, p = ρ g₀ h; see `manometer.ts`.
 */
export function computeLiquidColumn(given: ColumnQuestion): ColumnAnswer {
  const { kgPerM3, manometer, boreM, sides, differencePa, depressionPa, readingM } = given;
  const shownPa = sides === 'difference' ? differencePa : depressionPa;
  const uprightM = columnHeightM(kgPerM3, shownPa);
  const scaleM = uprightM / uprightPerReading(manometer);
  const legM = columnMargin * scaleM;
  const boreAreaM2 = (Math.PI / 4) * boreM ** 2;
  const isUTube = manometer.kind === 'u-tube';
  // A U-tube stands half full, so that both legs together hold one; a well holds what the tube takes, twice.
  const liquidM3 = boreAreaM2 * (isUTube ? legM + bendM : wellFactor * (legM + bendM));
  return {
    shownPa,
    uprightM,
    scaleM,
    legM,
    tubeM: isUTube ? 2 * legM + bendM : legM + bendM,
    liquidM3,
    catchM3: catchFactor * liquidM3,
    catchPots: sides === 'difference' ? 2 : 1,
    openSideM: columnHeightM(kgPerM3, depressionPa),
    fit: legM > tallestLegM ? 'too-tall' : scaleM < leastLevelM ? 'hard-to-read' : 'fits',
    readPa: readingM === null ? null : manometerPressurePa(kgPerM3, readingM, manometer),
  };
}
