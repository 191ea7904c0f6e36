import { describe, expect, it } from 'vitest';
import { beforeAfter } from '../../src/drawing/before-after.ts';

describe('beforeAfter(before, after, tolerance)', () => {
  const strip = beforeAfter([310, 295, 345, 365], [330, 328, 329, 328], 10);

  it('keeps the order and the proportions of the readings', () => {
    const [first, second, third, fourth] = strip.rows.map(({ beforePercent }) => beforePercent);
    expect((first! - second!) / (fourth! - third!)).toBeCloseTo((310 - 295) / (365 - 345), 9);
  });

  it('shows everything between the number of the carburettor and the right edge', () => {
    const places = strip.rows.flatMap(({ beforePercent, afterPercent }) => [beforePercent, afterPercent]);
    expect(places).toHaveLength(8);
    expect(Math.min(...places)).toBeGreaterThan(5);
    expect(Math.max(...places)).toBeLessThan(97);
  });

  it('lays the band around the middle of what was reached, as wide as the tolerance', () => {
    const { leftPercent, widthPercent } = strip.band;
    const perUnit = (strip.rows[0]!.beforePercent - strip.rows[1]!.beforePercent) / (310 - 295);
    expect(widthPercent).toBeCloseTo(10 * perUnit, 9);
    const middle = (strip.rows[0]!.afterPercent + strip.rows[1]!.afterPercent) / 2;
    expect(leftPercent + widthPercent / 2).toBeCloseTo(middle, 9);
  });

  it('puts round figures on the same scale', () => {
    expect(strip.ticks.length).toBeGreaterThan(2);
    expect(strip.ticks.length).toBeLessThan(10);
    for (const { value, percent } of strip.ticks) {
      expect(value % 5).toBe(0);
      expect(percent).toBeGreaterThanOrEqual(5);
      expect(percent).toBeLessThanOrEqual(97);
    }
  });
});
