import { checkNumber } from './check-number.ts';
import { heatCapacityRatioOfAir } from './dry-air.ts';
import type { Problem } from './problem.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

/*
 * Isentropic flow of a perfect gas at a Mach number, below and above 1, for any ratio of specific heats γ above 1.
 * Source: Ames Research Staff, Equations, tables, and charts for compressible flow, NACA Report 1135 (1953),
 * eqs. 43–45 and 80. Problems of all three: `not-finite`, `out-of-range`.
 */

/** Static over total pressure, p/pₜ = (1 + (γ − 1)/2 · M²)^(−γ/(γ − 1)) (eq. 44). */
export const pressureOverTotal = (mach: number, gamma = heatCapacityRatioOfAir): Result<number> =>
  checked(mach, gamma, (warmth) => Math.exp((-gamma / (gamma - 1)) * warmth));

/** Static over total density, ϱ/ϱₜ = (1 + (γ − 1)/2 · M²)^(−1/(γ − 1)) (eq. 45). */
export const densityOverTotal = (mach: number, gamma = heatCapacityRatioOfAir): Result<number> =>
  checked(mach, gamma, (warmth) => Math.exp((-1 / (gamma - 1)) * warmth));

/**
 * Area over that of the throat at the speed of sound, A/A* (eq. 80):
 * 1/M · ((1 + (γ − 1)/2 · M²) · 2/(γ + 1))^((γ + 1)/(2(γ − 1))). The Mach number is above 0.
 */
export const areaOverThroat = (mach: number, gamma = heatCapacityRatioOfAir): Result<number> => {
  if (mach === 0) return fail({ kind: 'out-of-range', field: 'mach', value: mach, limit: { above: 0 } });
  return checked(mach, gamma, (warmth) => {
    const exponent = (gamma + 1) / (2 * (gamma - 1));
    return Math.exp(exponent * (warmth - Math.log1p((gamma - 1) / 2))) / mach;
  });
};

/** `relation` takes ln(Tₜ/T) = ln(1 + (γ − 1)/2 · M²): as a logarithm it keeps its digits where γ is close to 1. */
function checked(mach: number, gamma: number, relation: (warmth: number) => number): Result<number> {
  const problem: Problem | undefined =
    checkNumber('mach', mach, { min: 0 }) ?? checkNumber('gamma', gamma, { above: 1 });
  return problem ? fail(problem) : succeed(relation(Math.log1p(((gamma - 1) / 2) * mach * mach)));
}
