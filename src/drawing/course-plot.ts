import { formatFixed } from '../calculators/index.ts';
import { ticksIn } from './ticks.ts';

/** One move: where every carburettor stands at its end, and what was really read in it, in the unit of the scale. */
export type PlottedMove = {
  readonly levels: readonly number[];
  readonly readings: readonly { readonly carburettor: number; readonly level: number }[];
};

/** Places in per cent of the width (`…X`) and pixels (`…Y`); type keeps its size on every screen. */
export type CoursePlot = {
  readonly height: number;
  readonly axisX1: number;
  readonly axisX2: number;
  readonly axisY: number;
  readonly lines: readonly {
    readonly number: number;
    readonly labelY: number;
    readonly parts: readonly {
      readonly x1: number;
      readonly x2: number;
      readonly y1: number;
      readonly y2: number;
    }[];
  }[];
  readonly marks: readonly { readonly carburettor: number; readonly x: number; readonly y: number }[];
  readonly ticksX: readonly { readonly x: number; readonly label: string }[];
  readonly ticksY: readonly { readonly y: number; readonly label: string }[];
};

const axisX1 = 12;
const axisX2 = 99;
/** Room for the number of the carburettor before its first mark, and for half a mark after the last. */
const firstX = 21;
const lastX = 96;
const topY = 24;
const plotHeight = 234;
/** Free space above and beneath the readings, as a share of their range. */
const margin = 0.08;

/** Levels of every carburettor, move by move: lines through what is known, marks at what was read. */
export function coursePlotOf(moves: readonly PlottedMove[]): CoursePlot {
  const all = moves.flatMap(({ levels, readings }) => [...levels, ...readings.map(({ level }) => level)]);
  const range = Math.max(...all) - Math.min(...all) || 1;
  const low = Math.min(...all) - margin * range;
  const high = Math.max(...all) + margin * range;
  const placeX = (move: number): number =>
    round(firstX + ((lastX - firstX) * move) / Math.max(1, moves.length - 1));
  const placeY = (level: number): number => round(topY + (plotHeight * (high - level)) / (high - low));
  const axisY = topY + plotHeight;
  return {
    height: axisY + 44,
    axisX1,
    axisX2,
    axisY,
    lines: (moves[0]?.levels ?? []).map((first, index) => ({
      number: index + 1,
      labelY: placeY(first) + 5,
      parts: moves.slice(1).map(({ levels }, move) => ({
        x1: placeX(move),
        x2: placeX(move + 1),
        y1: placeY(moves[move]!.levels[index]!),
        y2: placeY(levels[index]!),
      })),
    })),
    marks: moves.flatMap(({ readings }, move) =>
      readings.map(({ carburettor, level }) => ({ carburettor, x: placeX(move), y: placeY(level) })),
    ),
    ticksX: moves.map((_, move) => ({ x: placeX(move), label: String(move) })),
    ticksY: ticksIn(low, high, 5).map((level) => ({ y: placeY(level), label: formatFixed(level, 0) })),
  };
}

const round = (value: number): number => Math.round(value * 100) / 100;
