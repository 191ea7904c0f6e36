import { expect, test } from 'vitest';
import { sampleStandardDeviation } from '../../src/calculators/sample-standard-deviation.ts';

test('sampleStandardDeviation(values) divides by n − 1', () => {
  expect(sampleStandardDeviation([2, 4])).toBe(Math.SQRT2);
  expect(sampleStandardDeviation([1, 2, 3, 4, 5])).toBe(Math.sqrt(2.5));
});

test('sampleStandardDeviation(values) of equal values is 0', () => {
  expect(sampleStandardDeviation([250, 250, 250])).toBe(0);
});

test('sampleStandardDeviation(values) does not see where the values lie', () => {
  expect(sampleStandardDeviation([1e9 + 1, 1e9 + 2, 1e9 + 3])).toBe(1);
});
