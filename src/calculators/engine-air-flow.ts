import { checkNumber } from './check-number.ts';
import { dryAirGasConstant } from './dry-air.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

export type EngineBreathing = {
  readonly displacementM3: number;
  readonly rpm: number;
  /** Absolute pressure and temperature in the intake, behind the throttle. */
  readonly intakePa: number;
  readonly intakeK: number;
  /** Of the air that would fill the cylinders at the state in the intake, the share that does. */
  readonly volumetricEfficiency: number;
};

/**
 * Air that a four-stroke engine draws, in kg/s (speed–density): η p V / (R T) · N/120, one filling in two turns.
 * Problems: `not-finite`, `out-of-range`.
 * Source: J. B. Heywood, Internal Combustion Engine Fundamentals (1988), eq. 2.27a, with the density of the intake.
 */
export function engineAirFlowKgPerS(given: EngineBreathing): Result<number> {
  const { displacementM3, rpm, intakePa, intakeK, volumetricEfficiency } = given;
  const problem =
    checkNumber('displacementM3', displacementM3, { above: 0 }) ??
    checkNumber('rpm', rpm, { min: 0 }) ??
    checkNumber('intakePa', intakePa, { min: 0 }) ??
    checkNumber('intakeK', intakeK, { above: 0 }) ??
    checkNumber('volumetricEfficiency', volumetricEfficiency, { min: 0 });
  if (problem) return fail(problem);
  const densityKgPerM3 = intakePa / (dryAirGasConstant * intakeK);
  return succeed((volumetricEfficiency * densityKgPerM3 * displacementM3 * rpm) / 120);
}
