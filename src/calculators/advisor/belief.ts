import type { SetUp } from '../protocol.ts';
import { carryCovariance, symmetric, zeros, type Matrix } from './matrix.ts';
import { openingScale, type OpeningScale } from './opening-scale.ts';
import { defaults, margins, priors } from './priors.ts';

/**
 * What is known of the set: mean and covariance of the state
 * [depressions in Pa at the target speed, now, locked | ln of the effect of a turn in Pa | ln of each screw's
 * unevenness | change per rpm in Pa | warm-up in Pa per minute].
 * An extended Kalman filter (D. Simon, Optimal State Estimation, 2006, section 13.2).
 */
export type Belief = { readonly mean: readonly number[]; readonly covariance: Matrix };

/** What stays the same during a session, worked out once. */
export type Engine = {
  readonly carburettors: number;
  readonly screws: readonly { readonly moves: readonly number[] }[];
  readonly scale: OpeningScale;
  readonly lockShiftTurns: number;
  readonly readingVariancePa2: number;
  readonly targetRpm: number | undefined;
  /** ln of the effect of a turn before the first reading. */
  readonly firstEffectLog: number;
};

export const engineOf = (setUp: SetUp): Engine => {
  const ambientPa = setUp.ambientPa ?? defaults.ambientPa;
  return {
    carburettors: setUp.carburettors,
    screws: setUp.screws,
    scale: openingScale(ambientPa, Math.min(priors.depressionPa, ambientPa / 2)),
    lockShiftTurns: setUp.lockShiftTurns ?? defaults.lockShiftTurns,
    // Evenly spread between ± flutter, and over one step of the scale: JCGM 100:2008, 4.3.7 and F.2.2.1.
    readingVariancePa2: setUp.gauge.flutterPa ** 2 / 3 + setUp.gauge.resolutionPa ** 2 / 12,
    targetRpm: setUp.targetRpm,
    firstEffectLog: Math.log(setUp.effectPaPerTurn ?? priors.effectPaPerTurn),
  };
};

export const effectAt = (engine: Engine): number => engine.carburettors;
export const unevennessAt = (engine: Engine, screw: number): number => engine.carburettors + 1 + screw;
const speedEffectAt = (engine: Engine): number => engine.carburettors + 1 + engine.screws.length;
const warmUpAt = (engine: Engine): number => speedEffectAt(engine) + 1;

export const startingBelief = (setUp: SetUp): Belief => {
  const n = setUp.carburettors;
  const learned = setUp.effectPaPerTurn;
  const ambientPa = setUp.ambientPa ?? defaults.ambientPa;
  const mean = [
    ...new Array<number>(n).fill(Math.min(priors.depressionPa, ambientPa / 2)),
    Math.log(learned ?? priors.effectPaPerTurn),
    ...setUp.screws.map(() => 0),
    priors.speedEffectPaPerRpm,
    0,
  ];
  const standardDeviations = [
    ...new Array<number>(n).fill(priors.depressionOwnSdPa),
    learned === undefined ? priors.effectLogSd : priors.learnedEffectLogSd,
    ...setUp.screws.map(() => priors.unevennessLogSd),
    priors.speedEffectSdPaPerRpm,
    priors.warmUpSdPaPerMinute,
  ];
  const covariance = zeros(mean.length, mean.length);
  standardDeviations.forEach((sd, i) => (covariance[i]![i] = sd ** 2));
  addToDepressions(covariance, n, () => priors.depressionCommonSdPa ** 2);
  return { mean, covariance };
};

export const depressionsOf = (engine: Engine, belief: Belief): readonly number[] =>
  belief.mean.slice(0, engine.carburettors);

export const depressionCovarianceOf = (engine: Engine, belief: Belief): Matrix =>
  belief.covariance.slice(0, engine.carburettors).map((row) => row.slice(0, engine.carburettors));

/** Effect of a turn of a screw on the opening scale, in Pa per turn. */
export const effectOf = (engine: Engine, belief: Belief, screw: number): number =>
  Math.exp(belief.mean[effectAt(engine)]! + belief.mean[unevennessAt(engine, screw)]!);

export const afterMinutes = (engine: Engine, belief: Belief, minutes: number): Belief => {
  if (minutes === 0) return belief;
  const transition = identity(belief.mean.length);
  const mean = [...belief.mean];
  for (let i = 0; i < engine.carburettors; i++) {
    transition[i]![warmUpAt(engine)] = minutes;
    mean[i]! += mean[warmUpAt(engine)]! * minutes;
  }
  return { mean, covariance: carryCovariance(transition, belief.covariance) };
};

/**
 * A turn of a screw, locked, with the speed brought back: every opening moves by its share of the turn and by the one
 * amount that the throttle hand takes back, so that the sum of the depressions stays.
 */
