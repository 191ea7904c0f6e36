import { formatExact, inUnit, pressureUnit } from '../calculators/index.ts';
import type { DecimalMark } from '../calculators/index.ts';
import { ticksIn } from './ticks.ts';

/**
 * The dial of the practice engine: half a circle, marks inwards, figures inside them, a needle from its middle. No
 * coloured zone, no maker's style. Units of the view box; at a width of 342 px they are pixels.
 */
export type PracticeDial = {
  readonly viewBox: string;
  /** The pivot is the origin. */
  readonly hub: number;
  readonly arc: string;
  readonly long: string;
  readonly middle: string;
  readonly short: string;
  readonly labels: readonly { readonly x: number; readonly y: number; readonly text: string }[];
  readonly unit: { readonly x: number; readonly y: number; readonly text: string };
  /** Pointing straight up: to be turned by `needleTransform`. */
  readonly needle: string;
  readonly fullScalePa: number;
};

const radius = 160;
const markLengths = { long: 18, middle: 12, short: 7 } as const;
const labelRadius = 124;
const hub = 9;
/** The needle ends among the short marks. */
const needleRadius = radius - 4;
const needleTail = 16;
/** From the resting place to full scale, degrees; 0 is straight up. */
const sweepDegrees = 180;
/** Past its scale a needle comes to rest against a pin, degrees. */
const pinDegrees = 2;
/** Height of a line of type: figures are set with their middle on their place. */
const halfType = 5;
const wantedLabels = 8;

/** The dial in the unit of the reader. */
export function practiceDial(fullScalePa: number, unitId: string, mark: DecimalMark): PracticeDial {
  const unit = pressureUnit(unitId);
  const full = inUnit(fullScalePa, unit);
  const labelled = ticksIn(0, full, wantedLabels);
  const step = labelled[1] ?? full;
  const marksEvery = (share: number): readonly number[] =>
    Array.from({ length: Math.floor((full / step) * share + 1e-9) + 1 }, (_, k) => (k / share) * step);
  const strokes = (values: readonly number[], length: number): string =>
    values
      .map((value) => {
        const angle = angleOf(value / full);
        return `M${at(radius, angle)}L${at(radius - length, angle)}`;
      })
      .join('');
  const halves = String(step).startsWith('5') ? 5 : 2;
  return {
    viewBox: `${-radius - 11} ${-radius - 5} ${2 * radius + 22} ${radius + 24}`,
    hub,
    arc: `M${at(radius, angleOf(0))}A${radius} ${radius} 0 0 1 ${at(radius, angleOf(1))}`,
    long: strokes(labelled, markLengths.long),
    middle: strokes(marksEvery(halves), markLengths.middle),
    short: strokes(marksEvery(10), markLengths.short),
    labels: labelled.map((value) => {
      const [x, y] = point(labelRadius, angleOf(value / full));
      // At both ends the figures stand on the level of the pivot and have to clear the arc.
      return { x: round(x), y: round(Math.min(y + halfType, -2)), text: formatExact(value, { mark }) };
    }),
    unit: { x: 0, y: -58, text: unit.symbol },
    needle: `M-2.5 ${needleTail}L-1 ${-needleRadius}H1L2.5 ${needleTail}Z`,
    fullScalePa,
  };
}

/** Where the needle stands, as the attribute `transform` of an SVG element. */
export function needleTransform({ fullScalePa }: PracticeDial, depressionPa: number): string {
  const end = sweepDegrees / 2 + pinDegrees;
  return `rotate(${round(Math.min(Math.max(angleOf(depressionPa / fullScalePa), -end), end))})`;
}

const angleOf = (share: number): number => (share - 0.5) * sweepDegrees;

/** A point at so many degrees clockwise from straight up. */
const point = (distance: number, degrees: number): readonly [number, number] => {
  const angle = (degrees * Math.PI) / 180;
  return [distance * Math.sin(angle), -distance * Math.cos(angle)];
};

const at = (distance: number, degrees: number): string => point(distance, degrees).map(round).join(' ');

const round = (value: number): number => Math.round(value * 100) / 100 + 0;
