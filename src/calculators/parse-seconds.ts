import { parseQuantity } from './parse-quantity.ts';
import type { ParsedNumber } from './parse-number.ts';
import { succeed } from './result.ts';
import type { Result } from './result.ts';

/** Seconds in each unit of a short time, with the ways people write them. */
const secondsIn: ReadonlyMap<string, number> = new Map([
  ...['s', 'sec', 'secs', 'second', 'seconds'].map((spelling) => [spelling, 1] as const),
  ...['ms', 'millisecond', 'milliseconds'].map((spelling) => [spelling, 1e-3] as const),
  ...['min', 'minute', 'minutes'].map((spelling) => [spelling, 60] as const),
]);

const times = {
  find: (spelling: string): number | null =>
    secondsIn.get(spelling.toLowerCase().replace(/\.$/u, '')) ?? null,
  known: ['s', 'ms', 'min'],
};

/** A short time: `0.5`, `1/2 s`, `400 ms`; seconds without a unit. Problems: those of `parseQuantity`. */
export function parseSeconds(
  typed: string,
  field?: string,
): Result<{ readonly seconds: number; readonly number: ParsedNumber }> {
  const parsed = parseQuantity(typed, times, field);
  if (!parsed.ok) return parsed;
  const { number, unit } = parsed.value;
  return succeed({ seconds: number.value * (unit ?? 1), number });
}
