import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mean } from '../../src/calculators/mean.ts';
import { sampleStandardDeviation } from '../../src/calculators/sample-standard-deviation.ts';
import { tolerances } from '../tolerances.ts';

const value = fc.double({ min: -1e5, max: 1e5, noNaN: true });
const values = fc
  .tuple(value, value, fc.array(value, { maxLength: 20 }))
  .map(([first, second, rest]): [number, number, ...number[]] => [first, second, ...rest]);
const near = tolerances.pressureSums.absolute;

test('the mean lies between lowest and highest, and moves and scales with the values', () => {
  fc.assert(
    fc.property(values, value, (given, shift) => {
      const centre = mean(given);
      expect(centre).toBeGreaterThanOrEqual(Math.min(...given) - near);
      expect(centre).toBeLessThanOrEqual(Math.max(...given) + near);
      const [first, ...rest] = given;
      expect(
        Math.abs(mean([first + shift, ...rest.map((one) => one + shift)]) - centre - shift),
      ).toBeLessThanOrEqual(near);
      expect(Math.abs(mean([-3 * first, ...rest.map((one) => -3 * one)]) + 3 * centre)).toBeLessThanOrEqual(
        near,
      );
    }),
  );
});

test('the standard deviation scales with the values, does not see a shift, and is at most the range', () => {
  fc.assert(
    fc.property(values, value, (given, shift) => {
      const deviation = sampleStandardDeviation(given);
      const [first, second, ...rest] = given;
      const change = (by: (one: number) => number) =>
        sampleStandardDeviation([by(first), by(second), ...rest.map(by)]);
      expect(Math.abs(change((one) => one + shift) - deviation)).toBeLessThanOrEqual(near);
      expect(Math.abs(change((one) => -2 * one) - 2 * deviation)).toBeLessThanOrEqual(near);
      expect(deviation).toBeGreaterThanOrEqual(0);
      expect(deviation).toBeLessThanOrEqual(Math.max(...given) - Math.min(...given) + near);
    }),
  );
});
