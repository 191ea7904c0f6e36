import { decimalsForSignificant, formatSignificant, formatTrimmed, isPlain } from './format-number.ts';
import type { NumberStyle } from './format-number.ts';
import { inUnit, pressureUnit } from './pressure-units.ts';

/** Pascals as a number and a symbol in a unit, with four significant digits and no zeros that only fill up: `29.92 inHg`, `35 inHg`. */
export function formatPressure(pascals: number, unitId: string, digits = 4, style: NumberStyle = {}): string {
  const unit = pressureUnit(unitId);
  const value = inUnit(pascals, unit);
  const text = isPlain(value)
    ? formatTrimmed(value, decimalsForSignificant(value, digits), 0, style)
    : formatSignificant(value, digits, style);
  return `${text}\u00a0${unit.symbol}`;
}
