import { describe, expect, test } from 'vitest';
import { timePlotOf } from '../../src/drawing/time-plot.ts';
import type { TimePlotInput } from '../../src/drawing/time-plot.ts';

const times = [0, 5, 10];
const input: TimePlotInput = {
  times,
  curves: [{ name: 'air', values: [0, 400, 1000] }],
  levels: [
    { name: 'low', value: 50 },
    { name: 'high', value: 5000 },
    { name: 'middle', value: 500 },
  ],
  scale: 'linear',
  mark: 'point',
};
const plot = (part: Partial<TimePlotInput> = {}) => timePlotOf({ ...input, ...part });
const points = (path: string) =>
  path
    .split(/[ML]/u)
    .filter(Boolean)
    .map((pair) => pair.split(' ').map(Number));

describe('timePlotOf(input)', () => {
  test('a curve runs from left to right, and up where it rises', () => {
    const [air] = plot().curves;
    const [first, second, last] = points(air!.path);
    expect([first?.[0], second?.[0], last?.[0]]).toEqual([0, 500, 1000]);
    expect(first?.[1]).toBe(plot().plotHeight);
    expect(second![1]).toBeLessThan(first![1]!);
    expect(last![1]).toBeLessThan(second![1]!);
    expect(last![1]).toBeGreaterThan(0);
  });

  test('levels stand highest first; one above the curve is left to the table', () => {
    expect(plot().levels.map(({ name }) => name)).toEqual(['middle', 'low']);
  });

  test('names of levels never cover one another', () => {
    const levels = [100, 101, 102, 400].map((value) => ({ name: String(value), value }));
    expect(plot({ levels }).levels.map(({ name }) => name)).toEqual(['400', '102']);
  });

  test('a logarithmic scale has whole decades, four at most, and puts 0 at its foot', () => {
    const log = plot({ scale: 'logarithmic' });
    expect(log.ticksY.map(({ label }) => label)).toEqual(['0.1', '1', '10', '100', '1000']);
    expect(points(log.curves[0]!.path)[0]![1]).toBe(log.plotHeight);
    const [middle, low] = log.levels;
    expect(low!.y - middle!.y).toBeCloseTo(log.plotHeight / 4, 1);
    const narrow = plot({ scale: 'logarithmic', curves: [{ name: 'air', values: [40, 50, 60] }] });
    expect(narrow.ticksY.map(({ label }) => label)).toEqual(['10', '100']);
  });

  test('curves without height are drawn at the foot of either scale', () => {
    for (const scale of ['linear', 'logarithmic'] as const) {
      const flat = plot({ scale, curves: [{ name: 'air', values: [0, 0, 0] }], levels: [] });
      expect(points(flat.curves[0]!.path).every(([, y]) => y === flat.plotHeight)).toBe(true);
    }
  });

  test('names at the ends of several curves stand apart, in their own order', () => {
    const { curves, right } = plot({
      curves: [
        { name: 'a', values: [0, 1, 100] },
        { name: 'b', values: [0, 1, 101] },
      ],
    });
    expect(right).toBeLessThan(100);
    expect(curves.map(({ name }) => name)).toEqual(['a', 'b']);
    expect(curves[0]!.nameY - curves[1]!.nameY).toBeGreaterThanOrEqual(17);
  });

  test('ticks have the mark that was typed', () => {
    const small = plot({ mark: 'comma', curves: [{ name: 'air', values: [0, 0.5, 1] }] });
    expect(small.ticksY.map(({ label }) => label)).toContain('0,5');
    expect(small.ticksX.map(({ label }) => label)).toEqual(['0', '5', '10']);
  });
});
