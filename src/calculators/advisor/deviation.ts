import type { Account } from './account.ts';
import { depressionCovarianceOf } from './belief.ts';
import { dot } from './matrix.ts';

/** Standard deviation of a depression from the mean of all; `i` counts from 0. */
export const deviationSd = ({ engine, belief, widening }: Account, i: number): number => {
  const n = engine.carburettors;
  const weights = new Array<number>(n).fill(-1 / n);
  weights[i]! += 1;
  const covariance = depressionCovarianceOf(engine, belief);
  return Math.sqrt(
    Math.max(
      0,
      widening *
        dot(
          weights,
          covariance.map((row) => dot(row, weights)),
        ),
    ),
  );
};
