import type { ParsedNumber } from './parse-number.ts';

/** So many digits, and powers of ten below, are exact in a double: one division then rounds as `Number` does. */
const mostDigits = 15;

const [zero, nine, point, comma] = [48, 57, 46, 44];

export type PlainNumber = {
  readonly number: ParsedNumber;
  /** Where it ends in the text. */ readonly end: number;
};

/**
 * The number at the start of a text, read in one pass, if it is as nearly everybody types it: digits with at most one
 * mark between or behind them. Null for all else, the ambiguous comma too; then the whole grammar of `parseNumber` is needed.
 */
export function plainNumber(text: string): PlainNumber | null {
  let digits = 0;
  let significantDigits = 0;
  let whole = 0;
  let scale = 1;
  let decimals = 0;
  let mark: ParsedNumber['mark'] = null;
  let end = 0;
  for (; end < text.length; end += 1) {
    const code = text.charCodeAt(end);
    if (code >= zero && code <= nine) {
      whole = 10 * whole + (code - zero);
      digits += 1;
      if (whole > 0) significantDigits += 1;
      if (mark !== null) {
        decimals += 1;
        scale *= 10;
      }
    } else if (mark === null && digits > 0 && (code === point || code === comma))
      mark = code === point ? 'point' : 'comma';
    else break;
  }
  if (digits === 0 || digits > mostDigits || (mark === 'comma' && decimals === 3)) return null;
  const number = { value: whole / scale, decimals, significantDigits: Math.max(1, significantDigits), mark };
  return { number, end };
}
