import { combine, meanUncertainty } from './reading-uncertainty.ts';
import type { Gauge } from './protocol.ts';
import { widthAt95 } from './width-at-95.ts';

/** By how much a slip moves the reading against the others, in pascals: the effect of a turn times the slip in turns. */
export const readingChangeOfSlip = (slipTurns: number, effectPaPerTurn: number): number =>
  effectPaPerTurn * slipTurns;

/** The slip in turns that a change of the reading tells of. */
export const slipOfReadingChange = (changePa: number, effectPaPerTurn: number): number =>
  changePa / effectPaPerTurn;

/**
 * The largest difference, in pascals, that chance alone makes of the means of `count` readings before and as many
 * after, in 95 of 100 cases: √2 u of the mean (JCGM 100:2008, 5.1.2; `meanUncertainty`) times the coverage factor.
 * A larger one is a change of the setting.
 */
export const changeByChancePa = (gauge: Gauge, count: number): number => {
  const { standardUncertaintyPa, degreesOfFreedom } = meanUncertainty(gauge, count);
  const each = { variancePa2: standardUncertaintyPa ** 2, degreesOfFreedom };
  return widthAt95(combine([each, each]).standardUncertaintyPa);
};
