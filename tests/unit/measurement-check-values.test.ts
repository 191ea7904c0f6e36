/**
 * Rows of tests/data/7-measurement-practice.csv on statistics, Student's t, standard uncertainty and drift
 * taken out by bracketing. Not run here are the 13 rows on accuracy classes of gauges and on distributions of
 * other shapes (triangular, U-shaped), which nothing in the package computes so far.
 */
import { describe, expect, test } from 'vitest';
import { atTargetSpeed, carburettorMeans } from '../../src/calculators/correct-readings.ts';
import { mean } from '../../src/calculators/mean.ts';
import { combine, readingStandardUncertaintyPa } from '../../src/calculators/reading-uncertainty.ts';
import { sampleStandardDeviation } from '../../src/calculators/sample-standard-deviation.ts';
import { studentTQuantile } from '../../src/calculators/student-t-quantile.ts';
import { agrees, describeRow, readDataRows, toNumber } from '../data-rows.ts';

/** Two values in turn after a first one, 1,001 in all, as the data sets are given by rule. */
const inTurn = (first: number, second: number, third: number): [number, number, ...number[]] => [
  first,
  second,
  ...Array.from({ length: 999 }, (_, k) => (k % 2 === 0 ? third : second)),
];

const dataSets: Readonly<Record<string, readonly [number, number, ...number[]]>> = {
  NumAcc1: [10000001, 10000003, 10000002],
  NumAcc2: inTurn(1.2, 1.1, 1.3),
  NumAcc3: inTurn(1000000.2, 1000000.1, 1000000.3),
  NumAcc4: inTurn(10000000.2, 10000000.1, 10000000.3),
};

const dataSet = (name: string) => {
  const values = dataSets[name];
  if (values === undefined) throw new Error(`no data set ${name}`);
  return values;
};

const twoSided = (percent: number) => (input: string) =>
  studentTQuantile((1 + percent / 100) / 2, toNumber(input, 'degrees of freedom'));

const halfWidth = (input: string) =>
  readingStandardUncertaintyPa({ flutterPa: toNumber(input, 'half-width'), resolutionPa: 0 });

const step = (input: string) =>
  readingStandardUncertaintyPa({ flutterPa: 0, resolutionPa: toNumber(input, 'step') });

/** "0.016/sqrt3, 0.005, 0.002": independent contributions. */
const rootSumOfSquares = (input: string) =>
  combine(
    input.split(',').map((part) => {
      const [value = '', divisor] = part.trim().split('/sqrt');
      const u = toNumber(value, part) / (divisor === undefined ? 1 : Math.sqrt(toNumber(divisor, part)));
      return { variancePa2: u * u, degreesOfFreedom: Infinity };
    }),
  ).standardUncertaintyPa;

/** "180, 171, 183" or "…: 100, 100.7, 100.5, 99.4": the reference A before and after, B once or twice between. */
function bracketed(input: string) {
  const readings = (input.split(':').at(-1) ?? '').split(',').map((part, order, all) => ({
    carburettor: order === 0 || order === all.length - 1 ? 1 : 2,
    depressionPa: toNumber(part.trim(), part),
  }));
  const gauge = { resolutionPa: 1, flutterPa: 0 };
  const { means } = carburettorMeans(atTargetSpeed(readings, undefined), 2, gauge, 1);
  return (means[1]?.meanPa ?? NaN) - (means[0]?.meanPa ?? NaN);
}

const adapters: Readonly<Record<string, (input: string) => number>> = {
  'rectangular half-width to standard uncertainty': halfWidth,
  'rectangular, published example': halfWidth,
  'digital resolution to standard uncertainty': step,
  'GUM resolution factor (printed)': step,
  'root-sum-square combination': rootSumOfSquares,
  'A-B-A difference B-A': bracketed,
  'A-B-B-A difference B-A': bracketed,
  'A-B-B-A with linear drift recovers true difference': bracketed,
  'Student t, two-sided 95 %': twoSided(95),
  'Student t, two-sided 95.45 %': twoSided(95.45),
  'Student t, two-sided 99 %': twoSided(99),
  'Student t table, two-sided 95 % (published)': twoSided(95),
  'NIST StRD certified mean': (input) => mean(dataSet(input)),
  'NIST StRD certified standard deviation (n-1)': (input) => sampleStandardDeviation(dataSet(input)),
};

const rows = readDataRows('7-measurement-practice.csv', 59);
const run = rows.filter(({ quantity }) => quantity in adapters);

test('46 of the 59 rows are run, and each adapter by at least one', () => {
  expect(run).toHaveLength(46);
  expect(new Set(run.map(({ quantity }) => quantity)).size).toBe(Object.keys(adapters).length);
});

describe('measurement practice', () => {
  test.each(run.map((row) => [describeRow(row), row] as const))('%s', (_, row) => {
    const computed = adapters[row.quantity]?.(row.input) ?? NaN;
    expect(agrees(computed, row), `computed ${computed}`).toBe(true);
  });
});

test('the certified means and deviations of all four sets, with the digits that a double can hold', () => {
  const certified = {
    NumAcc1: [10000002, 1],
    NumAcc2: [1.2, 0.1],
    NumAcc3: [1000000.2, 0.1],
    NumAcc4: [10000000.2, 0.1],
  };
  for (const [name, [centre = NaN, deviation = NaN]] of Object.entries(certified)) {
    expect(dataSet(name).length).toBe(name === 'NumAcc1' ? 3 : 1001);
    expect(Math.abs(mean(dataSet(name)) / centre - 1)).toBeLessThanOrEqual(4e-16);
    // 0.1 beside 1e7 is stored to 2e-8 of itself.
    expect(Math.abs(sampleStandardDeviation(dataSet(name)) / deviation - 1)).toBeLessThanOrEqual(2e-8);
  }
});
