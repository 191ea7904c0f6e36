import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

/** The order of a comparison: the first instrument opens and closes it, so that an even drift falls out. */
export type BracketOrder = 'aba' | 'abba';

/** Readings of each order, one letter a reading. */
export const bracketLength = { aba: 3, abba: 4 } as const satisfies Record<BracketOrder, number>;

/** The mean of A and of B in one run through the order; their difference holds no even drift. */
export type Bracket = { readonly a: number; readonly b: number };

/**
 * Runs of A-B-A or A-B-B-A out of readings in the order in which they were taken, at even intervals.
 *
 * A-B-A: B − (A₁ + A₂)/2. A-B-B-A: [(B₁ − A₁) + (B₂ − A₂)]/2. Either takes out a drift that grows evenly from reading
 * to reading. Source: OIML R 111-1:2004, Weights, annex C, weighing cycles ABA and ABBA.
 * Problem: `bracket-length` unless there is at least one run and the last one is whole.
 */
export function bracketsOf(readings: readonly number[], order: BracketOrder): Result<readonly Bracket[]> {
  const length = bracketLength[order];
  if (readings.length === 0 || readings.length % length !== 0)
    return fail({ kind: 'bracket-length', field: 'readings', value: readings.length, order });
  return succeed(
    Array.from({ length: readings.length / length }, (_, run) => {
      const at = (place: number): number => readings[run * length + place]!;
      const a = (at(0) + at(length - 1)) / 2;
      return { a, b: order === 'aba' ? at(1) : (at(1) + at(2)) / 2 };
    }),
  );
}
