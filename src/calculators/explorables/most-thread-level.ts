import { describeTurns, describeTurnSize, describeTurnsInWords } from '../format-turns.ts';
import { threadTravelBudget } from '../thread-travel-budget.ts';
import type { ThreadTravel } from '../thread-travel.ts';
import type { TravelMark } from '../thread-travel-budget-words.ts';
import { certain } from './certain.ts';

/** Hours of a clock face by which all adjusters are moved together, either way. */
export const commonHoursLimits = { min: -12, max: 24, step: 1 } as const;
const hoursPerTurn = 12;

/** Invented: thread each way in turns (a pitch of 1 mm makes them the same), and the turns that bring all to the two closest. */
const threadsExample = [
  { closing: 2, opening: 1.5, toClosest: 0.25 },
  { closing: 1.75, opening: 2, toClosest: 0 },
  { closing: 1.5, opening: 1.75, toClosest: 0 },
  { closing: 0.5, opening: 2.75, toClosest: -0.75 },
] as const;
const idleThreadLimits = { closingMm: 2.5, openingMm: 2.5 } as const;

const travelAt = (commonTurns: number): ThreadTravel => ({
  generation: 'all-adjustable',
  pitchMm: 1,
  unscrewsWhen: 'opening',
  adjusters: threadsExample.map(({ closing, opening, toClosest }) => ({
    showing: { closingMm: closing, openingMm: opening },
    plannedTurns: toClosest + commonTurns,
  })),
  idleScrew: { pitchMm: 1, showing: idleThreadLimits },
});

export type ThreadLevelShown = {
  readonly leastLeftTurns: number;
  readonly fits: boolean;
  readonly marks: readonly TravelMark[];
  readonly amount: string;
  readonly said: string;
  readonly plotWords: string;
};

/** What is left of every thread when all adjusters go so many hours of a clock face beyond the level of the two closest. */
export function threadAtLevel(hours: number): ThreadLevelShown {
  const turns = hours / hoursPerTurn;
  const budget = valueOf(turns);
  const { runsOutFirst, fits } = budget;
  const amount = wayOf(turns);
  const way = runsOutFirst.side === 'closing' ? 'close' : 'open';
  const least = describeTurnSize(runsOutFirst.turnsLeft);
  const idle = turns === 0 ? '' : ` The idle-speed screw takes the speed back: ${wayOf(-turns)}.`;
  return {
    leastLeftTurns: runsOutFirst.turnsLeft,
    fits,
    amount,
    said: `${
      fits
        ? `The scarcest thread has ${least} left: adjuster ${runsOutFirst.adjuster}, to ${way}.`
        : `It does not fit: adjuster ${runsOutFirst.adjuster} lacks ${least} to ${way}.`
    }${idle}`,
    marks: budget.adjusters.map(({ adjuster, turnsLeft, turns: planned }, i) => ({
      adjuster,
      closing: turnsLeft.closing,
      opening: turnsLeft.opening,
      planned,
      shifted: threadsExample[i]!.toClosest,
    })),
    plotWords: `Thread left after the move: ${budget.adjusters
      .map(
        ({ adjuster, afterwards }) =>
          `adjuster ${adjuster}, ${describeTurns(afterwards.closing)} to close and ${describeTurns(afterwards.opening)} to open`,
      )
      .join('; ')}, in turns.`,
  };
}

/** The level that leaves the most, in hours of a clock face, and what it and the two closest leave. */
export function mostThreadLevel() {
  const { commonMove } = valueOf(0);
  const hours = Math.round(commonMove!.turns * hoursPerTurn);
  const best = threadAtLevel(hours);
  return {
    hours,
    leastLeftTurns: commonMove!.leastLeftTurns,
    finding: `Brought to the two that read closest, this set runs out of thread; ${best.amount}, every adjuster keeps at least ${describeTurnsInWords(best.leastLeftTurns)} either way.`,
  };
}

const valueOf = (commonTurns: number) => certain(threadTravelBudget(travelAt(commonTurns)));

const wayOf = (turns: number): string =>
  turns === 0 ? 'no turn' : `${describeTurnSize(turns)} ${turns > 0 ? 'further open' : 'further shut'}`;
