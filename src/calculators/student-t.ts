import { gammaRatio } from './gamma-ratio.ts';
import { normalDensity } from './normal.ts';
import { betaBetween, betaTails, logOnePlusSquare } from './student-t-beta.ts';
import {
  equivalentNormal,
  nearlyNormal,
  nearlyNormalCentre,
  nearlyNormalTail,
} from './student-t-nearly-normal.ts';

/*
 * Student's t with any degrees of freedom above 0, whole or not; Infinity is the normal distribution.
 * Through the incomplete beta function: M. Abramowitz, I. A. Stegun, Handbook of Mathematical
 * Functions (1964), 26.7.1. Measured against an independent library: 1e-13 relative or better in
 * either tail to 1,000 degrees of freedom, 1e-12 beyond where the probability is above 1e-80.
 */

/** Density at t. */
export function studentTDensity(t: number, degreesOfFreedom: number): number {
  checkDegreesOfFreedom(degreesOfFreedom);
  if (degreesOfFreedom === Infinity) return normalDensity(t);
  const half = degreesOfFreedom / 2;
  return (
    (gammaRatio(half) / Math.sqrt(degreesOfFreedom * Math.PI)) *
    Math.exp(-(half + 0.5) * logOnePlusSquare(t, degreesOfFreedom))
  );
}

/** Probability that a value lies below t. */
export const studentTCdf = (t: number, degreesOfFreedom: number): number =>
  studentTTail(-t, degreesOfFreedom);

/** Probability that a value lies above t. */
export function studentTTail(t: number, degreesOfFreedom: number): number {
  checkDegreesOfFreedom(degreesOfFreedom);
  if (t < 0) return 1 - studentTTail(-t, degreesOfFreedom);
  if (degreesOfFreedom >= nearlyNormal) {
    const z = equivalentNormal(t, degreesOfFreedom);
    return z < 1 ? 0.5 - nearlyNormalCentre(z, degreesOfFreedom) : nearlyNormalTail(z, degreesOfFreedom);
  }
  return t < centreEnd(degreesOfFreedom)
    ? 0.5 - 0.5 * betaBetween(t, degreesOfFreedom)
    : 0.5 * betaTails(t, degreesOfFreedom);
}

/** Probability that a value lies between 0 and t, without the rounding of a difference from 1/2. */
export function studentTCentre(t: number, degreesOfFreedom: number): number {
  checkDegreesOfFreedom(degreesOfFreedom);
  if (t < 0) return -studentTCentre(-t, degreesOfFreedom);
  if (degreesOfFreedom >= nearlyNormal) {
    const z = equivalentNormal(t, degreesOfFreedom);
    return z < 1 ? nearlyNormalCentre(z, degreesOfFreedom) : 0.5 - nearlyNormalTail(z, degreesOfFreedom);
  }
  return t < centreEnd(degreesOfFreedom)
    ? 0.5 * betaBetween(t, degreesOfFreedom)
    : 0.5 - 0.5 * betaTails(t, degreesOfFreedom);
}

export function checkDegreesOfFreedom(degreesOfFreedom: number): void {
  if (!(degreesOfFreedom > 0)) throw new RangeError(`degrees of freedom ${degreesOfFreedom}`);
}

/** Where I_x(ν/2, 1/2) hands over to its complement, so that the fraction settles quickly. */
const centreEnd = (degreesOfFreedom: number): number => {
  const a = degreesOfFreedom / 2;
  // x = ν/(ν + t²) = (a + 1)/(a + 2.5)
  return Math.sqrt((degreesOfFreedom * 1.5) / (a + 1));
};
