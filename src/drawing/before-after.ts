import { ticksIn } from './ticks.ts';

/**
 * Places on a strip that shows a set before and after: one row a carburettor, one scale for all.
 * x in per cent of the strip's width, so that a mark and its type keep their size on every screen.
 */

export type BeforeAfter = {
  readonly rows: readonly { readonly beforePercent: number; readonly afterPercent: number }[];
  readonly band: { readonly leftPercent: number; readonly widthPercent: number };
  readonly ticks: readonly { readonly percent: number; readonly value: number }[];
};

/** Left and right of the scale, in per cent of the strip: room for the number of the carburettor and half a mark. */
const scaleFrom = 5;
const scaleTo = 97;
/** About so many ticks: on a phone their figures must not touch. */
const wantedTicks = 6;

/** Readings in the unit of the scale; the band is as wide as the tolerance, around the middle of what was reached. */
export function beforeAfter(
  before: readonly number[],
  after: readonly number[],
  tolerance: number,
): BeforeAfter {
  const middle = (Math.min(...after) + Math.max(...after)) / 2;
  const bandFrom = middle - tolerance / 2;
  const lowest = Math.min(...before, bandFrom);
  const highest = Math.max(...before, bandFrom + tolerance);
  const margin = (highest - lowest) * 0.06;
  const from = lowest - margin;
  const percentPer = (scaleTo - scaleFrom) / (highest + margin - from);
  const percent = (value: number) => scaleFrom + (value - from) * percentPer;
  return {
    rows: before.map((value, index) => ({
      beforePercent: percent(value),
      afterPercent: percent(after[index] ?? value),
    })),
    band: { leftPercent: percent(bandFrom), widthPercent: tolerance * percentPer },
    ticks: ticksIn(from, highest + margin, wantedTicks).map((value) => ({ percent: percent(value), value })),
  };
}
