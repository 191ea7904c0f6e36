/*
 * The relations of measurement practice once more, slowly and another way: whole numbers for sums and roots,
 * averages over the inverse distribution for standard uncertainties, numeric integration for Student's t, a
 * least-squares fit for drift.
 */

const scale = 10n ** 40n;

/** A decimal as a whole number of 1e-40, without the rounding of binary fractions. */
export function exactDecimal(text: string): bigint {
  const [, sign = '', whole = '', decimals = '', power = '0'] =
    /^([+-]?)(\d*)\.?(\d*)(?:e([+-]?\d+))?$/iu.exec(text.trim()) ?? [];
  const digits = BigInt(`${whole}${decimals}`);
  const shift = 40 - decimals.length + Number(power);
  const size = shift >= 0 ? digits * 10n ** BigInt(shift) : digits / 10n ** BigInt(-shift);
  return sign === '-' ? -size : size;
}

/** Back to a double, by way of its decimal digits. */
export const toDouble = (value: bigint): number => Number(`${value}e-40`);

/** Integer root by Newton's steps. */
function integerRoot(value: bigint): bigint {
  if (value < 2n) return value;
  let guess = 1n << BigInt(Math.ceil(value.toString(2).length / 2));
  for (;;) {
    const next = (guess + value / guess) / 2n;
    if (next >= guess) return guess;
    guess = next;
  }
}

/** √(p₁² + p₂² + …), each part a decimal that may be divided by the root of a whole number. */
export function slowRootSumOfSquares(parts: readonly { top: string; rootOf: bigint }[]): number {
  const squares = parts.map(({ top, rootOf }) => exactDecimal(top) ** 2n / rootOf);
  return toDouble(integerRoot(squares.reduce((sum, square) => sum + square, 0n)));
}

/** class/100 × span, in whole numbers. */
export const slowPermissibleError = (accuracyClass: string, span: string): number =>
  toDouble((exactDecimal(accuracyClass) * exactDecimal(span)) / (100n * scale));

export const slowMean = (readings: readonly string[]): number =>
  toDouble(readings.map(exactDecimal).reduce((sum, each) => sum + each, 0n) / BigInt(readings.length));

/** From n Σx² − (Σx)², which loses nothing in whole numbers. */
export function slowDeviation(readings: readonly string[]): number {
  const values = readings.map(exactDecimal);
  const count = BigInt(values.length);
  const sum = values.reduce((total, each) => total + each, 0n);
  const squares = values.reduce((total, each) => total + each * each, 0n);
  return toDouble(integerRoot((count * squares - sum * sum) / (count * (count - 1n))));
}

/** The value below which so much of a distribution between −1 and 1 lies. */
const inverses = {
  rectangular: (p: number) => 2 * p - 1,
  triangular: (p: number) => (p < 0.5 ? Math.sqrt(2 * p) - 1 : 1 - Math.sqrt(2 - 2 * p)),
  'u-shaped': (p: number) => -Math.cos(Math.PI * p),
};

/** Root mean square of a distribution, averaged over 20,000 even shares of its probability. */
export function slowStandardUncertainty(distribution: keyof typeof inverses, halfWidth: number): number {
  const shares = 20_000;
  let total = 0;
  for (let k = 0; k < shares; k += 1) total += (halfWidth * inverses[distribution]((k + 0.5) / shares)) ** 2;
  return Math.sqrt(total / shares);
}

/** ∫ f from 0 to `end` by the double exponential rule, which minds no singular end. */
function integral(f: (x: number) => number, end: number): number {
  const step = 1 / 64;
  let total = 0;
  for (let k = -6 * 64; k <= 6 * 64; k += 1) {
    const u = k * step;
    const q = Math.exp(-Math.PI * Math.sinh(u));
    const x = end / (1 + q);
    const weight = (end * q * Math.PI * Math.cosh(u)) / (1 + q) ** 2;
    if (x > 0 && x < end && weight > 0) total += weight * f(x);
  }
  return total * step;
}

/** t = √ν tan θ, where the density is cos^(ν−1) θ; halving θ until the area is the share asked for. */
export function slowStudentT(confidence: number, degreesOfFreedom: number): number {
  const density = (angle: number) => Math.cos(angle) ** (degreesOfFreedom - 1);
  const all = integral(density, Math.PI / 2);
  let low = 0;
  let high = Math.PI / 2;
  for (let halving = 0; halving < 60; halving += 1) {
    const middle = (low + high) / 2;
    if (integral(density, middle) < confidence * all) low = middle;
    else high = middle;
  }
  return Math.sqrt(degreesOfFreedom) * Math.tan((low + high) / 2);
}

/** Least squares of level + difference × (is it B) + drift × order: the difference. Gauss–Jordan on three equations. */
export function slowBracketDifference(readings: readonly number[], isB: readonly number[]): number {
  const rows = readings.map((_, order) => [1, isB[order] ?? 0, order]);
  const equations = [0, 1, 2].map((i) => [
    ...[0, 1, 2].map((j) => rows.reduce((sum, row) => sum + (row[i] ?? 0) * (row[j] ?? 0), 0)),
    rows.reduce((sum, row, k) => sum + (row[i] ?? 0) * (readings[k] ?? 0), 0),
  ]);
  for (let pivot = 0; pivot < 3; pivot += 1)
    for (let other = 0; other < 3; other += 1) {
      if (other === pivot) continue;
      const factor = (equations[other]?.[pivot] ?? NaN) / (equations[pivot]?.[pivot] ?? NaN);
      equations[other] = (equations[other] ?? []).map(
        (value, column) => value - factor * (equations[pivot]?.[column] ?? NaN),
      );
    }
  return (equations[1]?.[3] ?? NaN) / (equations[1]?.[1] ?? NaN);
}
