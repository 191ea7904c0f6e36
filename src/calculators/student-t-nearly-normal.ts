import { gammaRatio } from './gamma-ratio.ts';
import { normalCentre, normalDensity, normalTail } from './normal.ts';
import { logOnePlusSquare } from './student-t-beta.ts';

/*
 * From ten thousand degrees of freedom on the fraction loses digits (a rounding of x counts ν/2
 * times), and another way is better: with z² = ν ln(1 + t²/ν) the density of t becomes that of a
 * normal z times √(u/(1 − e^−u)), u = z²/ν, whose series is integrated term by term. What it leaves
 * out is below 1e-15 for probabilities above 1e-80.
 */
export const nearlyNormal = 1e4;
const series = [1, 1 / 4, 1 / 96, -1 / 384, -1 / 10240, 19 / 368640] as const;

export const equivalentNormal = (t: number, degreesOfFreedom: number): number =>
  degreesOfFreedom === Infinity
    ? t
    : Math.sign(t) * Math.sqrt(degreesOfFreedom * logOnePlusSquare(t, degreesOfFreedom));

const normalConstant = (degreesOfFreedom: number): number =>
  degreesOfFreedom === Infinity ? 1 : gammaRatio(degreesOfFreedom / 2) / Math.sqrt(degreesOfFreedom / 2);

export const nearlyNormalTail = (z: number, degreesOfFreedom: number): number =>
  // Below 1e-320 from here on, where the powers of z would overflow against it.
  z > 39 ? 0 : sumOfMoments(normalTail(z), z * normalDensity(z), z, degreesOfFreedom);

export const nearlyNormalCentre = (z: number, degreesOfFreedom: number): number =>
  sumOfMoments(normalCentre(z), -z * normalDensity(z), z, degreesOfFreedom);

/** Moment 2k of the part of a normal distribution: edge · z^(2k−2) + (2k − 1) · moment 2k − 2. */
const sumOfMoments = (probability: number, edge: number, z: number, degreesOfFreedom: number): number => {
  let moment = probability;
  let boundary = edge;
  let total = 0;
  let power = 1;
  for (const [k, coefficient] of series.entries()) {
    total += (coefficient * moment) / power;
    moment = boundary + (2 * k + 1) * moment;
    boundary *= z * z;
    power *= degreesOfFreedom;
  }
  return normalConstant(degreesOfFreedom) * total;
};
