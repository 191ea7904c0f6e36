import { formatExact } from '../calculators/index.ts';
import type { DecimalMark } from '../calculators/index.ts';
import { ticksIn } from './ticks.ts';

/** One gauge: how far it reads off, in the unit that is shown. */
export type OffsetMark = {
  readonly gauge: number;
  readonly offset: number;
  /** Half the length of the whisker. */
  readonly halfWidth: number;
  readonly label: string;
};

/** Places in per cent of the width (`…X`) and pixels (`…Y`); type keeps its size on every screen. */
export type OffsetStrip = {
  readonly height: number;
  readonly axisY: number;
  readonly axisX1: number;
  readonly axisX2: number;
  /** No offset: what the gauges are held against. */
  readonly zeroX: number;
  readonly rows: readonly {
    readonly gauge: number;
    readonly y: number;
    readonly x: number;
    readonly whiskerX1: number;
    readonly whiskerX2: number;
    readonly label: string;
  }[];
  readonly ticks: readonly { readonly x: number; readonly label: string }[];
};

const left = 8;
const right = 70;
const firstRow = 36;
const rowHeight = 28;
/** Free space on either side of what is shown, as a share of its width. */
const padding = 0.06;

/** One scale for all gauges, with a line at no offset: a whisker that crosses it may be chance. */
export function offsetStripOf(marks: readonly OffsetMark[], mark: DecimalMark): OffsetStrip {
  const ends = marks.flatMap(({ offset, halfWidth }) => [offset - halfWidth, offset + halfWidth]);
  const low = Math.min(0, ...ends);
  const high = Math.max(0, ...ends);
  const width = (high - low || 1) * (1 + 2 * padding);
  const start = low - (high - low || 1) * padding;
  const place = (value: number): number => round(left + ((value - start) / width) * (right - left));
  const axisY = firstRow + marks.length * rowHeight - rowHeight / 2 + 2;
  return {
    height: axisY + 30,
    axisY,
    axisX1: left,
    axisX2: right,
    zeroX: place(0),
    rows: marks.map(({ gauge, offset, halfWidth, label }, row) => ({
      gauge,
      y: firstRow + row * rowHeight,
      x: place(offset),
      whiskerX1: place(offset - halfWidth),
      whiskerX2: place(offset + halfWidth),
      label,
    })),
    ticks: ticksIn(start, start + width, 4).map((value) => ({
      x: place(value),
      label: formatExact(value, { mark }),
    })),
  };
}

const round = (value: number): number => Math.round(value * 100) / 100;
