import { formatFixed } from './format-number.ts';

/**
 * A chance from 0 to 1 as a whole per cent. `0 %` only below 0.5 %, `100 %` only from 99.5 % up; a tail of the
 * computation that leaves the interval from 0 to 1 is cut off.
 */
export const formatChance = (chance: number): string =>
  `${formatFixed(100 * Math.min(1, Math.max(0, chance)), 0)}\u00a0%`;
