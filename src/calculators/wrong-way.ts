import { accountOf } from './advisor/account.ts';
import { afterTurn, depressionsOf, engineOf } from './advisor/belief.ts';
import type { SessionEvent, SetUp } from './protocol.ts';

/** A reading that moved against the turn before it. */
export type WrongWay = {
  /** Index of the turn among the events. */
  readonly turnEvent: number;
  readonly screw: number;
  readonly carburettor: number;
  readonly expectedChangePa: number;
  readonly seenChangePa: number;
};

/** What the last reading says of the turn before it: as expected, against it, or too little to tell. */
export type Answer =
  | { readonly kind: 'as-expected' | 'too-small' | 'none' }
  | { readonly kind: 'wrong-way'; readonly wrongWay: WrongWay };

/** From this many standard deviations a change is called real. */
export const realFrom = 3;

/**
 * Compares the last reading, if it is the first of its carburettor since one turn, with where that carburettor stood before
 * the turn. Expects a session without problems.
 */
export const answerToTurn = (setUp: SetUp, events: readonly SessionEvent[]): Answer => {
  const last = events.at(-1);
  const turnEvent = events.findLastIndex((event) => event.kind === 'turn');
  const turn = events[turnEvent];
  if (last?.kind !== 'reading' || turn?.kind !== 'turn') return { kind: 'none' };
  const between = events.slice(turnEvent + 1, -1);
  if (between.some((event) => event.kind === 'reading' && event.carburettor === last.carburettor))
    return { kind: 'none' };

  const before = accountOf(setUp, events.slice(0, turnEvent));
  const i = last.carburettor - 1;
  if (!before.everRead[i]) return { kind: 'none' };
  const stood = depressionsOf(before.engine, before.belief)[i]!;
  const expected = depressionsOf(
    before.engine,
    afterTurn(before.engine, before.belief, turn.screw - 1, turn.turns),
  )[i]!;
  const expectedChangePa = expected - stood;
  const seenChangePa = last.depressionPa - stood;
  const variance = before.widening * before.belief.covariance[i]![i]! + engineOf(setUp).readingVariancePa2;
  if (Math.abs(seenChangePa) <= realFrom * Math.sqrt(variance)) return { kind: 'too-small' };
  if (expectedChangePa * seenChangePa >= 0) return { kind: 'as-expected' };
  return {
    kind: 'wrong-way',
    wrongWay: { turnEvent, screw: turn.screw, carburettor: last.carburettor, expectedChangePa, seenChangePa },
  };
};
