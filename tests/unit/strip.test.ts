import { describe, expect, test } from 'vitest';
import { exampleSessions } from '../../src/calculators/example-sessions.ts';
import { computeBench, widthAt95, type Bench, type SessionEvent } from '../../src/calculators/index.ts';
import { stripMarks } from '../../src/drawing/strip-marks.ts';
import { stripOf, type Strip, type StripInput } from '../../src/drawing/strip.ts';
import { threadPlace } from '../../src/drawing/thread-place.ts';
import { mmHg } from '../engine/invented.ts';
import { seededRandom } from '../seeded-random.ts';
import { tolerances } from '../tolerances.ts';

const input: StripInput = {
  marks: [
    { number: 1, depressionPa: 212 * mmHg, halfWidthPa: 5 * mmHg },
    { number: 2, depressionPa: 248 * mmHg, halfWidthPa: 5 * mmHg, beforePa: 240 * mmHg, afterPa: 252 * mmHg },
    { number: 3, depressionPa: 251 * mmHg, halfWidthPa: 6 * mmHg },
    { number: 4, depressionPa: 187 * mmHg, halfWidthPa: 5 * mmHg },
  ],
  tolerancePa: 10 * mmHg,
  unit: 'mmHg',
  decimals: 0,
  mark: 'point',
};

/** Per cent of the width that a millimetre of mercury takes, from two marks. */
const perMmHg = ({ rows }: Strip): number => (rows[1]!.x - rows[3]!.x) / (248 - 187);
const { absolute } = tolerances.drawnPlace;

const placesOf = (strip: Strip): number[] => [
  strip.bandX,
  strip.bandX + strip.bandWidth,
  strip.bandMiddleX,
  ...strip.ticks.map(({ x }) => x),
  ...strip.rows.flatMap(({ x, whiskerX1, whiskerX2, beforeX, afterX }) => [
    x,
    whiskerX1,
    whiskerX2,
    ...(beforeX === null ? [] : [beforeX]),
    ...(afterX === null ? [] : [afterX]),
  ]),
];

describe('stripOf(input)', () => {
  const strip = stripOf(input);

  test('the band is as wide as the tolerance on the scale of the marks', () => {
    expect(Math.abs(strip.bandWidth - 10 * perMmHg(strip))).toBeLessThanOrEqual(absolute);
    const twice = stripOf({ ...input, tolerancePa: 20 * mmHg });
    expect(Math.abs(twice.bandWidth - 20 * perMmHg(twice))).toBeLessThanOrEqual(absolute);
  });

  test('the band lies on the median, or on what the set is matched to', () => {
    const placeOf = (valueMmHg: number): number => strip.rows[3]!.x + (valueMmHg - 187) * perMmHg(strip);
    expect(Math.abs(strip.bandMiddleX - placeOf((212 + 248) / 2))).toBeLessThanOrEqual(absolute);
    expect(Math.abs(strip.bandX + strip.bandWidth / 2 - strip.bandMiddleX)).toBeLessThanOrEqual(absolute);
    const matched = stripOf({ ...input, reference: 4 });
    expect(matched.bandMiddleX).toBe(matched.rows[3]!.x);
    // A reference that is not shown is none.
    expect(stripOf({ ...input, reference: 7 })).toEqual(strip);
    const three = stripOf({ ...input, marks: input.marks.slice(0, 3) });
    expect(three.bandMiddleX).toBe(three.rows[1]!.x);
  });

  test('marks, whiskers, ghosts and aims lie where their pressures are, all on one scale', () => {
    input.marks.forEach((mark, k) => {
      const row = strip.rows[k]!;
      const away = (pascals: number): number => (pascals / mmHg - 187) * perMmHg(strip) + strip.rows[3]!.x;
      expect(row.number).toBe(mark.number);
      expect(Math.abs(row.x - away(mark.depressionPa))).toBeLessThanOrEqual(absolute);
      expect(Math.abs(row.whiskerX1 - away(mark.depressionPa - mark.halfWidthPa))).toBeLessThanOrEqual(
        absolute,
      );
      expect(Math.abs(row.whiskerX2 - away(mark.depressionPa + mark.halfWidthPa))).toBeLessThanOrEqual(
        absolute,
      );
    });
    expect(strip.rows.map(({ beforeX, afterX }) => [beforeX === null, afterX === null])).toEqual([
      [true, true],
      [false, false],
      [true, true],
      [true, true],
    ]);
    const two = strip.rows[1]!;
    expect(Math.abs(two.x - two.beforeX! - 8 * perMmHg(strip))).toBeLessThanOrEqual(absolute);
    expect(Math.abs(two.afterX! - two.x - 4 * perMmHg(strip))).toBeLessThanOrEqual(absolute);
  });

  test('one row a carburettor, from the top, at equal distances; the axis below them, inside the height', () => {
    const ys = strip.rows.map(({ y }) => y);
    expect(ys.slice(1).map((y, k) => y - ys[k]!)).toEqual([28, 28, 28]);
    expect(strip.axisY).toBeGreaterThan(Math.max(...ys));
    expect(strip.height).toBeGreaterThan(strip.axisY);
    expect(stripOf({ ...input, marks: input.marks.slice(0, 2) }).height).toBe(strip.height - 2 * 28);
  });

  test('labels and ticks are in the gauge’s unit', () => {
    expect(strip.rows.map(({ label }) => label)).toEqual(['212 ± 5', '248 ± 5', '251 ± 6', '187 ± 5']);
    expect(strip.ticks.map(({ label }) => label)).toEqual(['200', '250']);
    strip.ticks.forEach(({ x, label }) =>
      expect(Math.abs(x - strip.rows[3]!.x - (Number(label) - 187) * perMmHg(strip))).toBeLessThanOrEqual(
        absolute,
      ),
    );
    const metric = stripOf({ ...input, unit: 'kPa', decimals: 1, mark: 'comma' });
    expect(metric.rows[0]!.label).toBe('28,3 ± 0,7');
    expect(metric.ticks.map(({ label }) => label)).toEqual(['25', '30']);
    expect(metric.rows.map(({ x }) => x)).toEqual(strip.rows.map(({ x }) => x));
  });

  test('everything lies on the axis, and the axis inside the picture, for a thousand sets', () => {
    const random = seededRandom(3);
    for (let k = 0; k < 1000; k++) {
      const marks = Array.from({ length: 1 + Math.floor(random() * 8) }, (_, i) => ({
        number: i + 1,
        depressionPa: random() * 100_000,
        halfWidthPa: random() * 10 ** (random() * 5),
        ...(random() < 0.5 ? { beforePa: random() * 100_000 } : {}),
        ...(random() < 0.5 ? { afterPa: random() * 100_000 } : {}),
      }));
      const drawn = stripOf({ ...input, marks, tolerancePa: 10 ** (random() * 5), reference: 1 });
      expect(drawn.axisX1).toBeGreaterThanOrEqual(0);
      expect(drawn.axisX2).toBeLessThanOrEqual(100);
      for (const place of placesOf(drawn)) {
        expect(place).toBeGreaterThanOrEqual(drawn.axisX1);
        expect(place).toBeLessThanOrEqual(drawn.axisX2);
      }
    }
  });

  test('one mark without uncertainty is drawn in the middle of its band', () => {
    const one = stripOf({ ...input, marks: [{ number: 3, depressionPa: 30_000, halfWidthPa: 0 }] });
    expect(one.rows[0]!.x).toBe((one.axisX1 + one.axisX2) / 2);
    expect(one.bandMiddleX).toBe(one.rows[0]!.x);
  });
});

