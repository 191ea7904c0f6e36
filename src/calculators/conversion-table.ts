import { formatSignificant, formatTrimmed, isPlain } from './format-number.ts';
import type { DecimalMark, NumberStyle } from './format-number.ts';
import type { ConvertedValue } from './unit-converter-digits.ts';

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
  /** Computed when it is read, so that a key waits only for the lines that are drawn with it. */
  readonly cells: readonly (ConversionCell | null)[];
};

/** One reading in every unit of its quantity, in words and digits. */
export type ConversionTable = {
  /** What was understood, and how much it is in another unit, in a sentence. */
  readonly understood: string;
  /** The sentence and a few units more, for a screen reader; the table holds the rest. */
  readonly announcement: string;
  /** Headings of the columns. */
  readonly headings: readonly string[];
  readonly lines: readonly ConversionLine[];
};

type NamedUnit = {
  readonly id: string;
  readonly symbol: string;
  readonly name: string;
  readonly rare?: boolean;
};

/** Ids of the units that are said in words; the first that was not typed is the one of the sentence. */
export type SaidUnits = readonly [string, string, ...string[]];

type TableParts<Unit extends NamedUnit, Heading extends string> = {
  readonly units: readonly Unit[];
  readonly unitOf: (id: string) => Unit;
  readonly typed: Unit;
  readonly said: SaidUnits;
  readonly headings: readonly [Heading, ...Heading[]];
  /** The value under a heading; never null under the first. */
  readonly valueIn: (unit: Unit, heading: Heading) => ConvertedValue | null;
  readonly mark: DecimalMark;
  /** The sentence around what was typed and the same in the unit that is said first. */
  readonly understood: (reading: string, answer: string) => string;
};

/** The table of a reading. Only the sentence is made at once; lines and announcement are when they are read. */
export function conversionTable<Unit extends NamedUnit, Heading extends string>({
  units,
  unitOf,
  typed,
  said,
  headings,
  valueIn,
  mark,
  understood,
}: TableParts<Unit, Heading>): ConversionTable {
  const cellIn = (unit: Unit, heading: Heading) => {
    const value = valueIn(unit, heading);
    return value && conversionCell(value, unit.symbol, mark, heading);
  };
  const figureIn = (unit: Unit): string => `${cellIn(unit, headings[0])?.text}`;
  const [leading = typed, ...others] = said.filter((id) => id !== typed.id).map(unitOf);
  const measured = (unit: Unit): string => `${figureIn(unit)}\u00a0${unit.symbol}`;
  const sentence = understood(measured(typed), measured(leading));
  return {
    understood: sentence,
    get announcement() {
      const also = others.map((unit) => `${figureIn(unit)} ${unit.name}`);
      return `${sentence} That is also ${also.join('; ')}.`;
    },
    headings,
    get lines() {
      return units.map((unit) => ({
        unitId: unit.id,
        symbol: unit.symbol,
        unitName: unit.name,
        rare: unit.rare === true,
        typed: unit === typed,
        get cells() {
          return headings.map((heading) => cellIn(unit, heading));
        },
      }));
    },
  };
}

/** A figure with its unit, ready to be printed and copied. */
function conversionCell(
  converted: ConvertedValue,
  symbol: string,
  mark: DecimalMark,
  what: string,
): ConversionCell {
  const text = printConverted(converted, { mark });
  const copied = isPlain(converted.value)
    ? text.replace('−', '-')
    : printConverted(converted, { mark, minus: 'hyphen' });
  return {
    text,
    copied: `${copied} ${symbol}`,
    label: `${text} ${symbol}, ${what}`,
  };
}

/** Rounding happens here, once. */
const printConverted = (
  { value, decimals, leastDecimals, digits }: ConvertedValue,
  style: NumberStyle,
): string =>
  isPlain(value)
    ? formatTrimmed(value, decimals, leastDecimals, style)
    : formatSignificant(value, digits, style);
