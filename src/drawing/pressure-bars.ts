import { formatExact, inUnit, pascalsOf, pressureUnit } from '../calculators/index.ts';
import { ticksIn } from './ticks.ts';

/** One pressure as a length from where it is counted. */
export type PressureBar = {
  readonly name: string;
  readonly y: number;
  readonly fromX: number;
  readonly toX: number;
};

/** Places in per cent of the width (`…X`) and pixels (`…Y`); type keeps its size on every screen. */
export type PressureBars = {
  readonly height: number;
  readonly axisY: number;
  readonly axisX: readonly [left: number, right: number];
  readonly ambientX: number;
  readonly intakeX: number;
  readonly bars: readonly PressureBar[];
  readonly ticks: readonly { readonly x: number; readonly label: string }[];
};

const left = 3;
const right = 97;
const highestHPa = 1100;
const firstBar = 62;
const barHeight = 44;

/** Absolute pressure counted from nothing, depression counted back from the air outside, on one scale that keeps still. */
export function pressureBarsOf(ambientPa: number, absolutePa: number): PressureBars {
  const hPa = pressureUnit('hPa');
  const place = (pascals: number): number =>
    Math.round((left + (inUnit(pascals, hPa) / highestHPa) * (right - left)) * 100) / 100;
  const axisY = firstBar + 2 * barHeight;
  return {
    height: axisY + 42,
    axisY,
    axisX: [left, right],
    ambientX: place(ambientPa),
    intakeX: place(absolutePa),
    bars: [
      { name: 'absolute pressure', y: firstBar, fromX: place(0), toX: place(absolutePa) },
      {
        name: 'depression',
        y: firstBar + barHeight,
        fromX: place(ambientPa),
        toX: place(Math.min(absolutePa, ambientPa)),
      },
    ],
    ticks: ticksIn(0, highestHPa, 5).map((value) => ({
      x: place(pascalsOf(value, hPa)),
      label: formatExact(value),
    })),
  };
}
