import type { CarbonMonoxideLimit } from './carbon-monoxide-limits.ts';
import type { ExhaustGasAnswer, LimitPassed } from './exhaust-gas-in-a-room.ts';
import { formatDuration } from './format-duration.ts';
import { formatExact } from './format-number.ts';
import type { NumberStyle } from './format-number.ts';
import { formatRunningTime } from './format-running-time.ts';

/** One published limit in words; the times are in minutes and seconds, a dash where it is not passed within a day. */
export type LimitLine = {
  readonly id: string;
  readonly who: string;
  readonly meaning: string;
  readonly value: string;
  readonly over: string;
  readonly airAfter: string;
  readonly averageAfter: string;
  readonly fromMemory: boolean;
};

export type Level = { readonly name: string; readonly value: number };

const dash = '–';
const afterWords = (minutes: number | null): string => (minutes === null ? dash : formatRunningTime(minutes));

/** `over 8 h`, or `at any moment`. */
export const overWords = ({ averagingMinutes }: CarbonMonoxideLimit): string =>
  averagingMinutes === null ? 'at any moment' : `over ${formatDuration(averagingMinutes)}`;

/** `50 ppm`; `10 mg/m³, 8.6 ppm` where the body sets mass. */
export const valueWords = (
  { value, unit }: CarbonMonoxideLimit,
  inPpm: string,
  style: NumberStyle = {},
): string =>
  unit === 'ppm'
    ? `${formatExact(value, style)}\u00a0ppm`
    : `${formatExact(value, style)}\u00a0mg/m³, ${inPpm}`;

export const limitLine = (
  { limit, ppm, airMinutes, averageMinutes }: LimitPassed,
  write: (ppm: number) => string,
  style: NumberStyle,
): LimitLine => ({
  id: limit.id,
  who: `${limit.body}, ${limit.year}`,
  meaning: limit.meaning,
  value: valueWords(limit, write(ppm), style),
  over: overWords(limit),
  airAfter: afterWords(airMinutes),
  averageAfter: afterWords(averageMinutes),
  fromMemory: limit.seen === 'memory',
});

/** Far enough apart to be told from each other as lines across a plot, from a guideline to a danger to life. */
const plotted = ['niosh-idlh', 'aegl-2-10', 'niosh-ceiling', 'osha-pel', 'who-2010-480'];

/** The limits that are drawn as lines, by name. */
export const limitLevels = (
  limits: readonly LimitPassed[],
  write: (ppm: number) => string,
): readonly Level[] =>
  limits
    .filter(({ limit }) => plotted.includes(limit.id))
    .map(({ limit, ppm }) => ({ name: `${write(ppm)} ${overWords(limit)}, ${limit.body}`, value: ppm }));

/** How long an alarm may stay silent in this room: until the first of its points must have made it sound. */
export function alarmWords({ alarm }: ExhaustGasAnswer, write: (ppm: number) => string): string {
  if (alarm === null) return 'In this sum a household alarm to UL 2034 need not sound at all within a day.';
  const { point, minutes, ppm } = alarm;
  return `In air at ${formatExact(point.ppm)}\u00a0ppm a household alarm to UL 2034 may stay silent for ${formatDuration(point.latestMinutes)}. In this room that is until ${formatDuration(minutes)} after the start, with ${write(ppm)} in the air if the engine ran on. An alarm is a last warning.`;
}
