import { formatExact } from '../calculators/index.ts';
import { ticksIn } from './ticks.ts';

/** One of the three ways to count a pressure, as a rule along the same scale. */
export type PressureRule = {
  readonly name: string;
  readonly y: number;
  readonly x1: number;
  readonly x2: number;
  readonly ticks: readonly { readonly x: number; readonly label: string }[];
};

/** Places in per cent of the width (`…X`) and pixels (`…Y`); type keeps its size on every screen. */
export type PressureScale = {
  readonly height: number;
  readonly topY: number;
  readonly bottomY: number;
  readonly ambientX: number;
  readonly intakeX: number;
  readonly rules: readonly PressureRule[];
};

const left = 3;
const right = 97;
const firstRule = 56;
const ruleHeight = 62;
/** Free space beyond the ambient pressure, as a share of it. */
const beyond = 0.04;

/** Absolute pressure, gauge pressure and depression, one beneath the other, all from empty space to the air outside. */
export function pressureScaleOf(ambient: number, intake: number): PressureScale {
  const place = (absolute: number): number =>
    Math.round((left + (absolute / (ambient * (1 + beyond))) * (right - left)) * 100) / 100;
  const rule = (row: number, name: string, low: number, absoluteOf: (shown: number) => number) => ({
    name,
    y: firstRule + row * ruleHeight,
    x1: place(0),
    x2: place(ambient),
    ticks: ticksIn(low, low + ambient, 8).map((shown) => ({
      x: place(absoluteOf(shown)),
      label: formatExact(shown),
    })),
  });
  return {
    height: firstRule + 2 * ruleHeight + 34,
    topY: firstRule - 34,
    bottomY: firstRule + 2 * ruleHeight,
    ambientX: place(ambient),
    intakeX: place(intake),
    rules: [
      rule(0, 'absolute pressure', 0, (shown) => shown),
      rule(1, 'gauge pressure', -ambient, (shown) => ambient + shown),
      rule(2, 'depression', 0, (shown) => ambient - shown),
    ],
  };
}
