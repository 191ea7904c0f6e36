import { formatFixed, inUnit, pressureUnit } from '../calculators/index.ts';
import { ticksIn } from './ticks.ts';

/** One carburettor of the strip, in pascals. */
export type StripMark = {
  readonly number: number;
  readonly depressionPa: number;
  /** Half the length of the whisker; 0 where nothing is uncertain. */
  readonly halfWidthPa: number;
  /** Before the last turn. */
  readonly beforePa?: number;
  /** After the move that is asked for. */
  readonly afterPa?: number;
};

export type StripInput = {
  readonly marks: readonly StripMark[];
  readonly tolerancePa: number;
  /** The carburettor that the set is matched to, if there is one. */
  readonly reference?: number;
  readonly unit: string;
  readonly decimals: number;
  readonly mark: 'point' | 'comma';
  /** Ends of a scale that keeps still; around what is shown if left out. */
  readonly scalePa?: readonly [low: number, high: number];
  /** Middle of the tolerance; the reference or the middle reading if left out. */
  readonly middlePa?: number;
};

/** Places in per cent of the width (`…X`) and pixels (`…Y`); type keeps its size on every screen. */
export type StripRow = {
  readonly number: number;
  readonly y: number;
  readonly x: number;
  readonly whiskerX1: number;
  readonly whiskerX2: number;
  readonly beforeX: number | null;
  readonly afterX: number | null;
  readonly label: string;
};

export type Strip = {
  readonly height: number;
  readonly axisY: number;
  readonly axisX1: number;
  readonly axisX2: number;
  readonly bandX: number;
  readonly bandWidth: number;
  readonly bandMiddleX: number;
  readonly rows: readonly StripRow[];
  readonly ticks: readonly { readonly x: number; readonly label: string }[];
};

const left = 8;
const right = 72;
const rowHeight = 28;
const firstRow = 36;
/** Free space on either side of what is shown, as a share of its width. */
const padding = 0.06;

/** One shared scale, the tolerance band on what the set is matched to, one row a carburettor. */
export const stripOf = (input: StripInput): Strip => {
  const { marks, tolerancePa } = input;
  const unit = pressureUnit(input.unit);
  const inGauge = (pascals: number): string =>
    formatFixed(inUnit(pascals, unit), input.decimals, { mark: input.mark });
  const middle = input.middlePa ?? bandMiddle(input);
  const shown = marks.flatMap((mark) => [
    mark.depressionPa - mark.halfWidthPa,
    mark.depressionPa + mark.halfWidthPa,
    ...(mark.beforePa === undefined ? [] : [mark.beforePa]),
    ...(mark.afterPa === undefined ? [] : [mark.afterPa]),
  ]);
  const low = Math.min(middle - tolerancePa, ...shown);
  const high = Math.max(middle + tolerancePa, ...shown);
  const start = input.scalePa?.[0] ?? low - (high - low) * padding;
  const width = (input.scalePa?.[1] ?? high + (high - low) * padding) - start;
  const place = (pascals: number): number => round(left + ((pascals - start) / width) * (right - left));
  const axisY = firstRow + marks.length * rowHeight - rowHeight / 2 + 2;

  return {
    height: axisY + 30,
    axisY,
    axisX1: left,
    axisX2: right,
    bandX: place(middle - tolerancePa / 2),
    bandWidth: round(place(middle + tolerancePa / 2) - place(middle - tolerancePa / 2)),
    bandMiddleX: place(middle),
    rows: marks.map((mark, row) => ({
      number: mark.number,
      y: firstRow + row * rowHeight,
      x: place(mark.depressionPa),
      whiskerX1: place(mark.depressionPa - mark.halfWidthPa),
      whiskerX2: place(mark.depressionPa + mark.halfWidthPa),
      beforeX: mark.beforePa === undefined ? null : place(mark.beforePa),
      afterX: mark.afterPa === undefined ? null : place(mark.afterPa),
      label:
        mark.halfWidthPa === 0
          ? inGauge(mark.depressionPa)
          : `${inGauge(mark.depressionPa)} ± ${inGauge(mark.halfWidthPa)}`,
    })),
    ticks: ticksIn(inUnit(start, unit), inUnit(start + width, unit), 4).map((value) => ({
      x: place(value * unit.pascals),
      label: formatFixed(value, tickDecimals(inUnit(width, unit)), { mark: input.mark }),
    })),
  };
};

const bandMiddle = ({ marks, reference }: StripInput): number => {
  const referenceMark = marks.find(({ number }) => number === reference);
  if (referenceMark) return referenceMark.depressionPa;
  const sorted = marks.map(({ depressionPa }) => depressionPa).sort((a, b) => a - b);
  const half = (sorted.length - 1) / 2;
  return ((sorted[Math.floor(half)] ?? 0) + (sorted[Math.ceil(half)] ?? 0)) / 2;
};

/** Decimals that tell a quarter of the width apart. */
const tickDecimals = (width: number): number => Math.max(0, Math.ceil(-Math.log10(width / 4)));

const round = (value: number): number => Math.round(value * 100) / 100;
