import type { Drift, OrderedReading, SpeedCorrection } from './correct-readings.ts';
import type { Generation } from './linkage.ts';
import type { MatchedTo } from './matched-to.ts';
import type { MoreReadings } from './more-readings.ts';
import type { Gauge } from './protocol.ts';

export type BalanceReadings = {
  readonly generation: Generation;
  /** 2–8, counted from 1. */
  readonly carburettors: number;
  /** The carburettor without an adjuster, or the body whose screw is left alone. */
  readonly fixed?: number;
  /** What each of the paired screws moves, where it is not the usual. */
  readonly groups?: readonly (readonly number[])[];
  /** In the order in which they were taken; every carburettor at least once. */
  readonly readings: readonly OrderedReading[];
  readonly gauge: Gauge;
  /** Highest less lowest depression that counts as balanced. */
  readonly tolerancePa: number;
  /** Default 0.95. */
  readonly confidence?: number;
  /** Default 101,325 Pa. */
  readonly ambientPa?: number;
  readonly speed?: SpeedCorrection;
  /** Standard uncertainty of each gauge's correction, where every carburettor has a gauge of its own. */
  readonly offsetUncertaintyPa?: number;
  /** The carburettor whose repeated readings bracket the others and show the drift. */
  readonly driftReference?: number;
};

/** A difference of means with its uncertainty at the confidence asked for. */
export type Difference = {
  readonly differencePa: number;
  readonly expandedUncertaintyPa: number;
  /** Whether the difference is larger than its expanded uncertainty. */
  readonly real: boolean;
};

export type CarburettorBalance = {
  readonly carburettor: number;
  readonly readings: number;
  readonly meanPa: number;
  readonly standardUncertaintyPa: number;
  /** Null where nothing limits them. */
  readonly degreesOfFreedom: number | null;
  readonly expandedUncertaintyPa: number;
  /** From what this generation is matched to; positive reads higher, so the throttle is less open. */
  readonly deviation: Difference;
  /** Times as open as what it is matched to; null where a depression is 0 or no orifice fits. */
  readonly areaRatio: number | null;
};

export type ScrewBalance = Difference & {
  readonly screw: number;
  readonly moves: readonly number[];
  /** A lower depression than the reference means further open: close it. */
  readonly direction: 'open' | 'close' | 'none';
};

export type BalanceAnalysis = {
  readonly carburettors: readonly CarburettorBalance[];
  readonly screws: readonly ScrewBalance[];
  readonly matchedTo: MatchedTo;
  readonly referencePa: number;
  readonly meanPa: number;
  readonly highest: number;
  readonly lowest: number;
  /** Highest mean less lowest, and the uncertainty of that difference of two. */
  readonly spreadPa: number;
  readonly spread: Difference;
  readonly tolerancePa: number;
  readonly confidence: number;
  /** Probability that the true highest less lowest is within the tolerance. */
  readonly chanceWithin: number;
  readonly verdict: 'within' | 'cannot-tell' | 'outside';
  readonly drift: Drift | null;
  /** What would settle it; null unless the verdict is `cannot-tell`. */
  readonly more: MoreReadings | null;
};
