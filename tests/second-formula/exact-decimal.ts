/** Decimal arithmetic in whole numbers of 10⁻⁴⁰: slow, and without the roundings of a double. */
const places = 40n;
const one = 10n ** places;

/** A decimal as it is written: `-8.523829e-3`. */
export function decimal(text: string | number): bigint {
  const [, sign = '', whole = '', decimals = '', exponent = '0'] =
    /^([+-]?)(\d+)(?:\.(\d*))?(?:e([+-]?\d+))?$/iu.exec(String(text)) ?? [];
  if (whole === '') throw new Error(`no decimal: “${text}”`);
  const shift = places - BigInt(decimals.length) + BigInt(exponent);
  const digits = BigInt(whole + decimals);
  const size = shift >= 0n ? digits * 10n ** shift : digits / 10n ** -shift;
  return sign === '-' ? -size : size;
}

export const times = (a: bigint, b: bigint): bigint => (a * b) / one;
export const over = (a: bigint, b: bigint): bigint => (a * one) / b;
export const toNumber = (a: bigint): number => Number(a / 10n ** 10n) / 1e30;

/** Sum of the terms, each power multiplied out anew; the constant first. */
export const powerSum = (x: bigint, coefficients: readonly (string | number)[]): bigint =>
  coefficients
    .map((text, power) =>
      Array.from({ length: power }).reduce<bigint>((term) => times(term, x), decimal(text)),
    )
    .reduce((sum, term) => sum + term, 0n);
