import { isentropicFlowFunction } from '../compressible-flow.ts';
import { dryAirGasConstant } from '../dry-air.ts';
import { intakeK } from './constants.ts';
import type { PracticeCylinder, SteadyCylinder, SteadyEngine } from './engine.ts';
import type { Settings } from './state.ts';

/** No throttle is shut: what leaks past it, m². From memory. */
const leastM2 = 2e-7;

/**
 * Open area of a cylinder's throttle in m²: what it has from the first, and what screws, idle-speed screw and hand add.
 * Areas add, since lifts do and a slide or an air bypass opens in proportion; a throttle plate does so over small angles.
 */
export function openM2(engine: SteadyEngine, cylinder: number, lift: number, controls: Settings): number {
  const { cylinders, screws, idleScrew, handM2 } = engine;
  let area = cylinders[cylinder]!.areaM2 + lift * handM2 + controls.idleTurns * idleScrew.areaPerTurnM2;
  for (const [j, screw] of screws.entries())
    area += screw.moves[cylinder]! * screw.areaPerTurnM2 * controls.screwTurns[j]!;
  return Math.max(area, leastM2);
}

/** Absolute pressure in an intake that holds so much air, Pa. */
export const runnerPa = (cylinder: PracticeCylinder, airKg: number): number =>
  (airKg * dryAirGasConstant * intakeK) / cylinder.runnerM3;

/**
 * Air through throttle and leak into an intake, kg/s: C_D A p₀/√(R T₀) · ψ(p/p₀), choked below the critical ratio
 * (Heywood, 1988, eqs. C.8 and C.9). Above the ambient pressure nothing flows back.
 */
export function airInKgPerS(
  engine: Pick<SteadyEngine, 'ambientPa' | 'ambientK'>,
  cylinder: SteadyCylinder,
  areaM2: number,
  pa: number,
): number {
  const ratio = Math.min(Math.max(pa / engine.ambientPa, 0), 1);
  const flux = engine.ambientPa / Math.sqrt(dryAirGasConstant * engine.ambientK);
  return (cylinder.dischargeCoefficient * areaM2 + cylinder.leakM2) * flux * isentropicFlowFunction(ratio);
}

/** Air that a cylinder draws, kg/s: η_v ρ V_d N/120, one filling in two turns (speed–density; Heywood, eq. 2.27a). */
export const airOutKgPerS = (cylinder: SteadyCylinder, pa: number, rpm: number): number =>
  (cylinder.volumetricEfficiency * (pa / (dryAirGasConstant * intakeK)) * cylinder.displacementM3 * rpm) /
  120;

/** The two turns of a four-stroke cycle, and the stroke of it in which a cylinder draws. */
const cycleDegrees = 720;
const intakeDegrees = 180;

/**
 * Pressure in the intake less its mean at a crank angle, Pa: it falls while the cylinder draws and fills again until
 * the next time, both evenly. The size follows from the air: three quarters of what the cylinder takes is missing at
 * the end of its stroke, since the throttle feeds all the time; so (3/4) η_v p V_d/V_r from top to bottom.
 */
export function ripplePa(cylinder: PracticeCylinder, pa: number, crankDegrees: number): number {
  const since = (crankDegrees - cylinder.intakeAtDegrees + cycleDegrees) % cycleDegrees;
  const height = 0.75 * cylinder.volumetricEfficiency * pa * (cylinder.displacementM3 / cylinder.runnerM3);
  const share =
    since < intakeDegrees
      ? 0.5 - since / intakeDegrees
      : -0.5 + (since - intakeDegrees) / (cycleDegrees - intakeDegrees);
  return height * share;
}
