import { checkNumber } from './check-number.ts';
import { isentropicFlowFunction } from './compressible-flow.ts';
import { dryAirGasConstant, heatCapacityRatioOfAir } from './dry-air.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

export type ThrottleFlow = {
  /** Area that is open to the flow. */
  readonly areaM2: number;
  /** Share of that area that really flows. */
  readonly dischargeCoefficient: number;
  /** Total pressure and temperature before the throttle. */
  readonly upstreamPa: number;
  readonly upstreamK: number;
  /** Pressure behind the throttle over that before it, 0…1. */
  readonly pressureRatio: number;
};

/**
 * Mass flow of air through a throttle, in kg/s: C_D A p₀ / √(R T₀) · ψ(p/p₀).
 * Problems: `not-finite`, `out-of-range`.
 * Source: J. B. Heywood, Internal Combustion Engine Fundamentals (1988), eqs. C.8 and C.9.
 */
export function throttleMassFlowKgPerS(given: ThrottleFlow): Result<number> {
  const { areaM2, dischargeCoefficient, upstreamPa, upstreamK, pressureRatio } = given;
  const problem =
    checkNumber('areaM2', areaM2, { min: 0 }) ??
    checkNumber('dischargeCoefficient', dischargeCoefficient, { min: 0 }) ??
    checkNumber('upstreamPa', upstreamPa, { above: 0 }) ??
    checkNumber('upstreamK', upstreamK, { above: 0 }) ??
    checkNumber('pressureRatio', pressureRatio, { min: 0, max: 1 });
  if (problem) return fail(problem);
  const flux = upstreamPa / Math.sqrt(dryAirGasConstant * upstreamK);
  return succeed(dischargeCoefficient * areaM2 * flux * isentropicFlowFunction(pressureRatio));
}

/**
 * How many times too much the incompressible formula gives: √(2(1 − r)) / ψ(r), r = p/p₀ in 0…1; it is 1 at no flow.
 * Problems: `not-finite`, `out-of-range`. Source: the quotient of Bernoulli’s flow and Heywood’s eqs. C.8 and C.9.
 */
export function incompressibleOverCompressible(
  pressureRatio: number,
  gamma = heatCapacityRatioOfAir,
): Result<number> {
  const problem =
    checkNumber('pressureRatio', pressureRatio, { min: 0, max: 1 }) ??
    checkNumber('gamma', gamma, { above: 1 });
  if (problem) return fail(problem);
  if (pressureRatio === 1) return succeed(1);
  return succeed(Math.sqrt(2 * (1 - pressureRatio)) / isentropicFlowFunction(pressureRatio, gamma));
}

/**
 * ψ of a choked throttle, the most that a pressure can push through: √γ (2/(γ + 1))^((γ + 1)/(2(γ − 1))).
 * Problems: `not-finite`, `out-of-range`. Source: Heywood (1988), eq. C.9.
 */
export function chokedFlowFunction(gamma = heatCapacityRatioOfAir): Result<number> {
  const problem = checkNumber('gamma', gamma, { above: 1 });
  if (problem) return fail(problem);
  const exponent = (gamma + 1) / (2 * (gamma - 1));
  return succeed(Math.sqrt(gamma) * Math.exp(-exponent * Math.log1p((gamma - 1) / 2)));
}
