import { describe, expect, test } from 'vitest';
import { ticksIn } from '../../src/drawing/ticks.ts';

describe('ticksIn(low, high, wanted)', () => {
  test.each([
    [0, 10, 4, [0, 5, 10]],
    [183, 259, 4, [200, 220, 240]],
    [0.1, 0.9, 4, [0.2, 0.4, 0.6, 0.8]],
    [-3, 3, 4, [-2, 0, 2]],
    [8_000, 12_000, 4, [8_000, 9_000, 10_000, 11_000, 12_000]],
    [201, 204, 1, []],
  ])('from %d to %d, about %d: %j', (low, high, wanted, expected) => {
    const ticks = ticksIn(low, high, wanted);
    expect(ticks).toHaveLength(expected.length);
    ticks.forEach((tick, k) => expect(tick).toBeCloseTo(expected[k]!, 9));
  });

  test('lie inside, at equal steps of 1, 2 or 5 times a power of ten, neither few nor many', () => {
    for (const width of [0.003, 0.07, 0.4, 1, 3, 7.5, 40, 99, 230, 5_000])
      for (const low of [-12.3, 0, 0.77, 187, 24_000]) {
        const ticks = ticksIn(low, low + width, 4);
        expect(ticks.length).toBeGreaterThanOrEqual(1);
        expect(ticks.length).toBeLessThanOrEqual(5);
        expect(Math.min(...ticks)).toBeGreaterThanOrEqual(low - 1e-9);
        expect(Math.max(...ticks)).toBeLessThanOrEqual(low + width + 1e-9);
        ticks.slice(1).forEach((tick, k) => {
          const step = tick - ticks[k]!;
          const leading = step / 10 ** Math.floor(Math.log10(step * (1 + 1e-6)));
          expect([1, 2, 5].some((factor) => Math.abs(leading - factor) < 1e-6 * factor)).toBe(true);
        });
      }
  });

  test('of no width there are none', () => {
    expect(ticksIn(5, 5, 4)).toEqual([]);
  });
});
