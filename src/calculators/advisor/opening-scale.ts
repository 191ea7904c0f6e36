import { heatCapacityRatioOfAir } from '../dry-air.ts';

/**
 * The opening scale: how far a throttle is open, in pascals, from the depression behind it.
 * What passes the throttle is what the cylinder draws: opening × ψ(x) ∝ x, with x the absolute pressure over ambient.
 *
 * ψ is the isentropic flow function of air, γ = 1.4, choked below x = 0.5283
 * (J. B. Heywood, Internal Combustion Engine Fundamentals, 1988, appendix C, equations C.8 and C.9).
 */
export type OpeningScale = {
  /** Opening at a depression; falls as the depression rises. */
  readonly opening: (depressionPa: number) => number;
  /** Its slope at a depression, always negative. */
  readonly slope: (depressionPa: number) => number;
  /** The depression at an opening, kept inside the scale. */
  readonly depression: (opening: number) => number;
};

const gamma = heatCapacityRatioOfAir;
const lowExponent = 2 / gamma;
const highExponent = (gamma + 1) / gamma;
const criticalRatio = 0.5283;
const smallestRatio = 0.02;
const largestRatio = 0.995;

const clampRatio = (ratio: number): number => Math.min(Math.max(ratio, smallestRatio), largestRatio);

const flowFunction = (ratio: number): number => {
  const z = Math.max(ratio, criticalRatio);
  return Math.sqrt(7 * (z ** lowExponent - z ** highExponent));
};

const ratioOverFlow = (ratio: number): number => ratio / flowFunction(ratio);

const ratioOverFlowSlope = (ratio: number): number => {
  const flow = flowFunction(ratio);
  if (ratio <= criticalRatio) return 1 / flow;
  const flowSlope =
    (7 * (lowExponent * ratio ** (lowExponent - 1) - highExponent * ratio ** (highExponent - 1))) /
    (2 * flow);
  return 1 / flow - (ratio * flowSlope) / (flow * flow);
};

const chokedLimit = ratioOverFlow(criticalRatio);
const lowest = ratioOverFlow(smallestRatio);
const highest = ratioOverFlow(largestRatio);

/** Inverse of `ratioOverFlow`: exact where choked, else Newton's steps kept inside a shrinking bracket. */
const ratioFrom = (target: number): number => {
  if (target <= lowest) return smallestRatio;
  if (target >= highest) return largestRatio;
  if (target <= chokedLimit) return target * flowFunction(criticalRatio);
  let below = criticalRatio;
  let above = largestRatio;
  let ratio = 0.8;
  for (let step = 0, moved = Infinity; step < 60 && moved >= 1e-15; step++) {
    const error = ratioOverFlow(ratio) - target;
    if (error > 0) above = ratio;
    else below = ratio;
    let next = ratio - error / ratioOverFlowSlope(ratio);
    if (!(next > below && next < above)) next = (below + above) / 2;
    moved = Math.abs(next - ratio);
    ratio = next;
  }
  return ratio;
};

/** The scale for an ambient pressure, with slope −1 at `unitSlopeDepressionPa`. */
export const openingScale = (ambientPa: number, unitSlopeDepressionPa: number): OpeningScale => {
  const ratioAt = (depressionPa: number): number => clampRatio(1 - depressionPa / ambientPa);
  const scalePa = ambientPa / ratioOverFlowSlope(ratioAt(unitSlopeDepressionPa));
  return {
    opening: (depressionPa) => scalePa * ratioOverFlow(ratioAt(depressionPa)),
    slope: (depressionPa) => (-scalePa * ratioOverFlowSlope(ratioAt(depressionPa))) / ambientPa,
    depression: (opening) => ambientPa * (1 - ratioFrom(opening / scalePa)),
  };
};
