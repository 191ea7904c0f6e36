import { formatExact } from '../calculators/index.ts';
import { ticksIn } from './ticks.ts';

/** A quantity against time: one or more curves, and levels that are drawn across. */
export type TimePlotInput = {
  /** Times of the values, from 0, rising. */
  readonly times: readonly number[];
  readonly curves: readonly { readonly name: string; readonly values: readonly number[] }[];
  readonly levels: readonly { readonly name: string; readonly value: number }[];
  readonly scale: 'linear' | 'logarithmic';
  readonly mark: 'point' | 'comma';
};

/**
 * Places in pixels from the top (`…Y`), and in per cent of the width (`…X`); type keeps its size on every screen. Curves are
 * paths in a box of 1000 × `plotHeight` that is stretched to the width between `left` and `right`.
 */
export type TimePlot = {
  readonly height: number;
  readonly plotY: number;
  readonly plotHeight: number;
  readonly left: number;
  readonly right: number;
  readonly curves: readonly { readonly name: string; readonly path: string; readonly nameY: number }[];
  readonly levels: readonly { readonly name: string; readonly y: number }[];
  readonly ticksY: readonly { readonly y: number; readonly label: string }[];
  readonly ticksX: readonly { readonly x: number; readonly label: string }[];
};

const left = 14;
const plotY = 27;
const plotHeight = 270;
/** Lowest distance of two lines of type. */
const typeHeight = 17;
/** Decades of a logarithmic scale at most, so that a start at 0 does not stretch it without end. */
const mostDecades = 4;

/** Curves and levels on one scale; a level outside it, or whose name would cover another, is left to the table. */
export function timePlotOf({ times, curves, levels, scale, mark }: TimePlotInput): TimePlot {
  const named = curves.length > 1;
  const right = named ? 70 : 100;
  const end = times.at(-1)!;
  const all = curves.flatMap(({ values }) => values);
  const most = Math.max(...all, 1e-9);
  const axis = scale === 'linear' ? linearAxis(most) : logarithmicAxis(most, Math.min(...all));
  const placeY = (value: number): number => round(plotHeight * (1 - axis.share(value)));
  return {
    height: plotY + plotHeight + 42,
    plotY,
    plotHeight,
    left,
    right,
    curves: apart(
      curves.map(({ name, values }) => ({
        name,
        path: values
          .map((value, k) => `${k === 0 ? 'M' : 'L'}${round((1000 * times[k]!) / end)} ${placeY(value)}`)
          .join(''),
        nameY: plotY + placeY(values.at(-1)!),
      })),
    ),
    levels: levels
      .filter(({ value }) => axis.share(value) > 0 && value < most)
      .toSorted((a, b) => b.value - a.value)
      .map(({ name, value }) => ({ name, y: plotY + placeY(value) }))
      .reduce<{ name: string; y: number }[]>(
        (kept, level) => (level.y - (kept.at(-1)?.y ?? -typeHeight) >= typeHeight ? [...kept, level] : kept),
        [],
      ),
    ticksY: axis.ticks.map((value) => ({ y: plotY + placeY(value), label: formatExact(value, { mark }) })),
    ticksX: ticksIn(0, end, 4).map((minutes) => ({
      x: round(left + ((right - left) * minutes) / end),
      label: formatExact(minutes, { mark }),
    })),
  };
}

type Axis = { readonly share: (value: number) => number; readonly ticks: readonly number[] };

const linearAxis = (most: number): Axis => {
  const top = most * 1.05;
  return { share: (value) => clamp(value / top), ticks: ticksIn(0, top, 5) };
};

/** Whole decades around the values. */
const logarithmicAxis = (most: number, least: number): Axis => {
  const high = Math.ceil(Math.log10(most));
  const low = Math.max(
    high - mostDecades,
    Math.min(high - 1, Math.floor(Math.log10(Math.max(least, 1e-300)))),
  );
  return {
    share: (value) => (value <= 0 ? 0 : clamp((Math.log10(value) - low) / (high - low))),
    ticks: Array.from({ length: high - low + 1 }, (_, k) => Number(`1e${low + k}`)),
  };
};

/** Names at the ends of curves, moved down until none covers another. */
const apart = <Curve extends { readonly nameY: number }>(curves: readonly Curve[]): readonly Curve[] => {
  let last = -Infinity;
  const moved = new Map(
    curves
      .toSorted((a, b) => a.nameY - b.nameY)
      .map((curve) => {
        last = Math.max(curve.nameY, last + typeHeight);
        return [curve, last] as const;
      }),
  );
  return curves.map((curve) => ({ ...curve, nameY: moved.get(curve)! }));
};

const clamp = (share: number): number => Math.min(1, Math.max(0, share));
const round = (value: number): number => Math.round(value * 100) / 100;
