import { checkNumber } from './check-number.ts';
import { parseQuantity } from './parse-quantity.ts';
import type { Limit } from './problem.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

/** Turns in one of each, with the spellings that people type. */
const parts: readonly (readonly [turns: number, spellings: readonly string[]])[] = [
  [1, ['turn', 'turns', 't']],
  [1 / 60, ['min', 'minute', 'minutes', 'min.']],
  [1 / 12, ['h', 'hour', 'hours']],
  [1 / 360, ['°', 'deg', 'degree', 'degrees']],
];

const family = {
  find: (spelling: string): number | null =>
    parts.find(([, spellings]) => spellings.includes(spelling.toLowerCase()))?.[0] ?? null,
  known: ['turns', 'min', 'h', '°'],
};

/**
 * Turns with a sign: `1/2`, `-1/4 turn`, `-90°`, or on a clock face `15 min` or `3 h`. Without a unit: turns.
 * Problems: those of `parseQuantity`; out-of-range.
 */
export function parseTurnAmount(typed: string, field: string, limit: Limit): Result<number> {
  const parsed = parseQuantity(typed, family, field);
  if (!parsed.ok) return parsed;
  const turns = parsed.value.number.value * (parsed.value.unit ?? 1);
  const problem = checkNumber(field, turns, limit);
  return problem === undefined ? succeed(turns) : fail(problem);
}
