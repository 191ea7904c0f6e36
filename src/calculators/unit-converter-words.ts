import { conversionCell, conversionTable, printConverted } from './conversion-table.ts';
import type { ConversionTable } from './conversion-table.ts';
import { formatExact } from './format-number.ts';
import type { DecimalMark } from './format-number.ts';
import { inUnit, pressureUnit } from './pressure-units.ts';
import { asTypedValue } from './unit-converter-digits.ts';
import type { Conversions, PressureKind } from './unit-converter.ts';

/** The four kinds: as the head of a column, and as a choice. */
export const pressureKindWords: Readonly<
  Record<PressureKind, { readonly name: string; readonly choice: string }>
> = {
  depression: {
    name: 'depression',
    choice: 'Depression: a vacuum reading',
  },
  gauge: {
    name: 'gauge',
    choice: 'Gauge pressure: minus below ambient',
  },
  absolute: {
    name: 'absolute',
    choice: 'Absolute pressure',
  },
  difference: {
    name: 'difference',
    choice: 'Difference between two readings',
  },
};

/** Units that the announcement names: one of each family that gauges are marked in. */
const announcedUnits = ['kPa', 'mbar', 'mmHg', 'cmHg', 'inHg', 'psi'];

/** The conversions as words and digits, with the decimal mark that was typed. Rounding happens here, once. */
export function describeConversions(conversions: Conversions): ConversionTable {
  const mark = conversions.pressure.number.mark ?? 'point';
  const { kinds, pressure } = conversions;
  const lines = conversions.rows.map((row) => ({
    unitId: row.unit.id,
    symbol: row.unit.symbol,
    unitName: row.unit.name,
    rare: row.unit.rare,
    typed: row.unit === pressure.unit,
    get cells() {
      const { values } = row;
      return kinds.map((kind, column) =>
        conversionCell(values[column] ?? null, row.unit.symbol, mark, pressureKindWords[kind].name),
      );
    },
  }));
  const headings = kinds.map((each) => pressureKindWords[each].name);
  return conversionTable(sentenceOf(conversions, mark), headings, lines, announcedUnits);
}

function sentenceOf({ pressure, kind, ambientPa }: Conversions, mark: DecimalMark): string {
  const { number, unit } = pressure;
  const reading = `${printConverted(asTypedValue(number), { mark })} ${unit.symbol}`;
  const ambient = `${formatExact(inUnit(ambientPa, pressureUnit('kPa')), { mark })} kPa`;
  switch (kind) {
    case 'depression':
      return `${reading} below an ambient pressure of ${ambient}.`;
    case 'gauge':
      return `${reading} gauge, counted from an ambient pressure of ${ambient}.`;
    case 'absolute':
      return `${reading} absolute, under an ambient pressure of ${ambient}.`;
    case 'difference':
      return `A difference of ${reading}; the ambient pressure does not matter.`;
  }
}
