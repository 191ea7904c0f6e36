import { adjusterBudget, leadMmOf, leastLeft, leastNutRoom, spareEngagementMm } from './adjuster-budget.ts';
import { checkThreadTravel } from './check-thread-travel.ts';
import { commonMoveOf, roundingTurns } from './common-move.ts';
import { hasFreeCommonMove } from './linkage.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';
import type { ThreadTravel, ThreadTravelBudget } from './thread-travel.ts';

/** Hours of a clock face: a twelfth of a turn is easily seen on one. */
const clockHours = 12;

/**
 * How far every adjuster can still go, whether the planned turns fit, who runs out first, and, for sets
 * whose adjusters may all move together, the common move that leaves the most thread (`commonMoveOf`).
 *
 * Source: geometry of the screw; one turn goes the lead, pitch × starts (ISO 5408:2009, Screw threads: Vocabulary).
 * Problems: those of `checkThreadTravel`.
 */
export function threadTravelBudget(given: ThreadTravel): Result<ThreadTravelBudget> {
  const problem = checkThreadTravel(given);
  return problem === undefined ? succeed(budgetOfChecked(given)) : fail(problem);
}

/** The same for what has been checked. */
export function budgetOfChecked(given: ThreadTravel): ThreadTravelBudget {
  const adjusters = given.adjusters.map((adjuster, position) =>
    adjusterBudget(given, adjuster, position, adjuster.plannedTurns ?? 0),
  );
  const leadMm = leadMmOf(given);
  const runsOutFirst = leastLeft(adjusters);
  const { idleScrew } = given;
  return {
    travelPerTurnMm: leadMm,
    travelPerClockHourMm: leadMm / clockHours,
    engagementShort: spareEngagementMm(given) < 0,
    adjusters,
    runsOutFirst,
    leastNutRoom: leastNutRoom(adjusters),
    fits: runsOutFirst.turnsLeft >= -roundingTurns,
    commonMove: hasFreeCommonMove(given.generation) ? commonMoveOf(given, adjusters) : null,
    idleScrewLeft:
      idleScrew === undefined
        ? null
        : {
            closing: idleScrew.showing.closingMm / idleScrew.pitchMm,
            opening: idleScrew.showing.openingMm / idleScrew.pitchMm,
          },
  };
}
