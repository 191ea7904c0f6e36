import { coldFriction, coldFrictionFadesOverK, coldK } from './constants.ts';

/**
 * Mean effective pressure of the friction in Pa: that of the warm engine at a speed, and more of it while it is cold.
 * Warm: 0.97 + 0.15 (N/1000) + 0.05 (N/1000)² bar, N in rpm (J. B. Heywood, Internal Combustion Engine Fundamentals,
 * 1988, eq. 13.6, after Barnes-Moss). Cold: `coldFriction`, from memory.
 */
export function frictionPa(rpm: number, metalK: number, factor: number): number {
  const thousands = rpm / 1000;
  const warm = (0.97 + 0.15 * thousands + 0.05 * thousands ** 2) * 1e5;
  return factor * warm * (1 + coldFriction * Math.exp((coldK - metalK) / coldFrictionFadesOverK));
}
