import { formatExact } from '../calculators/index.ts';
import { ticksIn } from './ticks.ts';

/** How far something may be off, either way. */
export type HalfWidth = { readonly name: string; readonly halfWidth: number; readonly label: string };

/** Places in per cent of the width (`…X`) and pixels (`…Y`); type keeps its size on every screen. */
export type WhiskerRows = {
  readonly height: number;
  readonly axisY: number;
  readonly axisX1: number;
  readonly axisX2: number;
  readonly zeroX: number;
  readonly rows: readonly {
    readonly name: string;
    readonly label: string;
    readonly y: number;
    readonly x1: number;
    readonly x2: number;
  }[];
  readonly ticks: readonly { readonly x: number; readonly label: string }[];
};

const left = 3;
const right = 97;
const firstRow = 30;
const rowHeight = 44;
/** Free space beyond the widest, as a share of it. */
const beyond = 0.08;

/** Whiskers about one middle, on one scale: what outweighs what. */
export function whiskerRowsOf(widths: readonly HalfWidth[]): WhiskerRows {
  const widest = Math.max(...widths.map(({ halfWidth }) => halfWidth)) * (1 + beyond);
  const place = (value: number): number =>
    Math.round((left + ((value / widest + 1) / 2) * (right - left)) * 100) / 100;
  const axisY = firstRow + widths.length * rowHeight - rowHeight / 2 + 2;
  return {
    height: axisY + 30,
    axisY,
    axisX1: left,
    axisX2: right,
    zeroX: place(0),
    rows: widths.map(({ name, halfWidth, label }, row) => ({
      name,
      label,
      y: firstRow + row * rowHeight,
      x1: place(-halfWidth),
      x2: place(halfWidth),
    })),
    ticks: ticksIn(-widest, widest, 6).map((value) => ({ x: place(value), label: formatExact(value) })),
  };
}
