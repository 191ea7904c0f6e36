import { describe, expect, test } from 'vitest';
import { formatReading, readingDecimals } from '../../src/calculators/index.ts';
import { mmHg } from '../engine/invented.ts';

describe('readingDecimals(resolutionPa, unit)', () => {
  test.each([
    [5 * mmHg, 'mmHg', 0],
    [0.5 * mmHg, 'mmHg', 1],
    [20 * mmHg, 'mmHg', 0],
    // 5 mmHg are 0.2 inHg, 0.67 kPa, 6.7 mbar.
    [5 * mmHg, 'inHg', 1],
    [5 * mmHg, 'kPa', 1],
    [5 * mmHg, 'mbar', 0],
    [5 * mmHg, 'bar', 3],
    [1e-9, 'bar', 6],
  ])('of %d Pa in %s: %d', (resolutionPa, unit, decimals) => {
    expect(readingDecimals(resolutionPa, unit)).toBe(decimals);
  });
});

describe('formatReading(pascals, unit, resolutionPa, style)', () => {
  test.each([
    [212.4 * mmHg, 'mmHg', '212'],
    [212.5 * mmHg, 'mmHg', '213'],
    [212.4 * mmHg, 'inHg', '8.4'],
    [28_317, 'kPa', '28.3'],
    [0, 'mmHg', '0'],
  ])('%d Pa in %s is %s', (pascals, unit, text) => {
    expect(formatReading(pascals, unit, 5 * mmHg)).toBe(text);
  });

  test('with the decimal mark that the reader uses', () => {
    expect(formatReading(28_317, 'kPa', 5 * mmHg, { mark: 'comma' })).toBe('28,3');
  });
});
