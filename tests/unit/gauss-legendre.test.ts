import { expect, test } from 'vitest';
import { integrate } from '../../src/calculators/gauss-legendre.ts';

test('integrate(breakpoints, integrand) is exact for polynomials of degree 15', () => {
  for (let degree = 0; degree <= 15; degree += 1) {
    const expected = (2 ** (degree + 1) - (-1) ** (degree + 1)) / (degree + 1);
    expect(Math.abs(integrate([-1, 2], (x) => x ** degree) - expected)).toBeLessThanOrEqual(
      1e-13 * Math.abs(expected) + 1e-13,
    );
  }
});

test('integrate(breakpoints, integrand) sums the pieces', () => {
  expect(integrate([0, 0.5, 2, Math.PI], Math.sin)).toBeCloseTo(2, 12);
  expect(integrate([0, 0, 1], () => 3)).toBeCloseTo(3, 14);
  expect(integrate([1], () => 3)).toBe(0);
});
