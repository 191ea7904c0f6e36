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

const minus = '[-−–]';
const space = '[\\s]'; // includes no-break, thin, narrow and figure spaces
const sign = new RegExp(`^(?:\\+|${minus})`, 'u');
const plainDigits = /^\d+$/u;
const fractionForm = new RegExp(
  `^(?:(\\d+)(?:${space}+|-${space}*))?(\\d+)${space}*[/⁄∕]${space}*(\\d+)$`,
  'u',
);
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
  const text = spellOutFractions(typed.trim());
  if (text === '') return fail({ kind: 'empty', ...place });

  const signText = sign.exec(text)?.[0] ?? '';
  const factor = signText === '' || signText === '+' ? 1 : -1;
  const unsigned = text.slice(signText.length).trimStart();

  const fraction = fractionForm.exec(unsigned);
  if (fraction !== null) {
    const [, whole, top = '', bottom = ''] = fraction;
    if (Number(bottom) === 0) return fail({ kind: 'zero-denominator', ...place, typed });
    if (whole !== undefined && Number(top) >= Number(bottom))
      return fail({ kind: 'not-a-number', ...place, typed });
    return counted(
      factor * (Number(whole ?? 0) + Number(top) / Number(bottom)),
      Number(whole ?? 0) + Number(top) === 0,
    );
  }

  const [, mantissa = '', exponentText = '0'] = /^(.*?)(?:e([+-]?\d+))?$/iu.exec(unsigned) ?? [];
  const exponent = Number(exponentText);
  const ungrouped = withoutGroups(mantissa);
  if (ungrouped === null || !decimalForm.test(ungrouped))
    return fail({ kind: 'not-a-number', ...place, typed });
  const [first, second] = readMarks(ungrouped, ungrouped !== mantissa);
  if (first === undefined) return fail({ kind: 'not-a-number', ...place, typed });
  const valueOf = ({ digits }: Reading): number => factor * Number(`${digits}e${exponent}`);
  if (second !== undefined)
    return fail({ kind: 'ambiguous-number', ...place, typed, readings: [valueOf(first), valueOf(second)] });

  const [whole = '', decimalDigits = ''] = first.digits.split('.');
  return counted(valueOf(first), !/[1-9]/u.test(first.digits), {
    decimals: Math.min(mostDecimals, Math.max(0, decimalDigits.length - exponent)),
    significantDigits: Math.max(1, `${whole}${decimalDigits}`.replace(/^0+/u, '').length),
    mark: first.mark,
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

/** `9½` as `9 1/2`: compatibility normalisation takes the one character apart, at a fraction slash. */
const spellOutFractions = (text: string): string =>
  text.replace(/[¼-¾⅐-⅞↉]/gu, (character) => ` ${character.normalize('NFKC')}`).trim();

/** Drops spaces and apostrophes between groups of three digits; null if they stand anywhere else. */
function withoutGroups(mantissa: string): string | null {
  const separators = new Set(mantissa.match(/[\s'’]/gu));
  if (separators.size === 0) return mantissa;
  if (separators.size > 1) return null;
  return /^[1-9]\d{0,2}(?:[\s'’]\d{3})+(?:[.,]\d*)?$/u.test(mantissa)
    ? mantissa.replace(/[\s'’]/gu, '')
    : null;
}

type Reading = { readonly digits: string; readonly mark: 'point' | 'comma' | null };

/** All ways to read points and commas: none if they contradict each other, two if it is ambiguous. */
function readMarks(text: string, grouped: boolean): readonly Reading[] {
  if (plainDigits.test(text)) return [{ digits: text, mark: null }];
  const points = text.split('.').length - 1;
  const commas = text.split(',').length - 1;
  const asDecimal = (mark: 'point' | 'comma'): Reading => ({ digits: text.replace(',', '.'), mark });
  if (points + commas === 1) {
    if (points === 1) return [asDecimal('point')];
    if (!grouped && /^[1-9]\d{0,2},\d{3}$/u.test(text))
      return [{ digits: text.replace(',', ''), mark: null }, asDecimal('comma')];
    return [asDecimal('comma')];
  }
  if (/^[1-9]\d{0,2}(?:,\d{3})+(?:\.\d*)?$/u.test(text))
    return [{ digits: text.replaceAll(',', ''), mark: points === 1 ? 'point' : null }];
  if (/^[1-9]\d{0,2}(?:\.\d{3})+(?:,\d*)?$/u.test(text))
    return [{ digits: text.replaceAll('.', '').replace(',', '.'), mark: commas === 1 ? 'comma' : null }];
  return [];
}

/** Digits of the decimal form of a fraction: 9 1/2 is 9.5; 1/3 is cut after four decimals. */
function digitsOfFraction(value: number): Omit<ParsedNumber, 'value'> {
  const decimals = [0, 1, 2, 3].find((count) => Number.isInteger(value * 10 ** count)) ?? 4;
  const scaled = Math.round(Math.abs(value) * 10 ** decimals);
  return { decimals, significantDigits: String(scaled).length, mark: null };
}
