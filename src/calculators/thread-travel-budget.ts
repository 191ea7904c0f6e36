import { checkThreadTravel } from './check-thread-travel.ts';
import { hasFreeCommonMove } from './linkage.ts';
import type { TurnsLeft } from './protocol.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';
import type {
  AdjusterBudget,
  AdjusterThread,
  CommonMove,
  RunningOut,
  ThreadTravel,
  ThreadTravelBudget,
} from './thread-travel.ts';

/** Millimetres over a lead round by 1e-15 turns or so; a plan that just fits must not fail for it. */
const roundingTurns = 1e-9;

/**
 * How far every adjuster can still go, whether the planned turns fit, who runs out first, and, for sets
 * whose adjusters may all move together, the common move that leaves the most thread.
 *
 * Travel per turn is the lead, pitch × starts. Turns left are the thread that shows over the lead; on the
 * side on which the screw comes out of its thread, also the engagement above the minimum.
 * Problems: those of `checkThreadTravel`.
 */
export function threadTravelBudget(given: ThreadTravel): Result<ThreadTravelBudget> {
  const problem = checkThreadTravel(given);
  if (problem !== undefined) return fail(problem);
  const leadMm = given.pitchMm * (given.starts ?? 1);
  const spareEngagementMm =
    (given.engagementMm ?? 0) - (given.minimumEngagementMm ?? given.engagementMm ?? 0);
  const adjusters = given.adjusters.map((adjuster, position): AdjusterBudget => {
    const turnsLeft = turnsLeftOf(adjuster, leadMm, spareEngagementMm, given.unscrewsWhen);
    const plannedTurns = adjuster.plannedTurns ?? 0;
    return budgetOf(position + 1, turnsLeft, plannedTurns, leadMm);
  });
  const runsOutFirst = leastLeft(adjusters);
  return succeed({
    travelPerTurnMm: leadMm,
    engagementShort: spareEngagementMm < 0,
    adjusters,
    runsOutFirst,
    fits: runsOutFirst.turnsLeft >= -roundingTurns,
    commonMove: hasFreeCommonMove(given.generation) ? commonMoveOf(given, adjusters, leadMm) : null,
  });
}

/** Turns each way; the engagement that may be given up, or is owed, counts where the screw comes out. */
function turnsLeftOf(
  { showing }: AdjusterThread,
  leadMm: number,
  spareEngagementMm: number,
  unscrewsWhen: ThreadTravel['unscrewsWhen'],
): TurnsLeft {
  const left = (showingMm: number, comesOut: boolean): number =>
    Math.max(0, showingMm + (comesOut ? spareEngagementMm : 0)) / leadMm;
  return {
    closing: left(showing.closingMm, unscrewsWhen === 'closing'),
    opening: left(showing.openingMm, unscrewsWhen === 'opening'),
  };
}

const budgetOf = (adjuster: number, turnsLeft: TurnsLeft, turns: number, leadMm: number): AdjusterBudget => ({
  adjuster,
  turnsLeft,
  turns,
  travelMm: turns * leadMm,
  afterwards: { closing: turnsLeft.closing + turns, opening: turnsLeft.opening - turns },
});

/** The side with the least left; among equals the lowest number, and closing before opening. */
function leastLeft(adjusters: readonly AdjusterBudget[]): RunningOut {
  const sides = adjusters.flatMap(({ adjuster, afterwards }): RunningOut[] => [
    { adjuster, side: 'closing', turnsLeft: afterwards.closing },
    { adjuster, side: 'opening', turnsLeft: afterwards.opening },
  ]);
  return sides.reduce((least, side) => (side.turnsLeft < least.turnsLeft ? side : least));
}

/**
 * The turns t added to all adjusters that leave the most on the side with the least. After t the least
 * left is min(o − t, c + t), with o and c the least left to open and to close; one falls and the other
 * rises with t, so the best is where they meet: t = (o − c)/2, leaving (o + c)/2.
 * Opening all of them raises the idle speed; the idle-speed screw closes by as much to undo it.
 */
function commonMoveOf(given: ThreadTravel, adjusters: readonly AdjusterBudget[], leadMm: number): CommonMove {
  const opening = Math.min(...adjusters.map(({ afterwards }) => afterwards.opening));
  const closing = Math.min(...adjusters.map(({ afterwards }) => afterwards.closing));
  const turns = (opening - closing) / 2;
  const moved = adjusters.map((own) => budgetOf(own.adjuster, own.turnsLeft, own.turns + turns, leadMm));
  const { idleScrew } = given;
  const idleLeadMm = idleScrew?.pitchMm ?? leadMm;
  const idleScrewTurns = -turns * (idleScrew?.turnsPerAdjusterTurn ?? leadMm / idleLeadMm);
  return {
    turns,
    adjusters: moved,
    leastLeftTurns: (opening + closing) / 2,
    fits: opening + closing >= -roundingTurns,
    idleScrewTurns: idleScrewTurns === 0 ? 0 : idleScrewTurns,
    idleScrewAfterwards:
      idleScrew === undefined
        ? null
        : {
            closing: idleScrew.showing.closingMm / idleLeadMm + idleScrewTurns,
            opening: idleScrew.showing.openingMm / idleLeadMm - idleScrewTurns,
          },
  };
}

/**
 * Worked example, invented: four adjusters M5 × 0.8 on a ganged set, all with a fair plan, one of them
 * near the end of its thread.
 */
export const threadTravelBudgetExample: ThreadTravel = {
  generation: 'all-adjustable',
  pitchMm: 0.8,
  engagementMm: 6,
  minimumEngagementMm: 5,
  unscrewsWhen: 'opening',
  adjusters: [
    { showing: { closingMm: 2.4, openingMm: 0.6 }, plannedTurns: 0.5 },
    { showing: { closingMm: 1.6, openingMm: 1.4 }, plannedTurns: 0 },
    { showing: { closingMm: 2, openingMm: 1 }, plannedTurns: -0.25 },
    { showing: { closingMm: 2.8, openingMm: 0.2 }, plannedTurns: 0.75 },
  ],
  idleScrew: { pitchMm: 0.8, showing: { closingMm: 4, openingMm: 4 } },
};
