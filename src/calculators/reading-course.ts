import { nextStep } from './next-step.ts';
import type { SessionEvent, SetUp, TurnEvent } from './protocol.ts';
import { succeed } from './result.ts';
import type { Result } from './result.ts';

/** One move of a session: the turn that began it, what was read until the next, and what was known then. */
export type CourseMove = {
  /** Null before the first turn. */
  readonly turn: TurnEvent | null;
  /** The readings of this move, in the order in which they were taken. */
  readonly readings: readonly { readonly carburettor: number; readonly depressionPa: number }[];
  /** The estimate of every carburettor at the end of the move. */
  readonly depressionPa: readonly number[];
  readonly spreadPa: number;
};

/**
 * A session told move by move, for the drawing of readings against turns: the readings that were taken, and the estimate
 * of those that were not, for every turn moves all of them. Problems: those of `nextStep`.
 */
export function readingCourse(setUp: SetUp, events: readonly SessionEvent[]): Result<readonly CourseMove[]> {
  const starts = [0, ...events.flatMap((event, index) => (event.kind === 'turn' ? [index] : []))];
  const moves: CourseMove[] = [];
  for (const [move, from] of starts.entries()) {
    const end = starts[move + 1] ?? events.length;
    const known = nextStep(setUp, events.slice(0, end));
    if (!known.ok) return known;
    const own = events.slice(from, end);
    const [first] = own;
    const { depressionPa } = known.value.estimate;
    moves.push({
      turn: move > 0 && first?.kind === 'turn' ? first : null,
      readings: own.flatMap((event) => (event.kind === 'reading' ? [event] : [])),
      depressionPa,
      spreadPa: Math.max(...depressionPa) - Math.min(...depressionPa),
    });
  }
  return succeed(moves);
}
