import { plainNumber } from './plain-number.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

/** A number as it was typed: its value, and what is needed to answer in the same digits and with the same mark. */
export type ParsedNumber = {
  readonly value: number;
  /** Digits after the decimal mark as typed; for a fraction those of its decimal form, at most four. */
  readonly decimals: number;
  /** Digits from the first that is not 0, trailing zeros included; at least 1. */
  readonly significantDigits: number;
  /** The decimal mark that was typed, if any. */
  readonly mark: 'point' | 'comma' | null;
};

/** Longest text that is looked at. A number of a gauge has a dozen characters. */
export const longestNumber = 80;

/** Sizes that can be counted with, well inside the range of a double (1.8e308, 2.2e-308). */
export const countable = { min: 1e-300, max: 1e300 } as const;

/** Decimals that are remembered for the answer; a double has no more digits than this. */
const mostDecimals = 15;

// White space includes no-break, thin, narrow and figure spaces.
const sign = /^(?:\+|[-−–])/u;
const plainDigits = /^\d+$/u;
const fractionForm = /^(?:(\d+)(?:\s+|-\s*))?(\d+)\s*[/⁄∕]\s*(\d+)$/u;
const decimalForm = /^(?:\d[\d.,]*|[.,]\d+)$/u;

/**
 * Reads one number. Never throws; never guesses.
 *
 * - Sign: `+`, `-`, the true minus `−`, or an en dash in front.
 * - Fractions: `1/2`, `9 1/2`, `9½`, `9-1/2` (a hyphen between whole and fraction does not subtract).
 *   The fraction of a mixed number must be below 1, so that `9 12/5` is refused.
 * - A point is the decimal mark, also in `1.234`, unless a decimal comma follows it (`1.234,5`) or it
 *   stands more than once (`1.234.567`).
 * - A comma is the decimal mark, unless a decimal point follows it (`1,234.5`) or it stands more than once.
 *   One comma before exactly three digits, as in `1,234`, is both: an `ambiguous-number`, to be asked about.
 *   `0,125` and `1234,567` cannot be groups and are decimals.
 * - Spaces of any width and apostrophes part groups of three: `1 234,5`, `1'234`.
 * - A plain exponent: `1.5e3`.
 *
 * Problems: empty, too-long, not-a-number, ambiguous-number, zero-denominator, beyond-counting.
 */
export function parseNumber(typed: string, field?: string): Result<ParsedNumber> {
  const place = field === undefined ? {} : { field };
  if (typed.length > longestNumber)
    return fail({ kind: 'too-long', ...place, value: typed.length, limit: { max: longestNumber } });
  const plain = plainNumber(typed);
  if (plain?.end === typed.length) return succeed(plain.number);
  const text = spellOutFractions(typed);
  if (text === '') return fail({ kind: 'empty', ...place });

  const signText = sign.exec(text)?.[0] ?? '';
  const factor = signText === '' || signText === '+' ? 1 : -1;
  const unsigned = text.slice(signText.length).trimStart();

  const fraction = fractionForm.exec(unsigned);
  if (fraction !== null) {
    const [, whole, top, bottom] = fraction;
    if (Number(bottom) === 0) return fail({ kind: 'zero-denominator', ...place, typed });
    if (whole !== undefined && Number(top) >= Number(bottom))
      return fail({ kind: 'not-a-number', ...place, typed });
    return counted(
      factor * (Number(whole ?? 0) + Number(top) / Number(bottom)),
      Number(whole ?? 0) + Number(top) === 0,
    );
  }

  // No match where a line ends within the number.
  const parts = /^(.*?)(?:e([+-]?\d+))?$/iu.exec(unsigned);
  if (parts === null) return fail({ kind: 'not-a-number', ...place, typed });
  const reading = readMarks(withoutGroups(parts[1]!));
  if (reading === null) return fail({ kind: 'not-a-number', ...place, typed });
  const exponent = Number(parts[2] ?? 0);
  const valueOf = (digits: string): number => factor * Number(`${digits}e${exponent}`);
  if ('grouped' in reading) {
    const readings = [valueOf(reading.grouped), valueOf(reading.decimal)] as const;
    return fail({ kind: 'ambiguous-number', ...place, typed, readings });
  }

  const { digits, mark } = reading;
  const [whole, decimalDigits = ''] = digits.split('.');
  return counted(valueOf(digits), !/[1-9]/u.test(digits), {
    decimals: Math.min(mostDecimals, Math.max(0, decimalDigits.length - exponent)),
    significantDigits: Math.max(1, `${whole}${decimalDigits}`.replace(/^0+/u, '').length),
    mark,
  });

  function counted(
    value: number,
    isZero: boolean,
    digits: Omit<ParsedNumber, 'value'> = digitsOfFraction(value),
  ): Result<ParsedNumber> {
    const size = Math.abs(value);
    if (!isZero && !(size >= countable.min && size <= countable.max))
      return fail({ kind: 'beyond-counting', ...place, typed, limit: countable });
    return succeed({ value: isZero ? 0 : value, ...digits });
  }
}

/** `9½` as `9 1/2`, apart from what follows: compatibility normalisation takes the one character apart, at a fraction slash. */
const spellOutFractions = (text: string): string =>
  text.replace(/[¼-¾⅐-⅞↉]/gu, (character) => ` ${character.normalize('NFKC')} `).trim();

/** Drops spaces or apostrophes between groups of three digits; where they stand otherwise they stay, and are refused. */
const withoutGroups = (mantissa: string): string =>
  /^[1-9]\d{0,2}([\s'’])\d{3}(?:\1\d{3})*(?:[.,]\d*)?$/u.test(mantissa)
    ? mantissa.replace(/[\s'’]/gu, '')
    : mantissa;

/** The digits with a point as their mark, and the mark that was typed; or both readings of an ambiguous comma. */
type Reading =
  | { readonly digits: string; readonly mark: ParsedNumber['mark'] }
  | { readonly grouped: string; readonly decimal: string };

/** What points and commas say; null if it is no number, or they contradict each other. */
function readMarks(text: string): Reading | null {
  if (!decimalForm.test(text)) return null;
  if (plainDigits.test(text)) return { digits: text, mark: null };
  const points = text.split('.').length - 1;
  const commas = text.split(',').length - 1;
  const asDecimal = text.replace(',', '.');
  if (points + commas === 1) {
    if (/^[1-9]\d{0,2},\d{3}$/u.test(text)) return { grouped: text.replace(',', ''), decimal: asDecimal };
    return { digits: asDecimal, mark: points === 1 ? 'point' : 'comma' };
  }
  if (/^[1-9]\d{0,2}(?:,\d{3})+(?:\.\d*)?$/u.test(text))
    return { digits: text.replaceAll(',', ''), mark: points === 1 ? 'point' : null };
  if (/^[1-9]\d{0,2}(?:\.\d{3})+(?:,\d*)?$/u.test(text))
    return { digits: text.replaceAll('.', '').replace(',', '.'), mark: commas === 1 ? 'comma' : null };
  return null;
}

/** Digits of the decimal form of a fraction: 9 1/2 is 9.5; 1/3 is cut after four decimals. */
function digitsOfFraction(value: number): Omit<ParsedNumber, 'value'> {
  const decimals = [0, 1, 2, 3].find((count) => Number.isInteger(value * 10 ** count)) ?? 4;
  const scaled = Math.round(Math.abs(value) * 10 ** decimals);
  return { decimals, significantDigits: String(scaled).length, mark: null };
}
