import { checkNumber } from './check-number.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

/** How the readings answer to one turn once the speed is back, as shares of the effect of the turn; both 0 to 1. */
export type SeeSaw = {
  /** Share by which those that the screw moves fall when it opens. */
  readonly moved: number;
  /** Share by which all the others rise. */
  readonly others: number;
};

/**
 * The see-saw: bringing the speed back keeps the sum of the depressions, so what a screw takes from `moved` of
 * `carburettors` is handed out again to all of them: those moved keep 1 − m/n of the effect, the others m/n of it.
 * The gap between the two changes by the whole effect. Linear, so for small turns; the advice computes with the curve
 * (`expectedAfterTurn`). Own derivation from the rule of the advisor that the sum of the depressions stays.
 * Problems: `out-of-range`, `not-finite`, for fewer than 2 carburettors, or for none or all of them moved.
 */
export function seeSaw(carburettors: number, moved = 1): Result<SeeSaw> {
  const problem =
    checkNumber('carburettors', carburettors, { min: 2 }) ??
    checkNumber('moved', moved, { min: 1, max: carburettors - 1 });
  if (problem !== undefined) return fail(problem);
  const share = moved / carburettors;
  return succeed({ moved: 1 - share, others: share });
}

/** By how much so many turns change a reading against the others, in pascals: also what a slip of the nut does. */
export const gapOfTurns = (turns: number, effectPaPerTurn: number): number => effectPaPerTurn * turns;

/** Turns that close a gap, or that a change of the reading tells of; the other way round. */
export const turnsOfGap = (gapPa: number, effectPaPerTurn: number): number => gapPa / effectPaPerTurn;
