import { formatExact } from '../calculators/index.ts';
import type { Curves } from '../calculators/index.ts';
import { ticksIn } from './ticks.ts';

/**
 * Places in per cent of the width (`…X`) and pixels (`…Y`); type keeps its size on every screen. Curves are paths in a
 * box of 1000 × 100 that is stretched to the frame.
 */
export type CurveStrip = {
  readonly height: number;
  readonly frame: {
    readonly x: number;
    readonly width: number;
    readonly y: number;
    readonly height: number;
  };
  readonly curves: readonly { readonly name: string; readonly path: string; readonly atY: number | null }[];
  /** Where one is. */
  readonly atX: number | null;
  readonly levels: readonly { readonly name: string; readonly y: number }[];
  readonly ticksX: readonly Tick[];
  readonly ticksY: readonly Tick[];
};

type Tick = { readonly at: number; readonly label: string };

const frame = { x: 16, width: 76, y: 24, height: 180 } as const;

/** Curves on axes that keep still: what moves is where one is. */
export function curveStripOf({ x, y, curves, levels, atX }: Curves): CurveStrip {
  const across = (value: number): number => (value - x.low) / (x.high - x.low);
  const scaled = y.scale === 'linear' ? (value: number) => value : Math.log10;
  const up = (value: number): number =>
    Math.min(1, Math.max(0, (scaled(value) - scaled(y.low)) / (scaled(y.high) - scaled(y.low))));
  const placeX = (value: number): number => round(frame.x + across(value) * frame.width);
  const placeY = (value: number): number => round(frame.y + (1 - up(value)) * frame.height);
  return {
    height: frame.y + frame.height + 42,
    frame,
    curves: curves.map(({ name, points, atY }) => ({
      name,
      path: points
        .map(
          ([each, value], k) =>
            `${k === 0 ? 'M' : 'L'}${round(1000 * across(each))} ${round(100 * (1 - up(value)))}`,
        )
        .join(''),
      atY: atY === null ? null : placeY(atY),
    })),
    atX: atX === null ? null : placeX(atX),
    levels: levels.map(({ name, y: value }) => ({ name, y: placeY(value) })),
    ticksX: ticksIn(x.low, x.high, 4).map((value) => ({ at: placeX(value), label: formatExact(value) })),
    ticksY: (y.scale === 'linear' ? ticksIn(y.low, y.high, 5) : decades(y.low, y.high)).map((value) => ({
      at: placeY(value),
      label: formatExact(value),
    })),
  };
}

/** Whole powers of ten between two values. */
const decades = (low: number, high: number): readonly number[] => {
  const first = Math.ceil(Math.log10(low));
  return Array.from({ length: Math.floor(Math.log10(high)) - first + 1 }, (_, k) => 10 ** (first + k));
};

const round = (value: number): number => Math.round(value * 100) / 100;
