import { decimalsForSignificant } from './format-number.ts';
import type { PressureUnit } from './pressure-unit.ts';
import { inUnit } from './pressure-units.ts';
import type { ConversionQuestion, PressureKind } from './unit-converter.ts';

/** A value, unrounded, and the digits to print it with; zeros that only fill up go, down to `leastDecimals`. */
export type ConvertedValue = {
  readonly value: number;
  readonly decimals: number;
  readonly leastDecimals: number;
};

/** Fewest significant digits of an answer: a reading of “9” still answers 228.6, from which 9 comes back. */
const fewestDigits = 4;
/** Significant digits to which an ambient pressure is believed: 101.325 kPa. */
const ambientDigits = 6;

/** A state of `pascals`, counted as `shown`, in a unit, with the digits to print; see `computeConversions`. */
export function convertedValue(
  { pressure, kind, ambientPa }: ConversionQuestion,
  unit: PressureUnit,
  shown: PressureKind,
  pascals: number,
): ConvertedValue {
  const { number, unit: typedUnit } = pressure;
  const asTyped = shown === kind || (shown !== 'absolute' && kind !== 'absolute');
  if (asTyped && unit === typedUnit)
    return {
      value: shown === kind || number.value === 0 ? number.value : -number.value,
      decimals: number.decimals,
      leastDecimals: number.decimals,
    };
  const typedHere = inUnit(pressure.pascals, unit);
  const decimals =
    typedHere === 0
      ? Number.POSITIVE_INFINITY
      : decimalsForSignificant(typedHere, Math.max(fewestDigits, number.significantDigits + 1));
  const value = inUnit(pascals, unit);
  if (asTyped)
    return {
      value,
      decimals: Number.isFinite(decimals) ? decimals : 0,
      leastDecimals: typedHere === 0 ? 0 : decimalsForSignificant(typedHere, number.significantDigits),
    };
  return {
    value,
    decimals: Math.min(decimals, decimalsForSignificant(inUnit(ambientPa, unit), ambientDigits)),
    leastDecimals: 0,
  };
}
