/**
 * The session protocol: plain numbers in pascals, turns, minutes and revolutions per minute.
 * The record, the island, the practice engine and every test speak it.
 */

/** Thread left on a screw, in turns each way. */
export type TurnsLeft = { readonly closing: number; readonly opening: number };

/** One screw: how it moves each carburettor (its column of the linkage matrix, one entry per carburettor). */
export type Screw = { readonly moves: readonly number[]; readonly turnsLeft?: TurnsLeft };

export type Gauge = {
  readonly resolutionPa: number;
  /** Half the swing of the damped needle. */
  readonly flutterPa: number;
};

export type SetUp = {
  /** 2–8; carburettors and screws are counted from 1. */
  readonly carburettors: number;
  readonly screws: readonly Screw[];
  /** Highest less lowest depression that counts as balanced. */
  readonly tolerancePa: number;
  readonly confidence?: number;
  readonly gauge: Gauge;
  readonly targetRpm?: number;
  readonly ambientPa?: number;
  readonly lockShiftTurns?: number;
  /** Effect of a turn learned in an earlier session on this engine. */
  readonly effectPaPerTurn?: number;
};

/** A look at the gauge, screws locked. */
export type ReadingEvent = {
  readonly kind: 'reading';
  readonly carburettor: number;
  readonly depressionPa: number;
  readonly rpm?: number;
  readonly minute?: number;
};

/** What was really turned, then locked; positive opens. */
export type TurnEvent = {
  readonly kind: 'turn';
  readonly screw: number;
  readonly turns: number;
  readonly minute?: number;
};

export type SessionEvent = ReadingEvent | TurnEvent;

export type ReadReason = 'first' | 'after-turn' | 'least-certain' | 'doubtful';

export type Step =
  | { readonly kind: 'read'; readonly carburettor: number; readonly reason: ReadReason }
  | {
      readonly kind: 'turn';
      readonly screw: number;
      readonly turns: number;
      /** What every carburettor is expected to show after the turn. */
      readonly expectedDepressionPa: readonly number[];
      /** The carburettor to read next. */
      readonly read: number;
    }
  | { readonly kind: 'done' }
  | { readonly kind: 'stop'; readonly reason: 'thread' | 'visits' };

export type Estimate = {
  readonly depressionPa: readonly number[];
  readonly standardUncertaintyPa: readonly number[];
  readonly spreadPa: number;
  readonly chanceWithin: number;
  readonly effectPaPerTurn: number;
  readonly turnsLeft: readonly (TurnsLeft | null)[];
  readonly visits: number;
};

export type NextStep = { readonly step: Step; readonly estimate: Estimate };
