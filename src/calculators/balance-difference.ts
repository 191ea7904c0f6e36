import type { Difference } from './balance-analysis.ts';
import type { CarburettorMean } from './correct-readings.ts';
import { combine } from './reading-uncertainty.ts';
import { studentTQuantile } from './student-t-quantile.ts';

export const weighted = (weights: readonly number[], values: readonly number[]): number =>
  values.reduce((total, value, i) => total + weights[i]! * value, 0);

/** Half-width of the interval that holds the value with the confidence asked for. */
export const expand = (
  standardUncertaintyPa: number,
  degreesOfFreedom: number,
  confidence: number,
): number =>
  standardUncertaintyPa === 0
    ? 0
    : standardUncertaintyPa * studentTQuantile((1 + confidence) / 2, degreesOfFreedom);

/** Uncertainty of a weighted sum of the means, the shared error of the drift included. */
export const uncertaintyOf = (contrast: readonly number[], means: readonly CarburettorMean[]) =>
  combine([
    ...means.map(({ standardUncertaintyPa, degreesOfFreedom }, i) => ({
      variancePa2: (contrast[i]! * standardUncertaintyPa) ** 2,
      degreesOfFreedom,
    })),
    {
      variancePa2:
        weighted(
          contrast,
          means.map(({ driftLoadingPa }) => driftLoadingPa),
        ) ** 2,
      degreesOfFreedom: Infinity,
    },
  ]);

/** A weighted sum of the means, and whether it is larger than its expanded uncertainty. */
export function differenceOf(
  contrast: readonly number[],
  means: readonly CarburettorMean[],
  confidence: number,
): Difference {
  const differencePa = weighted(
    contrast,
    means.map(({ meanPa }) => meanPa),
  );
  const { standardUncertaintyPa, degreesOfFreedom } = uncertaintyOf(contrast, means);
  const expandedUncertaintyPa = expand(standardUncertaintyPa, degreesOfFreedom, confidence);
  return { differencePa, expandedUncertaintyPa, real: Math.abs(differencePa) > expandedUncertaintyPa };
}
