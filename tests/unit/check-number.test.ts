import { expect, test } from 'vitest';
import { checkIndex, checkNumber, checkOptionalNumber } from '../../src/calculators/check-number.ts';

test('checkNumber(field, value, limit) lets through what is finite and inside', () => {
  expect(checkNumber('x', -1e9)).toBeUndefined();
  expect(checkNumber('x', 2, { min: 2, max: 2 })).toBeUndefined();
  expect(checkNumber('x', 1, { above: 0, below: 2 })).toBeUndefined();
});

test.each([
  [1, { min: 2 }],
  [3, { max: 2 }],
  [0, { above: 0 }],
  [2, { below: 2 }],
] as const)('checkNumber names the limit that %d passes', (value, limit) => {
  expect(checkNumber('x', value, limit)).toEqual({ kind: 'out-of-range', field: 'x', value, limit });
});

test.each([NaN, Infinity, -Infinity])('checkNumber: %d is not finite', (value) => {
  expect(checkNumber('x', value)).toEqual({ kind: 'not-finite', field: 'x' });
});

test('checkOptionalNumber lets a missing number through and no other', () => {
  expect(checkOptionalNumber('x', undefined, { min: 2 })).toBeUndefined();
  expect(checkOptionalNumber('x', 1, { min: 2 })).toMatchObject({ kind: 'out-of-range' });
});

test('checkIndex counts from 1', () => {
  expect(checkIndex('x', 1, 4)).toBeUndefined();
  expect(checkIndex('x', 4, 4)).toBeUndefined();
  for (const value of [0, 5, 1.5, NaN]) {
    expect(checkIndex('x', value, 4)).toEqual({
      kind: 'index',
      field: 'x',
      value,
      limit: { min: 1, max: 4 },
    });
  }
});
