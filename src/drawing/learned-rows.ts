import { formatExact, mmHgPa } from '../calculators/index.ts';
import type { LearnedEffect } from '../calculators/index.ts';

/** Places in per cent of the width (`…X`) and pixels (`…Y`); type keeps its size on every screen. */
export type LearnedRows = {
  readonly height: number;
  readonly axisY: number;
  readonly axisX: readonly [left: number, right: number];
  /** What a turn really does. */
  readonly trueX: number;
  readonly rows: readonly {
    readonly turns: number;
    readonly y: number;
    readonly lowX: number;
    readonly likelyX: number;
    readonly highX: number;
    readonly label: string;
  }[];
  readonly ticks: readonly { readonly x: number; readonly label: string }[];
};

const left = 8;
const right = 70;
const lowMmHg = 35;
const highMmHg = 500;
const ticksMmHg = [50, 100, 200, 400] as const;
const firstRow = 36;
const rowHeight = 28;

/** What is believed of the effect, row by row, on a logarithmic scale that keeps still; `most` rows have room. */
export function learnedRowsOf({ learned, truePa }: LearnedEffect, turns: number, most: number): LearnedRows {
  const share = (mmHg: number): number => Math.log(mmHg / lowMmHg) / Math.log(highMmHg / lowMmHg);
  const place = (pascals: number): number =>
    Math.round((left + share(pascals / mmHgPa) * (right - left)) * 100) / 100;
  const axisY = firstRow + most * rowHeight - rowHeight / 2 + 2;
  return {
    height: axisY + 30,
    axisY,
    axisX: [left, right],
    trueX: place(truePa),
    rows: learned.slice(0, turns + 1).map(({ lowPa, likelyPa, highPa, figures }, row) => ({
      turns: row,
      y: firstRow + row * rowHeight,
      lowX: place(lowPa),
      likelyX: place(likelyPa),
      highX: place(highPa),
      label: figures,
    })),
    ticks: ticksMmHg.map((value) => ({ x: place(value * mmHgPa), label: formatExact(value) })),
  };
}