export const afterTurn = (engine: Engine, belief: Belief, screw: number, turns: number): Belief => {
  const { carburettors: n, scale } = engine;
  const effect = effectOf(engine, belief, screw);
  const moves = engine.screws[screw]!.moves;
  const before = depressionsOf(engine, belief);
  const openings = before.map((depressionPa, i) => scale.opening(depressionPa) + moves[i]! * effect * turns);
  const after = levelled(scale, openings, before);

  const slopeBefore = before.map(scale.slope);
  const slopeAfter = after.map((depressionPa) => 1 / scale.slope(depressionPa));
  const slopeSum = slopeAfter.reduce((sum, slope) => sum + slope, 0);
  /** How every depression answers to a change of every opening, the throttle hand included. */
  const answer = (openingChanges: readonly number[], sumChange: number): number[] => {
    let shared = sumChange;
    openingChanges.forEach((change, i) => (shared -= slopeAfter[i]! * change));
    return slopeAfter.map((slope, i) => slope * (openingChanges[i]! + shared / slopeSum));
  };

  const transition = identity(belief.mean.length);
  const setColumn = (column: number, values: readonly number[]): void =>
    values.forEach((value, i) => (transition[i]![column] = value));
  for (let k = 0; k < n; k++) {
    const alone = before.map((_, i) => (i === k ? slopeBefore[k]! : 0));
    setColumn(k, answer(alone, 1));
  }
  const perTurn = answer(
    moves.map((share) => share * effect),
    0,
  );
  const perLog = perTurn.map((change) => change * turns);
  setColumn(effectAt(engine), perLog);
  setColumn(unevennessAt(engine, screw), perLog);

  const covariance = carryCovariance(transition, belief.covariance);
  addToDepressions(covariance, n, (i, j) => {
    const locking = perTurn[i]! * perTurn[j]! * engine.lockShiftTurns ** 2;
    const model = i === j ? (margins.modelError * (after[i]! - before[i]!)) ** 2 : 0;
    return locking + margins.driftSdPa ** 2 + model;
  });
  return { mean: [...after, ...belief.mean.slice(n)], covariance };
};

/** What a reading is expected to say, how it hangs on the state, and the variance of their difference. */
export type Expectation = {
  readonly depressionPa: number;
  /** The reading's part of any row of the state. */
  readonly observe: (row: readonly number[]) => number;
  /** Covariance of the state with the expected reading. */
  readonly column: readonly number[];
  readonly gain: readonly number[];
  readonly readingVariancePa2: number;
  readonly variancePa2: number;
};

export const expectReading = (
  engine: Engine,
  belief: Belief,
  carburettor: number,
  rpm?: number,
): Expectation => {
  const speedErrorRpm = rpm === undefined || engine.targetRpm === undefined ? 0 : rpm - engine.targetRpm;
  const speed = speedEffectAt(engine);
  const observe = (row: readonly number[]): number => row[carburettor]! + speedErrorRpm * row[speed]!;
  const column = belief.covariance.map(observe);
  const { readingVariancePa2 } = engine;
  const variancePa2 = observe(column) + readingVariancePa2;
  return {
    depressionPa: observe(belief.mean),
    observe,
    column,
    gain: column.map((entry) => entry / variancePa2),
    readingVariancePa2,
    variancePa2,
  };
};

/**
 * The belief after a reading. The covariance is Joseph's form, (I − KH) P (I − KH)ᵀ + K R Kᵀ (Simon, 2006, section
 * 5.1): rounding cannot make a variance negative where a fine gauge meets a depression that was hardly known.
 */
export const afterReading = (
  engine: Engine,
  belief: Belief,
  expected: Expectation,
  depressionPa: number,
): Belief => {
  const { gain, column, observe, readingVariancePa2 } = expected;
  const innovation = depressionPa - expected.depressionPa;
  const unseen = belief.covariance.map((row, i) => row.map((value, j) => value - gain[i]! * column[j]!));
  const rest = unseen.map(observe);
  return {
    mean: belief.mean.map((value, i) => withinReach(engine, i, value + gain[i]! * innovation)),
    covariance: symmetric(
      unseen.map((row, i) =>
        row.map((value, j) => value + (readingVariancePa2 * gain[i]! - rest[i]!) * gain[j]!),
      ),
    ),
  };
};

/** Readings of no engine at all must not drive a logarithm to where its exponential overflows. */
const withinReach = (engine: Engine, i: number, value: number): number => {
  const centre = i === effectAt(engine) ? engine.firstEffectLog : 0;
  const isLog = i >= effectAt(engine) && i < speedEffectAt(engine);
  const reach = i === effectAt(engine) ? priors.effectLogReach : priors.unevennessLogReach;
  return isLog ? Math.min(Math.max(value, centre - reach), centre + reach) : value;
};

/** Something did change that no event tells of: every depression is less sure. */
export const afterUnknownChange = (engine: Engine, belief: Belief): Belief => {
  const covariance = belief.covariance.map((row) => [...row]);
  for (let i = 0; i < engine.carburettors; i++) covariance[i]![i]! += margins.somethingChangedSdPa ** 2;
  return { mean: belief.mean, covariance };
};

/** The depressions of openings after one common amount has brought back the sum of the depressions. */
const levelled = (
  scale: OpeningScale,
  openings: readonly number[],
  before: readonly number[],
): readonly number[] => {
  const wanted = before.reduce((sum, depressionPa) => sum + depressionPa, 0);
  let common = 0;
  let [below, above] = [-Infinity, Infinity];
  let depressions = openings.map((opening) => scale.depression(opening));
  for (let step = 0; step < 100; step++) {
    const error = depressions.reduce((sum, depressionPa) => sum + depressionPa, 0) - wanted;
    if (Math.abs(error) < 1e-9) break;
    if (error > 0) below = common;
    else above = common;
    const slope = depressions.reduce((sum, depressionPa) => sum + 1 / scale.slope(depressionPa), 0);
    let next = common - error / slope;
    if (!(next > below && next < above) && above - below < Infinity) next = (below + above) / 2;
    if (next === common) break;
    common = next;
    depressions = openings.map((opening) => scale.depression(opening + common));
  }
  return depressions;
};

const identity = (size: number): number[][] => {
  const matrix = zeros(size, size);
  for (let i = 0; i < size; i++) matrix[i]![i] = 1;
  return matrix;
};

const addToDepressions = (
  covariance: number[][],
  n: number,
  amount: (i: number, j: number) => number,
): void => {
  for (let i = 0; i < n; i++) for (let j = 0; j < n; j++) covariance[i]![j]! += amount(i, j);
};
