import { formatFixed } from '../calculators/index.ts';
import { ticksIn } from './ticks.ts';

/** One way of working on one number of carburettors: looks at the gauge, and what stands beside them. */
export type StudyMark = {
  readonly name: string;
  readonly median: number;
  readonly most95: number;
  readonly note: string;
  /** Drawn filled: what the others are compared with. */
  readonly first: boolean;
};

export type StudyGroup = { readonly name: string; readonly marks: readonly StudyMark[] };

/** Places in per cent of the width (`…X`) and pixels (`…Y`); type keeps its size on every screen. */
export type StudyPlot = {
  readonly height: number;
  readonly axisY: number;
  readonly axisX1: number;
  readonly axisX2: number;
  readonly groups: readonly { readonly name: string; readonly y: number }[];
  readonly rows: readonly {
    readonly name: string;
    readonly y: number;
    readonly x1: number;
    readonly x2: number;
    readonly note: string;
    readonly first: boolean;
  }[];
  readonly ticks: readonly { readonly x: number; readonly label: string }[];
};

const left = 39;
const right = 88;
const firstRow = 40;
const rowHeight = 22;
/** A group's heading and the gap above it. */
const headingHeight = 34;

/** Groups of rows on one scale from 0: a mark at the median, a line on to what 95 in 100 do not exceed. */
export const studyPlotOf = (groups: readonly StudyGroup[]): StudyPlot => {
  const most = Math.max(1, ...groups.flatMap(({ marks }) => marks.map(({ most95 }) => most95)));
  const place = (looks: number): number => round(left + (looks / most) * (right - left));
  const tops = groups.map((_, g) =>
    groups
      .slice(0, g)
      .reduce((sum, { marks }) => sum + headingHeight + marks.length * rowHeight, firstRow - 24),
  );
  const axisY = groups.reduce(
    (sum, { marks }) => sum + headingHeight + marks.length * rowHeight,
    firstRow - 24,
  );
  return {
    height: axisY + 44,
    axisY,
    axisX1: left,
    axisX2: right,
    groups: groups.map(({ name }, g) => ({ name, y: tops[g]! + 14 })),
    rows: groups.flatMap(({ marks }, g) =>
      marks.map(({ name, median, most95, note, first }, row) => ({
        name,
        y: tops[g]! + headingHeight + row * rowHeight,
        x1: place(median),
        x2: place(most95),
        note,
        first,
      })),
    ),
    ticks: ticksIn(0, most, 4).map((looks) => ({ x: place(looks), label: formatFixed(looks, 0) })),
  };
};

const round = (value: number): number => Math.round(value * 100) / 100;
