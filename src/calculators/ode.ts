import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

/** dy/dt = slope(t, y) from a value at a time on. */
export type OdeStart = { readonly time: number; readonly value: number };

export type OdeControl = {
  /** The error of a step may be so much, plus so large a share of the value. */
  readonly absoluteError: number;
  readonly relativeError: number;
  /** Steps after which the solution is given up, taken or refused. */
  readonly mostSteps: number;
};

/**
 * The coefficients of the pair of orders 5 and 4 with seven stages. The weights of the fifth order are the last row,
 * so that the last slope of a step is the first of the next.
 * Source: J. R. Dormand, P. J. Prince, A family of embedded Runge-Kutta formulae, Journal of Computational and
 * Applied Mathematics 6 (1980), 19–26, table 2.
 */
const stages: readonly (readonly [node: number, weights: readonly number[]])[] = [
  [1 / 5, [1 / 5]],
  [3 / 10, [3 / 40, 9 / 40]],
  [4 / 5, [44 / 45, -56 / 15, 32 / 9]],
  [8 / 9, [19372 / 6561, -25360 / 2187, 64448 / 6561, -212 / 729]],
  [1, [9017 / 3168, -355 / 33, 46732 / 5247, 49 / 176, -5103 / 18656]],
  [1, [35 / 384, 0, 500 / 1113, 125 / 192, -2187 / 6784, 11 / 84]],
];
/** Fifth order less fourth. */
const errorWeights = [71 / 57600, 0, -71 / 16695, 71 / 1920, -17253 / 339200, 22 / 525, -1 / 40];

/** Usual bounds of a change of step, and the share of the step that the error allows (Hairer, Nørsett and Wanner, Solving Ordinary Differential Equations I, 2nd edition, 1993, section II.4). */
const step = { smallest: 0.2, largest: 5, caution: 0.9 } as const;

type Slope = (time: number, value: number) => number;

/**
 * The values of the solution at times that rise, none before the start. Adaptive steps, each accepted with the value of
 * the fifth order if its estimated error is within the control; a step never passes the next time that is asked for.
 * Problem: no-solution, where steps become too many, or too small to be told from none (as before a pole).
 */
export function solveOde(
  slope: Slope,
  start: OdeStart,
  times: readonly number[],
  control: OdeControl,
): Result<readonly number[]> {
  let { time, value } = start;
  let slopeHere = slope(time, value);
  // Cautious: a thousandth of the whole; it may grow fivefold at every step.
  let next = ((times.at(-1) ?? time) - time) / 1000;
  let steps = 0;
  const values: number[] = [];
  for (const target of times) {
    while (time < target) {
      const size = Math.min(next, target - time);
      if (steps === control.mostSteps || time + size === time)
        return fail({ kind: 'no-solution', at: time, steps });
      steps += 1;
      const tried = dormandPrince(slope, time, value, slopeHere, size);
      const allowed =
        control.absoluteError + control.relativeError * Math.max(Math.abs(value), Math.abs(tried.value));
      const share = Number.isFinite(tried.error) ? Math.abs(tried.error) / allowed : Infinity;
      const factor = Math.min(step.largest, Math.max(step.smallest, step.caution * share ** (-1 / 5)));
      if (share <= 1) {
        // A step cut short by the target says nothing against the longer one.
        next = Math.max(size * factor, size < next ? next : 0);
        time = size === target - time ? target : time + size;
        ({ value, slope: slopeHere } = tried);
      } else next = size * factor;
    }
    values.push(value);
  }
  return succeed(values);
}

/** One step: the value of the fifth order, the slope there, and the estimated error. */
function dormandPrince(slope: Slope, time: number, value: number, slopeHere: number, size: number) {
  const slopes = [slopeHere];
  let reached = { value, slope: slopeHere };
  for (const [node, weights] of stages) {
    const at = value + size * weighted(weights, slopes);
    reached = { value: at, slope: slope(time + node * size, at) };
    slopes.push(reached.slope);
  }
  return { ...reached, error: size * weighted(errorWeights, slopes) };
}

/** As many weights as there are slopes. */
const weighted = (weights: readonly number[], slopes: readonly number[]): number =>
  slopes.reduce((sum, slope, k) => sum + slope * weights[k]!, 0);
