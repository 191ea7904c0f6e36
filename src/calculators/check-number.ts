import type { Limit, Problem } from './problem.ts';

/** What is wrong with a number that must be finite and within its limit, or undefined. */
export function checkNumber(field: string, value: number, limit: Limit = {}): Problem | undefined {
  if (!Number.isFinite(value)) return { kind: 'not-finite', field };
  const { min = -Infinity, max = Infinity, above = -Infinity, below = Infinity } = limit;
  const inside = value >= min && value <= max && value > above && value < below;
  return inside ? undefined : { kind: 'out-of-range', field, value, limit };
}

/** The same for a number that may be left out. */
export const checkOptionalNumber = (
  field: string,
  value: number | undefined,
  limit: Limit = {},
): Problem | undefined => (value === undefined ? undefined : checkNumber(field, value, limit));

/** What is wrong with an index counted from 1, or undefined. */
export const checkIndex = (field: string, value: number, count: number): Problem | undefined =>
  Number.isInteger(value) && value >= 1 && value <= count
    ? undefined
    : { kind: 'index', field, value, limit: { min: 1, max: count } };
