import { formatExact, formatFixed, formatTrimmed } from './format-number.ts';
import type { DecimalMark, NumberStyle } from './format-number.ts';
import { inUnit, pressureUnit } from './pressure-units.ts';
import type { ConvertedValue } from './unit-converter-digits.ts';
import type { Conversions, PressureKind } from './unit-converter.ts';

/** The names of the four kinds, and what each is counted from. */
export const pressureKindWords: Readonly<
  Record<PressureKind, { readonly name: string; readonly choice: string; readonly countedFrom: string }>
> = {
  depression: {
    name: 'depression',
    choice: 'Depression: a vacuum reading',
    countedFrom: 'below the ambient pressure',
  },
  gauge: {
    name: 'gauge',
    choice: 'Gauge pressure: minus below ambient',
    countedFrom: 'from the ambient pressure, minus below it',
  },
  absolute: {
    name: 'absolute',
    choice: 'Absolute pressure',
    countedFrom: 'above perfect vacuum',
  },
  difference: {
    name: 'difference',
    choice: 'Difference between two readings',
    countedFrom: 'between two readings',
  },
};

export type ConversionCell = {
  /** As printed: `228.6`. */
  readonly text: string;
  /** For the clipboard, with the ASCII minus sign: `-9 inHg`. */
  readonly copied: string;
  /** For the button that copies it: `228.6 mmHg, depression`. */
  readonly label: string;
};

export type ConversionLine = {
  readonly unitId: string;
  readonly symbol: string;
  readonly unitName: string;
  readonly rare: boolean;
  /** Whether this is the unit that was typed. */
  readonly typed: boolean;
  readonly cells: readonly (ConversionCell | null)[];
};

export type ConversionTable = {
  /** What was understood, in a sentence. */
  readonly understood: string;
  /** One sentence for a screen reader; the table holds the rest. */
  readonly announcement: string;
  /** Headings of the columns. */
  readonly headings: readonly string[];
  readonly lines: readonly ConversionLine[];
};

/** Units that the announcement names: one of each family that gauges are marked in. */
const announcedUnits = ['kPa', 'mbar', 'mmHg', 'cmHg', 'inHg', 'psi'];

/** The conversions as words and digits, with the decimal mark that was typed. Rounding happens here, once. */
export function describeConversions(conversions: Conversions): ConversionTable {
  const mark = conversions.pressure.number.mark ?? 'point';
  const { kind, kinds, pressure } = conversions;
  const lines = conversions.rows.map(({ unit, values }) => ({
    unitId: unit.id,
    symbol: unit.symbol,
    unitName: unit.name,
    rare: unit.rare,
    typed: unit === pressure.unit,
    cells: values.map((value, column) => cellOf(value, kinds[column] ?? kind, unit.symbol, mark)),
  }));
  const understood = sentenceOf(conversions, mark);
  const said = lines
    .filter(({ unitId, typed }) => announcedUnits.includes(unitId) && !typed)
    .map(({ cells, unitName }) => `${cells[0]?.text ?? ''} ${unitName}`);
  return {
    understood,
    announcement: `${understood} That is ${said.join('; ')}.`,
    headings: kinds.map((each) => pressureKindWords[each].name),
    lines,
  };
}

function cellOf(
  converted: ConvertedValue | null,
  kind: PressureKind,
  symbol: string,
  mark: DecimalMark,
): ConversionCell | null {
  if (converted === null) return null;
  const text = print(converted, { mark });
  return {
    text,
    copied: `${print(converted, { mark, minus: 'hyphen' })} ${symbol}`,
    label: `${text} ${symbol}, ${pressureKindWords[kind].name}`,
  };
}

function print({ value, decimals, leastDecimals }: ConvertedValue, style: NumberStyle): string {
  return formatTrimmed(value, decimals, leastDecimals, style);
}

function sentenceOf({ pressure, kind, ambientPa }: Conversions, mark: DecimalMark): string {
  const { number, unit } = pressure;
  const reading = `${formatFixed(number.value, number.decimals, { mark })} ${unit.symbol}`;
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
