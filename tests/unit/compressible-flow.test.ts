import { describe, expect, test } from 'vitest';
import {
  criticalPressureRatio,
  isentropicFlowFunction,
  throttleAreaRatio,
} from '../../src/calculators/compressible-flow.ts';
import { agrees, describeRow, readDataRows, toNumber } from '../data-rows.ts';
import { tolerances } from '../tolerances.ts';

const number = (input: string) => toNumber(input, input);

const adapters: Readonly<Record<string, (input: string) => number>> = {
  'critical pressure ratio': (input) => criticalPressureRatio(number(input)),
  // Below the critical ratio the function no longer depends on it.
  'choked mass-flow function': (input) => isentropicFlowFunction(0, number(input)),
  'mass-flow function psi(p2/p1), gamma 1.4': (input) => isentropicFlowFunction(number(input)),
  'incompressible over compressible flow': (input) =>
    Math.sqrt(2 * (1 - number(input))) / isentropicFlowFunction(number(input)),
};

const rows = readDataRows('5-compressible-flow.csv', 69).filter(({ quantity }) => quantity in adapters);

test('13 of the 69 rows of tests/data/5-compressible-flow.csv are on the flow function, and every adapter has one', () => {
  expect(rows).toHaveLength(13);
  expect(new Set(rows.map(({ quantity }) => quantity)).size).toBe(Object.keys(adapters).length);
});

describe('the flow function', () => {
  test.each(rows.map((row) => [describeRow(row), row] as const))('%s', (_, row) => {
    const computed = adapters[row.quantity]?.(row.input) ?? NaN;
    expect(agrees(computed, row), `computed ${computed}`).toBe(true);
  });
});

test('isentropicFlowFunction(1) is 0, and near 1 it is the incompressible one', () => {
  expect(isentropicFlowFunction(1)).toBe(0);
  const small = 1e-6;
  expect(Math.abs(isentropicFlowFunction(1 - small) / Math.sqrt(2 * small) - 1)).toBeLessThanOrEqual(small);
});

test.each([-0.1, 1.1, NaN])('isentropicFlowFunction(%d) is our own mistake', (ratio) => {
  expect(() => isentropicFlowFunction(ratio)).toThrow(RangeError);
});

describe('throttleAreaRatio(depressionPa, referenceDepressionPa, ambientPa)', () => {
  const ambientPa = 101_325;
  const ratio = (one: number, other: number) => {
    const result = throttleAreaRatio(one, other, ambientPa);
    return result.ok ? result.value : NaN;
  };

  test('is 1 for equal depressions, more for the lower one, and its own reciprocal', () => {
    expect(ratio(30_000, 30_000)).toBe(1);
    expect(ratio(25_000, 33_000)).toBeGreaterThan(1);
    expect(ratio(25_000, 33_000) * ratio(33_000, 25_000)).toBeCloseTo(1, 14);
  });

  test('is the ratio of absolute pressures where both throttles are choked', () => {
    expect(Math.abs(ratio(60_000, 70_000) - 41_325 / 31_325)).toBeLessThanOrEqual(
      tolerances.flow.relative * 2,
    );
  });

  test('is the root of the ratio of depressions where both are small', () => {
    // Incompressible flow at equal density; 1 and 4 Pa of 101,325 leave 3e-5.
    expect(Math.abs(ratio(1, 4) - 2)).toBeLessThanOrEqual(1e-4);
  });

  test('names what is wrong', () => {
    expect(throttleAreaRatio(0, 100, ambientPa)).toEqual({
      ok: false,
      problem: { kind: 'out-of-range', field: 'depressionPa', value: 0, limit: { above: 0 } },
    });
    expect(throttleAreaRatio(100, ambientPa, ambientPa)).toMatchObject({
      problem: { kind: 'depression-beyond-ambient', field: 'referenceDepressionPa' },
    });
    expect(throttleAreaRatio(100, NaN, ambientPa)).toMatchObject({ problem: { kind: 'not-finite' } });
    expect(throttleAreaRatio(100, 100, 0)).toMatchObject({ problem: { field: 'ambientPa' } });
  });
});