describe('stripMarks(bench, events)', () => {
  const { setUp, events } = exampleSessions['all-adjustable'];
  const benchOf = (given: readonly SessionEvent[]): Bench => {
    const bench = computeBench({ ...setUp, opens: setUp.screws.map(() => 'clockwise') }, given, null);
    if (!bench.ok) throw new Error(bench.problem.kind);
    return bench.value;
  };

  test('only what has been read is shown', () => {
    expect(stripMarks(benchOf([]), [])).toEqual([]);
    const two = events.slice(0, 2);
    expect(stripMarks(benchOf(two), two).map(({ number }) => number)).toEqual([1, 2]);
  });

  test('the mark is the estimate, its whisker the 95 % interval', () => {
    const given = events.slice(0, 4);
    const bench = benchOf(given);
    stripMarks(bench, given).forEach((mark, i) => {
      expect(mark.depressionPa).toBe(bench.estimate.depressionPa[i]);
      expect(mark.halfWidthPa).toBe(widthAt95(bench.estimate.standardUncertaintyPa[i]!));
    });
  });

  test('before the first turn there is no ghost, and where a turn is asked for there is an aim', () => {
    const given = events.slice(0, 4);
    const bench = benchOf(given);
    if (bench.step.kind !== 'turn') throw new Error(bench.step.kind);
    const marks = stripMarks(bench, given);
    expect(marks.map(({ afterPa }) => afterPa)).toEqual(bench.step.expectedDepressionPa);
    for (const mark of marks) expect(mark).not.toHaveProperty('beforePa');
  });

  test('after a turn each has its ghost, and no aim while a reading is asked for', () => {
    const given = events.slice(0, 5);
    const bench = benchOf(given);
    expect(bench.step.kind).toBe('read');
    const marks = stripMarks(bench, given);
    expect(marks.map(({ beforePa }) => beforePa)).toEqual(bench.beforeTurnPa);
    for (const mark of marks) expect(mark).not.toHaveProperty('afterPa');
  });
});

test.each([
  [{ closing: 1, opening: 1 }, '50%'],
  [{ closing: 0, opening: 2 }, '0%'],
  [{ closing: 2, opening: 0 }, '100%'],
  [{ closing: 1, opening: 2 }, '33.3%'],
  [{ closing: 0, opening: 0 }, '50%'],
])('threadPlace(%j) is %s from fully closed', (left, place) => {
  expect(threadPlace(left)).toBe(place);
});
