import { decimalsForSignificant, formatFixed, type NumberStyle } from './format-number.ts';
import { inUnit, pressureUnit } from './pressure-units.ts';

/** Decimals of a reading: those of the gauge's finest step, in the unit that is shown. */
export const readingDecimals = (resolutionPa: number, unitId: string): number =>
  Math.min(6, decimalsForSignificant(inUnit(resolutionPa, pressureUnit(unitId)), 1));

/** Pascals as the gauge shows them, without the unit. */
export const formatReading = (
  pascals: number,
  unitId: string,
  resolutionPa: number,
  style: NumberStyle = {},
): string => formatFixed(inUnit(pascals, pressureUnit(unitId)), readingDecimals(resolutionPa, unitId), style);
