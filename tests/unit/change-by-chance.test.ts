import { describe, expect, it } from 'vitest';
import { changeByChancePa } from '../../src/calculators/index.ts';

describe('changeByChancePa(gauge, count)', () => {
  // By hand: 1.96 √2 √(a²/3n + r²/12), in the unit of a and r.
  it.each([
    [3, 5, 1, 6.2495],
    [3, 5, 2, 5.247],
    [3, 2, 1, 5.0606],
    [0, 6, 9, 4.8009],
  ])('a swing of %d and a step of %d, read %d times: %f', (flutterPa, resolutionPa, count, expected) => {
    expect(changeByChancePa({ flutterPa, resolutionPa }, count)).toBeCloseTo(expected, 3);
  });

  it('falls with the number of readings, and never below the step’s part', () => {
    const changes = [1, 2, 4, 8, 1000].map((count) =>
      changeByChancePa({ flutterPa: 10, resolutionPa: 5 }, count),
    );
    expect(changes).toEqual(changes.toSorted((a, b) => b - a));
    expect(changes.at(-1)).toBeGreaterThan(1.96 * Math.SQRT2 * (5 / Math.sqrt(12)));
  });
});
