import { describe, expect, test } from 'vitest';
import { dampedRipple } from '../../src/calculators/index.ts';
import { offsetStripOf } from '../../src/drawing/offset-strip.ts';
import { rippleDrawingOf } from '../../src/drawing/ripple.ts';
import { tolerances } from '../tolerances.ts';

const placeOff = tolerances.drawnPlace.absolute;

describe('rippleDrawingOf(samples, mark)', () => {
  const drawing = rippleDrawingOf(dampedRipple(40, 20, 0.05, 3, 60), 'comma');
  const points = (path: string) => [...path.matchAll(/[ML](\S+) ([^ML]+)/gu)].map(([, x, y]) => [Number(x), Number(y)]); // prettier-ignore

  test('both paths run over the whole frame, and the open one fills it', () => {
    for (const path of [drawing.before, drawing.after]) {
      expect(points(path)).toHaveLength(61);
      expect(points(path)[0]?.[0]).toBe(0);
      expect(points(path).at(-1)?.[0]).toBe(1000);
    }
    const heights = points(drawing.before).map(([, y]) => y ?? NaN);
    expect(Math.min(...heights)).toBeCloseTo(4, 6);
    expect(Math.max(...heights)).toBeCloseTo(96, 6);
    expect(heights[0]).toBe(50);
  });

  test('the damped one has the share that is left', () => {
    const swing = (path: string) => Math.max(...points(path).map(([, y]) => Math.abs((y ?? NaN) - 50)));
    const share = 1 / Math.hypot(1, 2 * Math.PI * 20 * 0.05);
    expect(swing(drawing.after) / swing(drawing.before)).toBeCloseTo(share, 2);
  });

  test('levels and times are labelled in the reader’s mark', () => {
    expect(drawing.levels.map(({ label }) => label)).toEqual(['+40', '0', '−40']);
    expect(drawing.ticks.map(({ label }) => label)).toEqual(['0', '50', '100', '150']);
    expect(drawing.ticks[0]?.x).toBe(drawing.frame.x);
    expect(drawing.ticks.at(-1)?.x).toBeCloseTo(drawing.frame.x + drawing.frame.width, 6);
    const small = rippleDrawingOf(dampedRipple(0.25, 20, 0, 3, 12), 'comma');
    expect(small.levels[0]?.label).toBe('+0,25');
  });

  test('a needle that never moves is a line in the middle', () => {
    const still = rippleDrawingOf(dampedRipple(0, 20, 0.1, 3, 12), 'point');
    expect(still.levels.map(({ label }) => label)).toEqual(['0']);
    expect(points(still.after).every(([, y]) => y === 50)).toBe(true);
  });
});

describe('offsetStripOf(marks, mark)', () => {
  const marks = [
    { gauge: 1, offset: -5, halfWidth: 2, label: 'a' },
    { gauge: 2, offset: 15, halfWidth: 2.5, label: 'b' },
  ];

  test('one scale holds every whisker and the line at no offset', () => {
    const strip = offsetStripOf(marks, 'point');
    const places = strip.rows.flatMap(({ whiskerX1, x, whiskerX2 }) => [whiskerX1, x, whiskerX2]);
    for (const x of [...places, strip.zeroX]) {
      expect(x).toBeGreaterThanOrEqual(strip.axisX1);
      expect(x).toBeLessThanOrEqual(strip.axisX2);
    }
    const perUnit = ((strip.rows[1]?.x ?? NaN) - (strip.rows[0]?.x ?? NaN)) / 20;
    expect(Math.abs((strip.rows[0]?.x ?? NaN) + 5 * perUnit - strip.zeroX)).toBeLessThanOrEqual(placeOff);
    expect(strip.rows.map(({ y }) => y)).toEqual([36, 64]);
    expect(strip.height).toBeGreaterThan(strip.axisY);
    expect(strip.ticks.find(({ label }) => label === '0')?.x).toBe(strip.zeroX);
  });

  test('offsets on one side keep the line in sight; labels have the reader’s mark', () => {
    const strip = offsetStripOf([{ gauge: 1, offset: 0.5, halfWidth: 0.1, label: '' }], 'comma');
    expect(strip.zeroX).toBeGreaterThan(strip.axisX1);
    expect(strip.ticks.map(({ label }) => label)).toContain('0,2');
  });

  test('nothing off and nothing uncertain still has a scale', () => {
    const strip = offsetStripOf([{ gauge: 1, offset: 0, halfWidth: 0, label: '' }], 'point');
    expect(strip.rows[0]?.x).toBe(strip.zeroX);
  });
});
