/* Units of pressure once more: fractions of whole numbers, and long division. Nothing is rounded before the last line. */

type Fraction = readonly [top: bigint, bottom: bigint];

/** A plain decimal as a fraction: `-0.4` is −4/10. */
export function fraction(decimal: string): Fraction {
  const [, sign = '', whole = '', tail = ''] = /^([+-]?)(\d*)\.?(\d*)$/u.exec(decimal) ?? [];
  const top = BigInt(`${whole}${tail}` || '0');
  return [sign === '-' ? -top : top, 10n ** BigInt(tail.length)];
}

export const times = (...factors: readonly Fraction[]): Fraction =>
  factors.reduce<Fraction>(([a, b], [c, d]) => [a * c, b * d], [1n, 1n]);

const over = ([a, b]: Fraction, [c, d]: Fraction): Fraction => [a * d, b * c];
const less = ([a, b]: Fraction, [c, d]: Fraction): Fraction => [a * d - c * b, b * d];

/** Forty digits by long division, then the nearest double. */
export function toDouble([top, bottom]: Fraction): number {
  const negative = top < 0n !== bottom < 0n;
  let rest = top < 0n ? -top : top;
  const by = bottom < 0n ? -bottom : bottom;
  let digits = String(rest / by);
  let decimals = 0;
  while (digits.replace(/^0+/u, '').length < 40 && decimals < 400) {
    rest = (rest % by) * 10n;
    digits += String(rest / by);
    decimals += 1;
  }
  return Number(`${negative ? '-' : ''}${digits}e-${decimals}`);
}

const gravity = '9.80665';
const column = (metres: string, kgPerM3: string): Fraction =>
  times(fraction(metres), fraction(kgPerM3), fraction(gravity));

/** One of each unit in pascals. Mercury 13 595.1 kg/m³, water 1000 kg/m³; feet and inches from 1959. */
const pascals: Readonly<Record<string, Fraction>> = {
  Pa: fraction('1'),
  hPa: fraction('100'),
  mbar: fraction('100'),
  kPa: fraction('1000'),
  bar: fraction('100000'),
  mmHg: column('0.001', '13595.1'),
  cmHg: column('0.01', '13595.1'),
  inHg: column('0.0254', '13595.1'),
  mmH2O: column('0.001', '1000'),
  cmH2O: column('0.01', '1000'),
  inH2O: column('0.0254', '1000'),
  ftH2O: column('0.3048', '1000'),
  Torr: over(fraction('101325'), fraction('760')),
  atm: fraction('101325'),
  at: fraction('98066.5'),
  psi: over(times(fraction('0.45359237'), fraction(gravity)), fraction('0.00064516')),
};

export const slowUnits = Object.keys(pascals);

const unit = (id: string): Fraction => {
  const found = pascals[id];
  if (found === undefined) throw new Error(id);
  return found;
};

export const slowConversion = (decimal: string, from: string, to: string): number =>
  toDouble(over(times(fraction(decimal), unit(from)), unit(to)));

/** What is left of one standard atmosphere under a depression. */
export const slowAbsolute = (decimal: string, from: string, to: string): number =>
  toDouble(over(less(unit('atm'), times(fraction(decimal), unit(from))), unit(to)));

/** The density in kg/m³ that makes so many pascals at the foot of an inch. */
export const slowDensity = (pascalsPerInch: string): number =>
  toDouble(over(fraction(pascalsPerInch), times(fraction('0.0254'), fraction(gravity))));
