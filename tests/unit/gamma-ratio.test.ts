import { expect, test } from 'vitest';
import { gammaRatio } from '../../src/calculators/gamma-ratio.ts';
import { tolerances } from '../tolerances.ts';

const root = Math.sqrt(Math.PI);
const { relative } = tolerances.gammaRatio;

test('gammaRatio(a) at halves and whole numbers, from factorials', () => {
  // Γ(½) = √π, Γ(1) = 1, Γ(3/2) = √π/2, Γ(5) = 24, Γ(11/2) = 945√π/32.
  expect(Math.abs(gammaRatio(0.5) * root - 1)).toBeLessThanOrEqual(relative);
  expect(Math.abs(gammaRatio(1) / (root / 2) - 1)).toBeLessThanOrEqual(relative);
  expect(Math.abs(gammaRatio(5) / ((945 * root) / 32 / 24) - 1)).toBeLessThanOrEqual(relative);
});

test('gammaRatio(a) · gammaRatio(a + ½) is a, from the smallest to the largest', () => {
  for (const a of [1e-3, 0.15, 1, 3.7, 31.9, 32, 500, 1e8]) {
    expect(Math.abs((gammaRatio(a) * gammaRatio(a + 0.5)) / a - 1)).toBeLessThanOrEqual(relative);
  }
});
