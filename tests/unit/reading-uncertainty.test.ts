import { describe, expect, test } from 'vitest';
import {
  combine,
  meanUncertainty,
  readingStandardUncertaintyPa,
} from '../../src/calculators/reading-uncertainty.ts';
import { tolerances } from '../tolerances.ts';

const { relative } = tolerances.statistics;
const close = (one: number, other: number) => Math.abs(one - other) <= relative * Math.abs(other);

const gauge = { resolutionPa: 600, flutterPa: 300 };

test('readingStandardUncertaintyPa(gauge) is the root of a²/3 + r²/12', () => {
  expect(readingStandardUncertaintyPa({ resolutionPa: 12, flutterPa: 6 })).toBe(Math.sqrt(24));
  expect(readingStandardUncertaintyPa({ resolutionPa: 0, flutterPa: 3 })).toBe(Math.sqrt(3));
});

describe('meanUncertainty(gauge, count, scatter)', () => {
  test('of one reading is that of the reading, with nothing that limits it', () => {
    const { standardUncertaintyPa, degreesOfFreedom } = meanUncertainty(gauge, 1);
    expect(close(standardUncertaintyPa, readingStandardUncertaintyPa(gauge))).toBe(true);
    expect(degreesOfFreedom).toBe(Infinity);
  });

  test('divides flutter and scatter by the count, and keeps the resolution', () => {
    // 300²/3/4 = 7500; 600²/12 = 30000; 200²/4 = 10000.
    const u = meanUncertainty(gauge, 4, { standardDeviationPa: 200, degreesOfFreedom: 3 });
    expect(close(u.standardUncertaintyPa, Math.sqrt(47_500))).toBe(true);
    // Welch and Satterthwaite: 47500² / (10000²/3).
    expect(close(u.degreesOfFreedom, (3 * 47_500 ** 2) / 10_000 ** 2)).toBe(true);
  });

  test('is not narrower than the told figures where readings agree by luck', () => {
    const u = meanUncertainty(gauge, 2, { standardDeviationPa: 0, degreesOfFreedom: 1 });
    expect(close(u.standardUncertaintyPa, Math.sqrt(45_000))).toBe(true);
    expect(u.degreesOfFreedom).toBe(Infinity);
  });

  test('follows the scatter where the gauge is far steadier than the readings', () => {
    const steady = { resolutionPa: 0.01, flutterPa: 0 };
    const u = meanUncertainty(steady, 5, { standardDeviationPa: 100, degreesOfFreedom: 4 });
    expect(u.standardUncertaintyPa).toBeCloseTo(100 / Math.sqrt(5), 6);
    expect(u.degreesOfFreedom).toBeCloseTo(4, 6);
  });
});

test('combine(…) as the worked example of Welch and Satterthwaite in the GUM, G.4.1', () => {
  // JCGM 100:2008, G.4.1 example: relative uncertainties 0.25 %, 0.57 %, 0.82 % with 9, 4 and 14 degrees
  // of freedom give u = 1.03 % and ν = 19.0.
  const u = combine(
    [
      [0.25, 9],
      [0.57, 4],
      [0.82, 14],
    ].map(([size = NaN, degreesOfFreedom = NaN]) => ({ variancePa2: size ** 2, degreesOfFreedom })),
  );
  expect(u.standardUncertaintyPa.toFixed(2)).toBe('1.03');
  expect(u.degreesOfFreedom.toFixed(1)).toBe('19.0');
});

test('combine(…) of nothing that varies rests on nothing that was estimated', () => {
  const none = combine([{ variancePa2: 0, degreesOfFreedom: 3 }]);
  expect(none).toEqual({ standardUncertaintyPa: 0, degreesOfFreedom: Infinity });
});
