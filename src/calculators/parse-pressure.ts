import type { ParsedNumber } from './parse-number.ts';
import { parseQuantity } from './parse-quantity.ts';
import { pressureUnits } from './pressure-unit-table.ts';
import type { PressureUnit } from './pressure-unit.ts';
import { findPressureUnit, pascalsOf } from './pressure-units.ts';
import { succeed } from './result.ts';
import type { Result } from './result.ts';

export type ParsedPressure = {
  /** In pascals, signed as typed; whether it is a depression, gauge, absolute or difference is the caller's to know. */
  readonly pascals: number;
  readonly number: ParsedNumber;
  readonly unit: PressureUnit;
  /** False if no unit was typed and the usual one was taken. */
  readonly unitTyped: boolean;
};

const pressures = {
  find: findPressureUnit,
  known: pressureUnits.filter(({ rare }) => !rare).map(({ symbol }) => symbol),
};

/**
 * Reads a pressure: `212`, `9 1/2 inHg`, `12,5 cmHg`.
 *
 * @param usualUnit the unit of a number that is typed without one
 * Problems: those of `parseQuantity`.
 */
export function parsePressure(
  typed: string,
  usualUnit: PressureUnit,
  field?: string,
): Result<ParsedPressure> {
  const parsed = parseQuantity(typed, pressures, field);
  if (!parsed.ok) return parsed;
  const { number, unit: unitOrNull } = parsed.value;
  const unit = unitOrNull ?? usualUnit;
  return succeed({ pascals: pascalsOf(number.value, unit), number, unit, unitTyped: unitOrNull !== null });
}
