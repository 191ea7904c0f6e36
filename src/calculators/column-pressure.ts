import { standardGravity } from './exact-definitions.ts';

/**
 * Pressure at the foot of a column of liquid: p = ρ g₀ h.
 *
 * @param densityKgPerM3 density of the liquid
 * @param heightM upright height; the column may lean, its height may not be measured along it
 * @returns pascals, under standard gravity
 * Source: ISO 80000-4:2019; NIST SP 811, 2008, appendix B.
 */
export const columnPressurePa = (densityKgPerM3: number, heightM: number): number =>
  densityKgPerM3 * standardGravity * heightM;

/** The density that a column of `heightM` must have to give `pressurePa`: ρ = p / (g₀ h), in kg/m³. */
export const columnDensityKgPerM3 = (pressurePa: number, heightM: number): number =>
  pressurePa / (standardGravity * heightM);
