/** Points of the rule. Eight are exact for polynomials of degree 15. */
const points = 8;

/**
 * Nodes and weights of the Gauss–Legendre rule on −1…1: the roots of the Legendre polynomial, by
 * Newton's steps. Source: M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions (1964), 25.4.29.
 */
const rule = Array.from({ length: points }, (_, k) => {
  let node = Math.cos((Math.PI * (k + 0.75)) / (points + 0.5));
  let derivative = 1;
  for (let step = 0; step < 8; step += 1) {
    let [lower, value] = [1, node];
    for (let degree = 2; degree <= points; degree += 1) {
      [lower, value] = [value, ((2 * degree - 1) * node * value - (degree - 1) * lower) / degree];
    }
    derivative = (points * (node * value - lower)) / (node * node - 1);
    node -= value / derivative;
  }
  return { node, weight: 2 / ((1 - node * node) * derivative * derivative) };
});

/**
 * Integral over the pieces between neighbouring breakpoints, which must ascend: eight points a piece.
 * The caller sets breakpoints where the function changes its character.
 */
export function integrate(breakpoints: readonly number[], integrand: (x: number) => number): number {
  let total = 0;
  let from = breakpoints[0];
  for (const to of breakpoints.slice(1)) {
    const half = (to - from!) / 2;
    for (const { node, weight } of rule) total += weight * half * integrand(to - half + half * node);
    from = to;
  }
  return total;
}
