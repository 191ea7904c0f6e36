import type { Generation } from './linkage.ts';
import type { TurnsLeft } from './protocol.ts';

/** Thread that shows, in millimetres, on the side that is used up by closing and by opening. */
export type ThreadShowing = { readonly closingMm: number; readonly openingMm: number };

export type AdjusterThread = {
  readonly showing: ThreadShowing;
  /** Positive opens; default 0. */
  readonly plannedTurns?: number;
};

export type IdleScrew = {
  readonly pitchMm: number;
  readonly showing: ThreadShowing;
  /**
   * Turns of the idle-speed screw that move all throttles as far as one turn of every adjuster. Default:
   * the ratio of the leads, which is right where both screws act on levers of the same length.
   */
  readonly turnsPerAdjusterTurn?: number;
};

/** A nut on the thread that shows on one side of what holds the adjuster. */
export type LockNut = { readonly heightMm: number; readonly side: 'closing' | 'opening' };

export type ThreadTravel = {
  readonly generation: Generation;
  /** From a table of threads, or measured over several turns. */
  readonly pitchMm: number;
  /** Threads side by side on one screw; default 1. */
  readonly starts?: number;
  /** Length of thread now engaged in what holds the adjuster. Left out: none of it may be given up. */
  readonly engagementMm?: number;
  /** Length of engagement that must remain. Left out: all of it. */
  readonly minimumEngagementMm?: number;
  /** The way on which the adjuster comes out of its thread. */
  readonly unscrewsWhen: 'closing' | 'opening';
  /** Keeps its height of the thread that shows on its side. Left out: none, or what shows was measured beyond it. */
  readonly lockNut?: LockNut;
  readonly adjusters: readonly AdjusterThread[];
  readonly idleScrew?: IdleScrew;
};

export type AdjusterBudget = {
  readonly adjuster: number;
  readonly turnsLeft: TurnsLeft;
  /** The turns planned, positive opens. */
  readonly turns: number;
  readonly travelMm: number;
  /** Turns left after them; negative where they do not fit. */
  readonly afterwards: TurnsLeft;
  /** Thread that then shows beyond the lock nut; negative: so much is missing beneath it. Null without a nut. */
  readonly nutRoomMm: number | null;
};

export type RunningOut = {
  readonly adjuster: number;
  readonly side: 'closing' | 'opening';
  /** Negative: so many turns are missing. */
  readonly turnsLeft: number;
};

/** Thread beyond the lock nut of one adjuster, after the plan; negative: so much is missing beneath it. */
export type NutRoom = { readonly adjuster: number; readonly roomMm: number };

export type CommonMove = {
  /** Added to every adjuster; positive opens. */
  readonly turns: number;
  /** What would leave the most thread if the idle-speed screw had no end; equals `turns` unless it is limited. */
  readonly unlimitedTurns: number;
  readonly limitedByIdleScrew: boolean;
  readonly adjusters: readonly AdjusterBudget[];
  readonly leastLeftTurns: number;
  readonly fits: boolean;
  /** What undoes the change of speed; positive opens. */
  readonly idleScrewTurns: number;
  /** Null where the idle-speed screw's thread is not told. */
  readonly idleScrewAfterwards: TurnsLeft | null;
};

export type ThreadTravelBudget = {
  readonly travelPerTurnMm: number;
  /** Of one hour of a clock face, 1/12 turn. */
  readonly travelPerClockHourMm: number;
  /** The engagement is already below the minimum. */
  readonly engagementShort: boolean;
  readonly adjusters: readonly AdjusterBudget[];
  readonly runsOutFirst: RunningOut;
  /** Where the lock nut has the least room; null without one. */
  readonly leastNutRoom: NutRoom | null;
  readonly fits: boolean;
  /** Turns left on the idle-speed screw; null where its thread is not told. */
  readonly idleScrewLeft: TurnsLeft | null;
  /** Null for sets whose adjusters have no free common move. */
  readonly commonMove: CommonMove | null;
};
