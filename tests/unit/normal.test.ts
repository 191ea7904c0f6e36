import { expect, test } from 'vitest';
import {
  normalCdf,
  normalCentre,
  normalDensity,
  normalQuantile,
  normalTail,
} from '../../src/calculators/normal.ts';
import { tolerances } from '../tolerances.ts';

const { relative } = tolerances.statistics;
const apart = (one: number, other: number) => Math.abs(one / other - 1);

test('normalTail(z) as Abramowitz and Stegun print it (tables 26.1 and 26.2)', () => {
  // 1 − P from table 26.1 to 15 decimals; −log₁₀ Q from table 26.2.
  expect(Math.abs(normalCdf(1) - 0.841344746068543)).toBeLessThanOrEqual(5e-16);
  expect(Math.abs(normalCdf(2) - 0.977249868051821)).toBeLessThanOrEqual(5e-16);
  for (const [z, printed] of [
    [5, '6.54265'],
    [10, '23.11805'],
    [20, '88.56010'],
    [30, '197.30921'],
  ] as const) {
    expect((-Math.log10(normalTail(z))).toFixed(5)).toBe(printed);
  }
});

test('normalCdf(z) is symmetric and normalCentre(z) is what lies between', () => {
  for (const z of [0, 0.1, 1, 1.499, 1.5, 1.501, 3, 8, 38]) {
    expect(normalCdf(-z)).toBe(normalTail(z));
    expect(normalTail(-z)).toBe(1 - normalTail(z));
    expect(Math.abs(normalCdf(z) + normalCdf(-z) - 1)).toBeLessThanOrEqual(2e-16);
    expect(Math.abs(normalCentre(z) - (0.5 - normalTail(z)))).toBeLessThanOrEqual(2e-16);
    expect(normalCentre(-z)).toBe(-normalCentre(z));
  }
});

test('series and continued fraction agree where one takes over from the other', () => {
  const below = normalTail(1.5 - 1e-12);
  const above = normalTail(1.5);
  expect(Math.abs(below - above - 1e-12 * normalDensity(1.5))).toBeLessThanOrEqual(1e-15);
});

test('normalQuantile(p) undoes normalCdf(z)', () => {
  for (const p of [1e-300, 1e-50, 1e-5, 0.01, 0.2, 0.3, 0.49, 0.499999, 0.500001, 0.7, 0.99]) {
    expect(apart(normalCdf(normalQuantile(p)), p)).toBeLessThanOrEqual(relative);
  }
  expect(apart(normalQuantile(0.975), 1.959963984540054)).toBeLessThanOrEqual(relative);
  expect(normalQuantile(0.5)).toBeCloseTo(0, 15);
});

test('close to the middle a quantile is the distance over the density there', () => {
  for (const p of [0.5 + 1e-9, 0.5 - 1e-9])
    expect(apart(normalQuantile(p), (p - 0.5) * Math.sqrt(2 * Math.PI))).toBeLessThanOrEqual(relative);
});

test('the ends', () => {
  expect(normalTail(Infinity)).toBe(0);
  expect(normalCdf(Infinity)).toBe(1);
  expect(normalTail(NaN)).toBeNaN();
  for (const p of [0, 1, -1, NaN])
    expect(() => normalQuantile(p)).toThrow(new RangeError(`probability ${p}`));
});
