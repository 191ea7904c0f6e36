import { expect, test } from 'vitest';
import { mean } from '../../src/calculators/mean.ts';

test('mean(values) of one value is that value', () => {
  expect(mean([212])).toBe(212);
});

test('mean(values) takes out the rounding of the sum', () => {
  expect(mean([0.1, 0.2, 0.3])).toBe(0.2);
  expect(mean([1e16, 1e16 + 2, 1e16 + 4])).toBe(1e16 + 2);
});

test('mean(values) of equal values is exact', () => {
  const tenths = Array.from({ length: 1000 }, () => 0.1);
  expect(mean([0.1, ...tenths])).toBe(0.1);
});
