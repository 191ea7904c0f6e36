import type { Gauge } from './protocol.ts';
import { combine, meanUncertainty } from './reading-uncertainty.ts';
import { widthAt95 } from './width-at-95.ts';

/**
 * The largest change, in pascals, that chance alone makes of the same setting in 95 of 100 cases, read `count` times
 * before and as often after: √2 times the uncertainty of the mean (JCGM 100:2008, 5.1.2) times the coverage factor.
 * What changes by more was moved.
 */
export const changeByChancePa = (gauge: Gauge, count: number): number => {
  const mean = meanUncertainty(gauge, count);
  const each = { variancePa2: mean.standardUncertaintyPa ** 2, degreesOfFreedom: mean.degreesOfFreedom };
  return widthAt95(combine([each, each]).standardUncertaintyPa);
};
