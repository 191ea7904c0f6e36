import { decimalsForSignificant } from './format-number.ts';
import type { MeasureUnit } from './measure-unit.ts';
import { convertMeasure } from './measure-units.ts';
import type { ParsedMeasure } from './parse-measure.ts';
import type { ParsedNumber } from './parse-number.ts';
import type { PressureUnit } from './pressure-unit.ts';
import { inUnit } from './pressure-units.ts';
import type { ConversionQuestion, PressureKind } from './unit-converter.ts';

/** A value, unrounded, and the digits to print it with; zeros that only fill up go, down to `leastDecimals`. */
export type ConvertedValue = {
  readonly value: number;
  readonly decimals: number;
  readonly leastDecimals: number;
  /** Significant digits, where the value is so large or small that it is printed with a power of ten. */
  readonly digits: number;
};

/** Fewest significant digits of an answer: a reading of “9” still answers 228.6, from which 9 comes back. */
const fewestDigits = 4;
/** Fewest decimals of a temperature: 100 °F is 37.78 °C. */
const fewestDecimals = 2;
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
      ...asTypedValue(number),
      value: shown === kind || number.value === 0 ? number.value : -number.value,
    };
  const typedHere = inUnit(pressure.pascals, unit);
  const value = inUnit(pascals, unit);
  const digits = answeredDigits(number);
  if (asTyped) return { ...proportional(number, typedHere), value };
  const decimals = typedHere === 0 ? Number.POSITIVE_INFINITY : decimalsForSignificant(typedHere, digits);
  return {
    value,
    decimals: Math.min(decimals, decimalsForSignificant(inUnit(ambientPa, unit), ambientDigits)),
    leastDecimals: 0,
    digits,
  };
}

/**
 * A measure in another unit, with the digits to print: one significant digit more than was typed and at least four;
 * of a temperature, whose zero is anywhere, one decimal more and at least two.
 */
export function convertedMeasure(
  { number, unit: typedUnit }: ParsedMeasure,
  unit: MeasureUnit,
): ConvertedValue {
  if (unit === typedUnit) return asTypedValue(number);
  const value = convertMeasure(number.value, typedUnit, unit);
  if (unit.scale.kind !== 'temperature') return proportional(number, value);
  const decimals = Math.max(fewestDecimals, number.decimals + 1);
  return { value, decimals, leastDecimals: number.decimals, digits: answeredDigits(number) };
}

/** What was typed, as it was typed. */
const asTypedValue = ({ value, decimals, significantDigits }: ParsedNumber): ConvertedValue => ({
  value,
  decimals,
  leastDecimals: decimals,
  digits: significantDigits,
});

const answeredDigits = ({ significantDigits }: ParsedNumber): number =>
  Math.max(fewestDigits, significantDigits + 1);

const proportional = (number: ParsedNumber, value: number): ConvertedValue => ({
  value,
  decimals: value === 0 ? 0 : decimalsForSignificant(value, answeredDigits(number)),
  // Noughts of a whole number only hold its place; those behind a mark were measured.
  leastDecimals:
    value === 0 || number.decimals === 0 ? 0 : decimalsForSignificant(value, number.significantDigits),
  digits: answeredDigits(number),
});
