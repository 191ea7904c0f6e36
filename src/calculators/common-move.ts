import { adjusterBudget, leadMmOf } from './adjuster-budget.ts';
import type { AdjusterBudget, CommonMove, ThreadTravel } from './thread-travel.ts';

/** Millimetres over a lead round by 1e-15 turns or so; a plan that just fits must not fail for it. */
export const roundingTurns = 1e-9;

/**
 * The turns t added to all adjusters that leave the most on the side with the least. After t the least
 * left is min(o − t, c + t), with o and c the least left to open and to close; one falls and the other
 * rises with t, so the best is where they meet: t = (o − c)/2, leaving (o + c)/2.
 * Opening all of them raises the idle speed; the idle-speed screw closes by as much to undo it, and the end of its own
 * thread bounds t: what it cannot undo is no use. The least left falls steadily on either side of the best, so where the
 * best is out of reach the bound is.
 *
 * @param adjusters the budgets of the planned turns alone
 */
export function commonMoveOf(given: ThreadTravel, adjusters: readonly AdjusterBudget[]): CommonMove {
  const opening = Math.min(...adjusters.map(({ afterwards }) => afterwards.opening));
  const closing = Math.min(...adjusters.map(({ afterwards }) => afterwards.closing));
  const unlimitedTurns = (opening - closing) / 2;
  const { idleScrew } = given;
  const leadMm = leadMmOf(given);
  const idleLeadMm = idleScrew?.pitchMm ?? leadMm;
  const ratio = idleScrew?.turnsPerAdjusterTurn ?? leadMm / idleLeadMm;
  const { closingMm, openingMm } = idleScrew?.showing ?? { closingMm: Infinity, openingMm: Infinity };
  const idle = { closing: closingMm / idleLeadMm, opening: openingMm / idleLeadMm };
  const turns = Math.min(Math.max(unlimitedTurns, -idle.opening / ratio), idle.closing / ratio);
  const idleScrewTurns = turns === 0 ? 0 : -turns * ratio;
  const leastLeftTurns = Math.min(opening - turns, closing + turns);
  return {
    turns,
    unlimitedTurns,
    limitedByIdleScrew: turns !== unlimitedTurns,
    adjusters: given.adjusters.map((adjuster, position) =>
      adjusterBudget(given, adjuster, position, (adjuster.plannedTurns ?? 0) + turns),
    ),
    leastLeftTurns,
    fits: leastLeftTurns >= -roundingTurns,
    idleScrewTurns,
    idleScrewAfterwards:
      idleScrew === undefined
        ? null
        : { closing: idle.closing + idleScrewTurns, opening: idle.opening - idleScrewTurns },
  };
}
