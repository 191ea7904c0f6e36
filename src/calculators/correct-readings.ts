import { mean } from './mean.ts';
import type { Gauge } from './protocol.ts';
import { meanUncertainty, readingVariancePa2 } from './reading-uncertainty.ts';
import type { Uncertainty } from './reading-uncertainty.ts';
import { sampleStandardDeviation } from './sample-standard-deviation.ts';

/** A reading in the order in which it was taken. */
export type OrderedReading = {
  readonly carburettor: number;
  readonly depressionPa: number;
  readonly rpm?: number;
};

export type SpeedCorrection = {
  readonly targetRpm: number;
  /** Change of the depression per revolution per minute; taken as exactly known. */
  readonly sensitivityPaPerRpm: number;
};

/** Drift that the repeat readings of one carburettor show, per reading taken. */
export type Drift = { readonly perReadingPa: number; readonly standardUncertaintyPa: number };

/** Mean of one carburettor's corrected readings. */
export type CarburettorMean = Uncertainty & {
  readonly count: number;
  readonly meanPa: number;
  /** Of one reading about the mean; undefined where nothing could scatter. */
  readonly scatter: Scatter | undefined;
  /** How far the mean moves with one standard uncertainty of the drift: an error that all share. */
  readonly driftLoadingPa: number;
};

type Scatter = { readonly standardDeviationPa: number; readonly degreesOfFreedom: number };

type Corrected = { readonly carburettor: number; readonly order: number; readonly depressionPa: number };

/** Readings referred to the target speed; a reading without a speed is taken as read at it. */
export const atTargetSpeed = (
  readings: readonly OrderedReading[],
  speed: SpeedCorrection | undefined,
): Corrected[] =>
  readings.map(({ carburettor, depressionPa, rpm }, order) => ({
    carburettor,
    order,
    depressionPa:
      speed === undefined || rpm === undefined
        ? depressionPa
        : depressionPa - speed.sensitivityPaPerRpm * (rpm - speed.targetRpm),
  }));

/**
 * The straight line through the reference's readings against the order of reading, by least squares.
 * With two readings that bracket the others it is the drift between them shared out evenly: A-B-A
 * gives B − (A₁ + A₂)/2. Source: ISO/OIML practice of drift elimination by bracketing, OIML R 111-1:2004, annex C.
 * The slope's variance is that of one reading (told, and seen about the line) over Σ(k − k̄)².
 */
export function driftOf(bracket: readonly Corrected[], gauge: Gauge): Drift & { readonly middle: number } {
  const middle = average(bracket.map(({ order }) => order));
  const level = average(bracket.map(({ depressionPa }) => depressionPa));
  let square = 0;
  let product = 0;
  for (const { order, depressionPa } of bracket) {
    square += (order - middle) ** 2;
    product += (order - middle) * (depressionPa - level);
  }
  const perReadingPa = product / square;
  let residual = 0;
  for (const { order, depressionPa } of bracket) {
    residual += (depressionPa - level - perReadingPa * (order - middle)) ** 2;
  }
  const seen = bracket.length > 2 ? residual / (bracket.length - 2) : 0;
  return {
    perReadingPa,
    standardUncertaintyPa: Math.sqrt((readingVariancePa2(gauge) + seen) / square),
    middle,
  };
}

/**
 * Means and their uncertainties, one per carburettor, and the drift taken out (null without a reference).
 * Every carburettor has a reading, and the drift reference at least two: the caller has checked it.
 */
export function carburettorMeans(
  readings: readonly Corrected[],
  carburettors: number,
  gauge: Gauge,
  driftReference: number | undefined,
): { readonly means: readonly CarburettorMean[]; readonly drift: Drift | null } {
  const drift =
    driftReference === undefined
      ? null
      : driftOf(
          readings.filter(({ carburettor }) => carburettor === driftReference),
          gauge,
        );
  const means = Array.from({ length: carburettors }, (_, position): CarburettorMean => {
    const own = readings.filter(({ carburettor }) => carburettor === position + 1);
    const values = own.map(({ order, depressionPa }) =>
      drift === null ? depressionPa : depressionPa - drift.perReadingPa * (order - drift.middle),
    );
    const meanPa = average(values);
    // A line through the reference's own readings has used up one more degree of freedom.
    const degreesOfFreedom = values.length - 1 - (position + 1 === driftReference ? 1 : 0);
    const [first, second, ...rest] = values;
    const scatter =
      first !== undefined && second !== undefined && degreesOfFreedom > 0
        ? {
            standardDeviationPa:
              sampleStandardDeviation([first, second, ...rest]) *
              Math.sqrt((values.length - 1) / degreesOfFreedom),
            degreesOfFreedom,
          }
        : undefined;
    const away = drift === null ? 0 : average(own.map(({ order }) => order)) - drift.middle;
    return {
      count: values.length,
      meanPa,
      scatter,
      driftLoadingPa: drift === null ? 0 : away * drift.standardUncertaintyPa,
      ...meanUncertainty(gauge, values.length, scatter),
    };
  });
  return {
    means,
    drift: drift && { perReadingPa: drift.perReadingPa, standardUncertaintyPa: drift.standardUncertaintyPa },
  };
}

/** Of readings that were checked to be there. */
const average = ([first, ...rest]: readonly number[]): number => mean([first!, ...rest]);
