/**
 * Γ(a + ½) / Γ(a) for a > 0, to a few roundings.
 *
 * From 32 on the series in 1/a, whose next term is below 1e-16 there; below, the recurrence
 * Γ(a + ½)/Γ(a) = a/(a + ½) · Γ(a + 3/2)/Γ(a + 1) leads up to it. Going by the ratio avoids the
 * difference of two large logarithms. Source: F. G. Tricomi, A. Erdélyi, The asymptotic expansion
 * of a ratio of gamma functions, Pacific Journal of Mathematics 1 (1951), 133–142.
 */
export function gammaRatio(a: number): number {
  let factor = 1;
  let from = a;
  for (; from < 32; from += 1) factor *= from / (from + 0.5);
  let sum = 0;
  for (const coefficient of coefficients) sum = sum / from + coefficient;
  return factor * Math.sqrt(from) * sum;
}

/** Of 1/a⁷ down to 1. */
const coefficients = [
  39325 / 33554432,
  869 / 4194304,
  -399 / 262144,
  -21 / 32768,
  5 / 1024,
  1 / 128,
  -1 / 8,
  1,
] as const;
