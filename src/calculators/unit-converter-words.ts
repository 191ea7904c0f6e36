import { conversionTable } from './conversion-table.ts';
import type { ConversionTable, SaidUnits } from './conversion-table.ts';
import { formatExact } from './format-number.ts';
import type { DecimalMark } from './format-number.ts';
import { pressureUnits } from './pressure-unit-table.ts';
import { inUnit, pressureUnit } from './pressure-units.ts';
import type { ConversionQuestion, Conversions, PressureKind } from './unit-converter.ts';

/** The four kinds as choices. */
export const pressureKindChoices: Readonly<Record<PressureKind, string>> = {
  depression: 'Depression: a vacuum reading',
  gauge: 'Gauge pressure: minus below ambient',
  absolute: 'Absolute pressure',
  difference: 'Difference between two readings',
};

/** One of each family that gauges are marked in. */
const saidUnits: SaidUnits = ['kPa', 'mmHg', 'inHg', 'mbar', 'cmHg', 'psi'];

/** The conversions as words and digits, with the decimal mark that was typed. */
export function describeConversions(conversions: Conversions): ConversionTable {
  const { kinds, pressure, valueIn } = conversions;
  const mark = pressure.number.mark ?? 'point';
  return conversionTable({
    units: pressureUnits,
    unitOf: pressureUnit,
    typed: pressure.unit,
    said: saidUnits,
    headings: kinds,
    valueIn,
    mark,
    understood: (reading, answer) => sentenceOf(conversions, mark, reading, answer),
  });
}

function sentenceOf(
  { kind, ambientPa }: ConversionQuestion,
  mark: DecimalMark,
  reading: string,
  answer: string,
): string {
  const ambient = `${formatExact(inUnit(ambientPa, pressureUnit('kPa')), { mark })}\u00a0kPa`;
  switch (kind) {
    case 'depression':
      return `${reading} is ${answer} below an ambient pressure of ${ambient}.`;
    case 'gauge':
      return `${reading} is ${answer} gauge, counted from an ambient pressure of ${ambient}.`;
    case 'absolute':
      return `${reading} is ${answer} absolute, under an ambient pressure of ${ambient}.`;
    case 'difference':
      return `A difference of ${reading} is ${answer}; the ambient pressure does not matter.`;
  }
}
