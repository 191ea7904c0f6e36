import { expect, test } from 'vitest';
import { continuedFraction } from '../../src/calculators/continued-fraction.ts';

test('continuedFraction(1, 1/1) is the golden ratio', () => {
  expect(continuedFraction(1, () => [1, 1])).toBeCloseTo((1 + Math.sqrt(5)) / 2, 15);
});

test('continuedFraction(0, …) is the tangent, from its fraction', () => {
  const x = 1.2;
  expect(continuedFraction(0, (k) => [k === 1 ? x : -x * x, 2 * k - 1])).toBeCloseTo(Math.tan(x), 14);
});

test('a fraction that does not settle is our own mistake', () => {
  expect(() => continuedFraction(1, () => [-1, 1])).toThrow('did not settle');
});
