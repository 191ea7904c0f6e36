import { continuedFraction } from './continued-fraction.ts';
import { gammaRatio } from './gamma-ratio.ts';

/** ln(1 + t²/ν), also where t² would overflow. */
export const logOnePlusSquare = (t: number, degreesOfFreedom: number): number => {
  const scaled = Math.abs(t) / Math.sqrt(degreesOfFreedom);
  return scaled > 1e8 ? 2 * Math.log(scaled) : Math.log1p(scaled * scaled);
};

/** x^a (1 − x)^½ / B(a, ½) with x = ν/(ν + t²), a = ν/2: what stands before both fractions. */
const betaFront = (t: number, degreesOfFreedom: number): number => {
  const scaled = t / Math.sqrt(degreesOfFreedom);
  const root = scaled > 1e8 ? 1 : scaled / Math.hypot(1, scaled);
  return (
    (Math.exp((-degreesOfFreedom / 2) * logOnePlusSquare(t, degreesOfFreedom)) *
      root *
      gammaRatio(degreesOfFreedom / 2)) /
    Math.sqrt(Math.PI)
  );
};

/** I_x(ν/2, ½), the probability of both tails. */
export const betaTails = (t: number, degreesOfFreedom: number): number => {
  const a = degreesOfFreedom / 2;
  return betaFront(t, degreesOfFreedom) / (a * betaFraction(1 / (1 + (t / degreesOfFreedom) * t), a, 0.5));
};

/** I_{1−x}(½, ν/2), the probability between −t and t. */
export const betaBetween = (t: number, degreesOfFreedom: number): number => {
  const y = 1 / (1 + degreesOfFreedom / (t * t));
  return betaFront(t, degreesOfFreedom) / (0.5 * betaFraction(y, 0.5, degreesOfFreedom / 2));
};

/** The fraction of Abramowitz and Stegun 26.5.8, whose reciprocal gives the incomplete beta function. */
const betaFraction = (x: number, a: number, b: number): number =>
  continuedFraction(1, (k) => {
    const m = Math.floor(k / 2);
    const numerator =
      k % 2 === 0
        ? (m * (b - m) * x) / ((a + k - 1) * (a + k))
        : (-(a + m) * (a + b + m) * x) / ((a + k - 1) * (a + k));
    return [numerator, 1];
  });
