/** Small enough to count as zero, large enough that its reciprocal is finite. */
const tiny = 1e-300;
const mostTerms = 20_000;

/**
 * The continued fraction b₀ + a₁/(b₁ + a₂/(b₂ + …)), from `term(k)` = [aₖ, bₖ] for k = 1, 2, …,
 * to the last digit of a double. Throws where it has not settled, which is our own mistake.
 *
 * Source: the modified method of Lentz, in I. J. Thompson, A. R. Barnett, Coulomb and Bessel
 * functions of complex arguments and order, Journal of Computational Physics 64 (1986), 490–509.
 */
export function continuedFraction(
  start: number,
  term: (k: number) => readonly [numerator: number, denominator: number],
): number {
  let value = start === 0 ? tiny : start;
  let forward = value;
  let backward = 0;
  for (let k = 1; k <= mostTerms; k += 1) {
    const [numerator, denominator] = term(k);
    backward = 1 / (denominator + numerator * backward || tiny);
    forward = denominator + numerator / forward || tiny;
    const change = forward * backward;
    value *= change;
    if (Math.abs(change - 1) <= Number.EPSILON) return value;
  }
  throw new Error('A continued fraction did not settle.');
}
