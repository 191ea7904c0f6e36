export type DecimalMark = 'point' | 'comma';

export type NumberStyle = {
  /** The point unless told otherwise: the reader's own mark, as typed. */
  readonly mark?: DecimalMark;
  /** `true`: the minus sign −, for reading. `hyphen`: the ASCII sign, for links, files and the clipboard. */
  readonly minus?: 'true' | 'hyphen';
};

/**
 * Digits of a double that mean something. The sixteenth and later are the tail of binary fractions
 * (0.1 + 0.2, 9 × 25.4 = 228.59999999999997), and are never shown.
 */
const meaningfulDigits = 15;

/** From this size up, and below the other, digits are counted in powers of ten. */
const largestPlain = 1e15;
const smallestPlain = 1e-9;

/**
 * A number with so many decimals: rounded here, once, half away from zero as a person rounds. What rounds to
 * zero carries no sign. Throws a RangeError for NaN and infinities, which no computation of ours may return.
 */
export const formatFixed = (value: number, decimals: number, style: NumberStyle = {}): string =>
  dress(rounded(digitsOf(value), decimals), style);

/**
 * A number with so many significant digits, at least its whole part: 30477.498 with four is 30477, not 30480,
 * because a digit that stands before the mark is never worth hiding.
 */
export function formatSignificant(value: number, digits: number, style: NumberStyle = {}): string {
  return isPlain(value)
    ? formatFixed(value, decimalsForSignificant(value, digits), style)
    : formatPower(value, digits, style);
}

/**
 * A number with at most `decimals`, without the zeros that only fill up: 125.0 is written 125 if it is that
 * exactly, 4.420 stays if it is 4.4204. `leastDecimals` are kept in any case.
 */
export function formatTrimmed(
  value: number,
  decimals: number,
  leastDecimals = 0,
  style: NumberStyle = {},
): string {
  const digits = digitsOf(value);
  for (let fewer = Math.min(leastDecimals, decimals); fewer < decimals; fewer += 1) {
    const trimmed = rounded(digits, fewer);
    if (sameNumber(Number(trimmed), value)) return dress(trimmed, style);
  }
  return dress(rounded(digits, decimals), style);
}

/** A number in as few digits as it has, at most twelve significant: 0.55, 101.325, 9, 28.053484136. */
export const formatExact = (value: number, style: NumberStyle = {}): string =>
  isPlain(value)
    ? dress(withoutFilling(rounded(digitsOf(value), decimalsForSignificant(value, 12))), style)
    : formatPower(value, 12, style);

/** Decimals that show a value with so many significant digits; never negative. */
export function decimalsForSignificant(value: number, digits: number): number {
  const { exponent } = digitsOf(Number(Math.abs(value).toPrecision(digits)));
  return Math.max(0, digits - 1 - exponent);
}

/** Whether a value is written without a power of ten. */
export const isPlain = (value: number): boolean =>
  value === 0 || (Math.abs(value) < largestPlain && Math.abs(value) >= smallestPlain);

/** Of `1.5e+21`, before and behind the `e`. */
type Parts = [mantissa: string, exponent: string];

function formatPower(value: number, digits: number, style: NumberStyle): string {
  const [mantissa, power] = value.toExponential(Math.min(digits, meaningfulDigits) - 1).split('e') as Parts;
  const trimmed = withoutFilling(mantissa);
  return style.minus === 'hyphen'
    ? dress(`${trimmed}e${Number(power)}`, style)
    : `${dress(trimmed, style)} × 10${raised(Number(power))}`;
}

/** Without the zeros after the mark that only fill up. */
const withoutFilling = (plain: string): string =>
  plain.includes('.') ? plain.replace(/\.?0+$/u, '') : plain;

const raised = (power: number): string =>
  [...String(power)].map((character) => (character === '-' ? '⁻' : '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(character)])).join('');

/** Equal but for the tail of the binary fraction: 1e-13 is a hundred such tails. */
const sameNumber = (first: number, second: number): boolean =>
  Math.abs(first - second) <= 1e-13 * Math.abs(second);

const dress = (plain: string, { mark, minus }: NumberStyle): string => {
  const marked = mark === 'comma' ? plain.replace('.', ',') : plain;
  return minus === 'hyphen' ? marked : marked.replace('-', '−');
};

/** The meaningful digits of a finite value: 0.d₁d₂… × 10^(exponent + 1). */
type Digits = { readonly digits: string; readonly exponent: number; readonly isNegative: boolean };

function digitsOf(value: number): Digits {
  if (!Number.isFinite(value)) throw new RangeError(`not a finite number: ${value}`);
  const [mantissa, exponent] = Math.abs(value)
    .toExponential(meaningfulDigits - 1)
    .split('e') as Parts;
  return { digits: mantissa.replace('.', ''), exponent: Number(exponent), isNegative: value < 0 };
}

/** Rounds the decimal digits, not the binary value: 1.005 is 1.01 with two decimals. */
function rounded({ digits, exponent, isNegative }: Digits, decimals: number): string {
  const kept = exponent + 1 + decimals;
  const padded = digits.padEnd(Math.max(kept, 0) + 1, '0');
  const roundsUp = Number(padded[kept]) >= 5;
  const whole = padded.slice(0, Math.max(kept, 0));
  // Behind the meaningful digits stand zeros: what is rounded up has fewer than fifteen, and is exact as a number.
  const text = (roundsUp ? String(Number(whole) + 1) : whole).padStart(decimals + 1, '0');
  const sign = isNegative && (roundsUp || kept > 0) ? '-' : '';
  return decimals === 0 ? `${sign}${text}` : `${sign}${text.slice(0, -decimals)}.${text.slice(-decimals)}`;
}
