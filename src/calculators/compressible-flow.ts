import { checkDepression } from './check-session.ts';
import { checkNumber } from './check-number.ts';
import { heatCapacityRatioOfAir } from './dry-air.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

/**
 * The pressure ratio p/p₀ at and below which the flow is choked: (2/(γ + 1))^(γ/(γ − 1)).
 * Source: J. B. Heywood, Internal Combustion Engine Fundamentals (1988), eq. C.7.
 */
export const criticalPressureRatio = (gamma = heatCapacityRatioOfAir): number =>
  (2 / (gamma + 1)) ** (gamma / (gamma - 1));

/**
 * The isentropic flow function ψ of a pressure ratio p/p₀ in 0…1: mass flow = A p₀/√(R T₀) · ψ.
 * ψ = √(2γ/(γ − 1) · (r^(2/γ) − r^((γ + 1)/γ))), with r the larger of the ratio and the critical one.
 * Source: Heywood (1988), eqs. C.8 and C.9, here without the discharge coefficient.
 */
export function isentropicFlowFunction(pressureRatio: number, gamma = heatCapacityRatioOfAir): number {
  if (!(pressureRatio >= 0 && pressureRatio <= 1)) throw new RangeError(`pressure ratio ${pressureRatio}`);
  const ratio = Math.max(pressureRatio, criticalPressureRatio(gamma));
  // r^(2/γ) (1 − r^((γ−1)/γ)): near r = 1 the difference of the two powers would lose digits.
  const difference = ratio ** (2 / gamma) * (0 - Math.expm1(((gamma - 1) / gamma) * Math.log(ratio)));
  return Math.sqrt(((2 * gamma) / (gamma - 1)) * difference);
}

/** Opening that passes what the cylinder draws, but for a factor common to all: x/ψ(x), x = p/p₀. */
const relativeOpening = (depressionPa: number, ambientPa: number): number => {
  const pressureRatio = 1 - depressionPa / ambientPa;
  return pressureRatio / isentropicFlowFunction(pressureRatio);
};

/**
 * How many times as open a throttle is as the one it is compared with, from the depressions behind
 * the two. What passes a throttle is what its cylinder draws, and a cylinder draws in proportion to
 * the pressure before it; so A/A′ = (x/ψ(x)) / (x′/ψ(x′)). A lower depression means further open.
 *
 * Both depressions in pascals, above 0 (at 0 no opening is large enough) and below the ambient pressure.
 * Problems: `not-finite`, `out-of-range`, `depression-beyond-ambient`.
 */
export function throttleAreaRatio(
  depressionPa: number,
  referenceDepressionPa: number,
  ambientPa: number,
): Result<number> {
  const problem =
    checkNumber('ambientPa', ambientPa, { above: 0 }) ??
    checkNumber('depressionPa', depressionPa, { above: 0 }) ??
    checkNumber('referenceDepressionPa', referenceDepressionPa, { above: 0 }) ??
    checkDepression('depressionPa', depressionPa, ambientPa) ??
    checkDepression('referenceDepressionPa', referenceDepressionPa, ambientPa);
  return problem
    ? fail(problem)
    : succeed(relativeOpening(depressionPa, ambientPa) / relativeOpening(referenceDepressionPa, ambientPa));
}
