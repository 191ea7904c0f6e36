import { throttleAreaRatio } from './compressible-flow.ts';
import { succeed } from './result.ts';
import type { Result } from './result.ts';

/** What a difference between two cylinders is in what they draw; shares of the one with the higher depression. */
export type WorthOfADifference = {
  /** More air that the cylinder with the lower depression draws. */
  readonly moreAir: number;
  /** How much further its throttle is open. */
  readonly moreOpening: number;
};

/**
 * A cylinder draws in proportion to the absolute pressure in its intake (J. B. Heywood, Internal Combustion Engine
 * Fundamentals, 1988, eq. 2.27, the same speed and temperature for both), so the shares of air differ by Δd/(p − d);
 * openings by `throttleAreaRatio`. `depressionPa` is the higher of the two, `differencePa` how far the other lies below.
 * Problems: those of `throttleAreaRatio`.
 */
export function worthOfADifference(
  differencePa: number,
  depressionPa: number,
  ambientPa: number,
): Result<WorthOfADifference> {
  const ratio = throttleAreaRatio(depressionPa - differencePa, depressionPa, ambientPa);
  return ratio.ok
    ? succeed({ moreAir: differencePa / (ambientPa - depressionPa), moreOpening: ratio.value - 1 })
    : ratio;
}
