import { describe, expect, test } from 'vitest';
import { mean, sampleStandardDeviation } from '../../src/calculators/index.ts';
import { certifiedDataSet } from '../../truth/certified-data-sets.ts';
import { checkRow } from '../../truth/check-row.ts';
import { describeRow, readDataRows } from '../../truth/data-rows.ts';
import { measurementPracticeAdapters } from '../../truth/measurement-practice.ts';

const rows = readDataRows('7-measurement-practice.csv', 59);

test('every row has an adapter', () => {
  const missing = rows.filter(({ quantity }) => !Object.hasOwn(measurementPracticeAdapters, quantity));
  expect(missing).toEqual([]);
});

describe('measurement practice', () => {
  test.each(rows.map((row) => [describeRow(row), row] as const))('%s', (_, row) => {
    const { outcome, kind, got } = checkRow(row, measurementPracticeAdapters);
    expect(outcome, `got ${got}`).toBe('passed');
    expect(kind).toBe(row.quantity === 'EN 837-1 accuracy class limit' ? 'quoted' : 'computed');
  });
});

const answer = (quantity: string, input: string, expectedUnit = '-', inputUnit = '-') =>
  measurementPracticeAdapters[quantity]?.({ input, inputUnit, expectedUnit }).values[0];

test.each([
  ['permissible error from class and span', 'class 0.25, span -1..0 bar', 'kPa', 0.25],
  ['permissible error from class and span', 'span 0–100 kPa; class 2.5 %', 'Pa', 2500],
  ['permissible error from class and span', 'span 76 cmHg, class 0.1', 'mmHg', 0.76],
  ['root-sum-square combination', '3/√(4), 4/2', '-', 2.5],
  ['A-B-A difference B-A', '1, 3, 2, 1, 4, 2', '-', 2],
  ['A-B-B-A with linear drift recovers true difference', 'true difference 0.9, drift -0.2 per step, A0=100', '-', 0.9],
  ['Student t, two-sided 95 %', 'infinity', '-', 1.959963984540054],
  ['NIST StRD certified mean', '1; 2; 6', '-', 3],
] as const)('%s of “%s” in %s is %s', (quantity, input, unit, expected) => {
  expect(answer(quantity, input, unit)).toBeCloseTo(expected, 12);
}); // prettier-ignore

test.each([
  ['EN 837-1 accuracy class limit', '1.5'],
  ['permissible error from class and span', 'span 1 bar'],
  ['permissible error from class and span', 'span 1 furlong, class 1'],
  ['A-B-A difference B-A', '1, 2'],
  ['root-sum-square combination', '1, two'],
  ['Student t, two-sided 95 %', '0'],
  ['NIST StRD certified mean', 'NumAcc5'],
])('%s of “%s” is refused, not guessed', (quantity, input) => {
  expect(() => answer(quantity, input, 'bar')).toThrow();
});

test('the certified means and deviations of all four sets, with the digits that a double can hold', () => {
  const certified = {
    NumAcc1: [10000002, 1],
    NumAcc2: [1.2, 0.1],
    NumAcc3: [1000000.2, 0.1],
    NumAcc4: [10000000.2, 0.1],
  };
  for (const [name, [centre = NaN, deviation = NaN]] of Object.entries(certified)) {
    const [first = NaN, second = NaN, ...others] = certifiedDataSet(name) ?? [];
    expect(others).toHaveLength(name === 'NumAcc1' ? 1 : 999);
    expect(Math.abs(mean([first, second, ...others]) / centre - 1)).toBeLessThanOrEqual(4e-16);
    // 0.1 beside 1e7 is stored to 2e-8 of itself.
    const relative = sampleStandardDeviation([first, second, ...others]) / deviation - 1;
    expect(Math.abs(relative)).toBeLessThanOrEqual(2e-8);
  }
});
