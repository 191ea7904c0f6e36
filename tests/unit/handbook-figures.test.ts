import { describe, expect, test } from 'vitest';
import { altitude } from '../../src/content/worked/altitude.ts';
import { exhaust } from '../../src/content/worked/exhaust.ts';
import { opening } from '../../src/content/worked/pressure-states.ts';
import { repeats } from '../../src/content/worked/repeats.ts';
import { samplesBetween } from '../../src/content/worked/samples-between.ts';
import { instrumentFigures } from '../../src/drawing/instrument-figures.ts';
import { pressureScaleOf } from '../../src/drawing/pressure-scale.ts';
import { whiskerRowsOf } from '../../src/drawing/whisker-rows.ts';

describe('line drawings of gauges, threads and the place', () => {
  test.each(Object.entries(instrumentFigures))('%s is drawn, titled and lettered', (_, figure) => {
    const [, , width = 0, height = 0] = figure.viewBox.split(' ').map(Number);
    expect(figure.paths.length).toBeGreaterThan(8);
    expect(figure.title.length).toBeGreaterThan(60);
    expect(new Set(figure.callouts.map(({ letter }) => letter)).size).toBe(figure.callouts.length);
    for (const { x, y, words } of figure.callouts) {
      expect(words.length).toBeGreaterThan(4);
      expect(x).toBeGreaterThanOrEqual(0);
      expect(x).toBeLessThan(width - 6);
      expect(y).toBeLessThanOrEqual(height);
    }
    for (const { d } of figure.paths) expect(d).not.toMatch(/NaN|undefined/u);
  });
});

describe('pressureScaleOf(ambient, intake)', () => {
  const scale = pressureScaleOf(100, 60);
  const [absolute, gauge, depression] = scale.rules;
  const at = (rule: typeof absolute, label: string) => rule?.ticks.find((tick) => tick.label === label)?.x;

  test('the air outside is 100 absolute, gauge 0 and depression 0, at one place', () => {
    for (const x of [at(absolute, '100'), at(gauge, '0'), at(depression, '0')])
      expect(x).toBe(scale.ambientX);
  });

  test('an intake at 60 is gauge −40 and a depression of 40', () => {
    for (const x of [at(absolute, '60'), at(gauge, '−40'), at(depression, '40')])
      expect(x).toBe(scale.intakeX);
  });

  test('a depression counts to the left, the others to the right', () => {
    expect(at(depression, '80')!).toBeLessThan(at(depression, '20')!);
    expect(at(absolute, '20')!).toBeLessThan(at(absolute, '80')!);
  });
});

describe('whiskerRowsOf(widths)', () => {
  const { rows, zeroX } = whiskerRowsOf([
    { name: 'wide', halfWidth: 12, label: '± 12' },
    { name: 'narrow', halfWidth: 3, label: '± 3' },
  ]);

  test('whiskers lie even about nought, as long as they are wide', () => {
    for (const { x1, x2 } of rows) expect((x1 + x2) / 2).toBeCloseTo(zeroX, 1);
    const [wide, narrow] = rows;
    expect((wide!.x2 - wide!.x1) / (narrow!.x2 - narrow!.x1)).toBeCloseTo(4, 1);
    expect(wide!.x1).toBeGreaterThanOrEqual(0);
    expect(wide!.x2).toBeLessThanOrEqual(100);
  });
});

describe('graphs of formulae', () => {
  const falls = (values: readonly number[]): boolean =>
    values.every((value, k) => k === 0 || value < values[k - 1]!);

  test('samples reach both ends', () => {
    expect(samplesBetween(100, 500, 4)).toEqual([100, 200, 300, 400, 500]);
  });

  test('an opening falls with its depression, and is 1 beside itself', () => {
    expect(falls(opening.curve.values)).toBe(true);
    expect(opening.curve.values[opening.curve.times.indexOf(250)]).toBeCloseTo(1, 12);
  });

  test('the largest depression falls with height, from 760 mmHg', () => {
    expect(falls(altitude.curve.values)).toBe(true);
    expect(altitude.curve.values[0]).toBeCloseTo(760, 3);
  });

  test('more readings tell less apart, and never less than the step allows', () => {
    expect(falls(repeats.curve.values)).toBe(true);
    expect(Math.min(...repeats.curve.values)).toBeGreaterThan(repeats.floor.value);
  });

  test('more air means less gas at every moment, and never none', () => {
    const [little, more, most] = exhaust.input.curves.map(({ values }) => values);
    for (const [k, value] of little!.entries())
      if (k > 0) {
        expect(more![k]).toBeLessThan(value);
        expect(most![k]).toBeLessThan(more![k]!);
        expect(most![k]).toBeGreaterThan(0);
      }
  });
});
