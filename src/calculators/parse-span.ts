import { parsePressure } from './parse-pressure.ts';
import type { PressureUnit } from './pressure-unit.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

/** Two marks of a scale: `-1..0 bar`, `0 to 30 inHg`, `−760…0`. */
const range = /(.+?)(?:\.{2,}|…|\bto\b)(.+)/iu;

/**
 * The span of a scale, highest less lowest mark, in pascals: `760 mmHg`, or both marks, `-1..0 bar`. The unit behind the
 * second mark holds for the first as well, unless that has its own. Problems: those of `parsePressure`; `out-of-range`
 * for a span of 0 or less.
 */
export function parseSpan(typed: string, usualUnit: PressureUnit, field: string): Result<number> {
  const marks = range.exec(typed);
  if (marks === null) {
    const parsed = parsePressure(typed, usualUnit, field);
    return parsed.ok ? positive(parsed.value.pascals, field) : parsed;
  }
  const high = parsePressure(marks[2]!, usualUnit, field);
  if (!high.ok) return high;
  const low = parsePressure(marks[1]!, high.value.unit, field);
  return low.ok ? positive(Math.abs(high.value.pascals - low.value.pascals), field) : low;
}

const positive = (spanPa: number, field: string): Result<number> =>
  spanPa > 0
    ? succeed(spanPa)
    : fail({ kind: 'out-of-range', field: `${field}Pa`, value: spanPa, limit: { above: 0 } });
