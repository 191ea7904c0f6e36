import { formatFixed } from '../calculators/index.ts';
import type { TravelMark } from '../calculators/index.ts';
import { ticksIn } from './ticks.ts';

/** One screw: places in per cent of the width (`…X`) and pixels (`y`). */
export type TravelRow = {
  /** Null for the idle-speed screw. */
  readonly adjuster: number | null;
  readonly y: number;
  readonly endX: readonly [closed: number, open: number];
  readonly plannedX: number;
  /** Whether the plan goes beyond an end. */
  readonly beyond: boolean;
  readonly shiftedX: number | null;
};

export type TravelStrip = {
  readonly height: number;
  readonly axisY: number;
  readonly axisX: readonly [left: number, right: number];
  /** Where every screw stands now. */
  readonly nowX: number;
  readonly rows: readonly TravelRow[];
  readonly ticks: readonly { readonly x: number; readonly label: string }[];
};

const left = 16;
const right = 98;
const rowHeight = 34;
const firstRow = 40;
/** Free space on either side of what is shown, as a share of its width. */
const padding = 0.04;

/** All screws on one scale of turns from where they stand now: closing to the left, opening to the right. */
export function travelStripOf(marks: readonly TravelMark[]): TravelStrip {
  const shown = marks.flatMap(({ closing, opening, planned, shifted }) => [
    -closing,
    opening,
    planned,
    shifted ?? 0,
  ]);
  const low = Math.min(-1, ...shown);
  const high = Math.max(1, ...shown);
  const width = (high - low) * (1 + 2 * padding);
  const start = low - (high - low) * padding;
  const place = (turns: number): number =>
    Math.round((left + ((turns - start) / width) * (right - left)) * 100) / 100;
  const axisY = firstRow + marks.length * rowHeight - rowHeight / 2 + 2;
  return {
    height: axisY + 30,
    axisY,
    axisX: [left, right],
    nowX: place(0),
    rows: marks.map(({ adjuster, closing, opening, planned, shifted }, row) => ({
      adjuster,
      y: firstRow + row * rowHeight,
      endX: [place(-closing), place(opening)],
      plannedX: place(planned),
      beyond: planned > opening || planned < -closing,
      shiftedX: shifted === null ? null : place(shifted),
    })),
    ticks: ticksIn(start, start + width, 5).map((turns) => ({
      x: place(turns),
      label: formatFixed(turns, Number.isInteger(turns) ? 0 : 1),
    })),
  };
}
