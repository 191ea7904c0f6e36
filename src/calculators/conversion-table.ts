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
  /** What was understood, in a sentence. */
  readonly understood: string;
  /** One sentence for a screen reader; the table holds the rest. */
  readonly announcement: string;
  /** Headings of the columns. */
  readonly headings: readonly string[];
  readonly lines: readonly ConversionLine[];
};

/** The table with its announcement, which names the units of `announced` but for the one that was typed. */
export const conversionTable = (
  understood: string,
  headings: readonly string[],
  lines: readonly ConversionLine[],
  announced: readonly string[],
): ConversionTable => ({
  understood,
  get announcement() {
    const said = lines
      .filter(({ unitId, typed }) => announced.includes(unitId) && !typed)
      .map(({ cells, unitName }) => `${cells[0]?.text} ${unitName}`);
    return `${understood} That is ${said.join('; ')}.`;
  },
  headings,
  lines,
});

/** A figure with its unit, ready to be printed and copied. */
export function conversionCell(
  converted: ConvertedValue | null,
  symbol: string,
  mark: DecimalMark,
  what: string,
): ConversionCell | null {
  if (converted === null) return null;
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
export const printConverted = (
  { value, decimals, leastDecimals, digits }: ConvertedValue,
  style: NumberStyle,
): string =>
  isPlain(value)
    ? formatTrimmed(value, decimals, leastDecimals, style)
    : formatSignificant(value, digits, style);
