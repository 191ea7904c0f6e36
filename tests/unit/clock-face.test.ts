import { describe, expect, test } from 'vitest';
import { clockFace } from '../../src/drawing/clock-face.ts';
import { tolerances } from '../tolerances.ts';

/** All points that are named in a path, but for the radii and flags of its arcs. */
const pointsOf = (path: string): [number, number][] =>
  [...path.replace(/A[\d.]+ [\d.]+ 0 \d \d /gu, 'L').matchAll(/(-?[\d.]+) (-?[\d.]+)/gu)].map(([, x, y]) => [
    Number(x),
    Number(y),
  ]);
const arcsOf = (path: string) =>
  [...path.matchAll(/A([\d.]+) [\d.]+ 0 (\d) (\d) (-?[\d.]+) (-?[\d.]+)/gu)].map(
    ([, radius, large, clockwise, x, y]) => ({
      radius: Number(radius),
      large: large === '1',
      clockwise: clockwise === '1',
      // Degrees clockwise from 12.
      end: ((Math.atan2(Number(x), -Number(y)) * 180) / Math.PI + 360) % 360,
      distance: Math.hypot(Number(x), Number(y)),
    }),
  );
const only = <Value>(values: readonly Value[]): Value => {
  expect(values).toHaveLength(1);
  return values[0]!;
};
/** Degrees that a rounded point may be off, at the radius of the face. */
const offDegrees = (tolerances.drawnPoint.absolute / 36) * (180 / Math.PI);

describe('clockFace(clockwiseTurns).sweep', () => {
  test.each([
    [1 / 60, 6, false, true],
    [0.25, 90, false, true],
    [0.5, 180, false, true],
    [0.75, 270, true, true],
    [59 / 60, 354, true, true],
    [-0.25, 270, false, false],
    [-0.75, 90, true, false],
    // Beyond a whole turn it shows what comes on top of it.
    [1.25, 90, false, true],
    [-2.75, 90, true, false],
  ])('%d turn ends at %d degrees clockwise from 12', (turns, end, large, clockwise) => {
    const { sweep } = clockFace(turns);
    const arc = only(arcsOf(sweep));
    expect(Math.abs(arc.end - end)).toBeLessThanOrEqual(offDegrees);
    expect(arc).toMatchObject({ radius: 36, large, clockwise });
    expect(Math.abs(arc.distance - 36)).toBeLessThanOrEqual(tolerances.drawnPoint.absolute);
    // From the middle up to 12, round, and closed.
    expect(sweep).toMatch(/^M0 0V-36A.*Z$/u);
  });

  test.each([1, -1, 2, 3, -12, 0.1 + 0.2 + 0.7, 1 - 1e-12])('%d turns fill the face', (turns) => {
    const arc = only(arcsOf(clockFace(turns).sweep));
    expect(arc).toMatchObject({ radius: 36, large: true });
    expect(clockFace(turns).sweep).toMatch(/^M0 -36A/u);
  });

  test.each([0, 1e-9, -1e-9])('%d turns leave it empty', (turns) => {
    const arc = only(arcsOf(clockFace(turns).sweep));
    expect(arc.large).toBe(false);
    expect(Math.min(arc.end, 360 - arc.end)).toBeLessThanOrEqual(offDegrees);
  });
});

describe('clockFace(clockwiseTurns).arrow', () => {
  test.each([
    [0.25, 90, true],
    [0.5, 180, true],
    [-0.25, 270, false],
    // Never so short that it shows no direction, never so long that it meets its own tail.
    [1 / 60, 24, true],
    [-1 / 60, 336, false],
    [1, 330, true],
    [-3, 30, false],
  ])('of %d turn points to %d degrees clockwise from 12', (turns, end, clockwise) => {
    const { arrow } = clockFace(turns);
    const arc = only(arcsOf(arrow));
    expect(Math.abs(arc.end - end)).toBeLessThanOrEqual(offDegrees);
    expect(arc.clockwise).toBe(clockwise);
    expect(arc.radius).toBe(49);
    // It leaves 12 on the side that it goes to, and both strokes of its head start from its tip.
    const [start, tip, ...head] = pointsOf(arrow);
    expect(Math.sign(start![0])).toBe(clockwise ? 1 : -1);
    expect(head).toHaveLength(3);
    expect(head[1]).toEqual(tip);
    for (const stroke of [head[0]!, head[2]!])
      expect(Math.abs(Math.hypot(stroke[0] - tip![0], stroke[1] - tip![1]) - 8)).toBeLessThanOrEqual(
        2 * tolerances.drawnPoint.absolute,
      );
  });

  test('the head lies behind the tip, seen along the way', () => {
    for (const turns of [0.1, 0.25, 0.6, -0.1, -0.25, -0.6]) {
      const [, tip, one, , other] = pointsOf(clockFace(turns).arrow);
      const side = Math.sign(turns);
      // The way at the tip is at right angles to its radius.
      const way = [-tip![1] * side, tip![0] * side] as const;
      for (const end of [one!, other!])
        expect((end[0] - tip![0]) * way[0] + (end[1] - tip![1]) * way[1]).toBeLessThan(0);
    }
  });

  test('clockwise and anticlockwise mirror each other', () => {
    for (const turns of [1 / 60, 0.25, 0.4, 0.75]) {
      const there = pointsOf(clockFace(turns).arrow);
      const back = pointsOf(clockFace(-turns).arrow);
      const sorted = (points: readonly [number, number][]) => points.map(([x, y]) => `${x + 0} ${y}`).sort();
      expect(sorted(back)).toEqual(sorted(there.map(([x, y]) => [-x, y])));
    }
  });
});

describe('clockFace(clockwiseTurns)', () => {
  test('has twelve ticks, an hour apart, outside the face', () => {
    const { ticks } = clockFace(0.25);
    const points = pointsOf(ticks);
    expect(points).toHaveLength(24);
    points.forEach(([x, y], k) => {
      const radius = k % 2 === 0 ? 36 : 42;
      const hour = Math.floor(k / 2) * 30;
      expect(Math.abs(x - radius * Math.sin((hour * Math.PI) / 180))).toBeLessThanOrEqual(0.051);
      expect(Math.abs(y + radius * Math.cos((hour * Math.PI) / 180))).toBeLessThanOrEqual(0.051);
    });
  });

  test('stays inside its view box, −56 to 56 with the head of the arrow', () => {
    for (let minute = -90; minute <= 90; minute++)
      for (const path of Object.values(clockFace(minute / 60)))
        for (const point of pointsOf(path)) {
          expect(Math.max(...point.map(Math.abs))).toBeLessThanOrEqual(56);
          expect(point.every(Number.isFinite)).toBe(true);
        }
  });
});
