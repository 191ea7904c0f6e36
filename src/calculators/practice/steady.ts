import { isentropicFlowFunction } from '../compressible-flow.ts';
import { dryAirGasConstant } from '../dry-air.ts';
import { airInKgPerS, airOutKgPerS, openM2 } from './breathing.ts';
import { intakeK, petrolHeatJPerKg, stallRpm, warmK } from './constants.ts';
import type { SteadyCylinder, SteadyEngine } from './engine.ts';
import { frictionPa } from './friction.ts';
import type { Settings } from './state.ts';

/** No search for a speed goes further; from memory. */
const fastestRpm = 8000;

/** Mean absolute pressure in the intake of a cylinder that is fed through an open area at a speed, Pa. */
export function steadyPa(
  engine: SteadyEngine,
  cylinder: SteadyCylinder,
  areaM2: number,
  rpm: number,
): number {
  let [low, high] = [0, engine.ambientPa];
  for (let halving = 0; halving < 60; halving += 1) {
    const middle = (low + high) / 2;
    const fills = airInKgPerS(engine, cylinder, areaM2, middle) > airOutKgPerS(cylinder, middle, rpm);
    if (fills) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** What drives the crank less what brakes it, in watts, with the throttles so far open, and the pressures there. */
function balanceW(engine: SteadyEngine, controls: Settings, lift: number, rpm: number, metalK: number) {
  const pressuresPa = engine.cylinders.map((cylinder, i) =>
    steadyPa(engine, cylinder, openM2(engine, i, lift, controls), rpm),
  );
  const watts = engine.cylinders.reduce((sum, cylinder, i) => {
    const pa = pressuresPa[i]!;
    const fuelW = (airOutKgPerS(cylinder, pa, rpm) / engine.airToFuel) * petrolHeatJPerKg;
    const braking = engine.ambientPa - pa + frictionPa(rpm, metalK, engine.frictionFactor);
    return sum + engine.indicatedEfficiency * fuelW - (braking * cylinder.displacementM3 * rpm) / 120;
  }, 0);
  return { watts, pressuresPa };
}

/** The reach of the hand that holds a speed: there the engine, warm unless told otherwise, neither gains nor loses. */
export function holdingReach(
  engine: SteadyEngine,
  controls: Settings,
  rpm = engine.targetRpm,
  metalK = warmK,
): number {
  return rootOf(-1, 1, (reach) => balanceW(engine, controls, reach, rpm, metalK).watts);
}

/**
 * The truth: the mean depression of every cylinder with the screws where they stand, the engine just warm or as warm as
 * told, and the hand holding the speed that is asked for.
 */
export function trueDepressionsPa(
  engine: SteadyEngine,
  controls: Settings,
  rpm = engine.targetRpm,
  metalK = warmK,
): readonly number[] {
  return depressionsPa(engine, controls, holdingReach(engine, controls, rpm, metalK), rpm);
}

/** Where the warm engine comes to rest when the hand stays at a reach: its speed, and every depression there. */
export function leftAlone(engine: SteadyEngine, controls: Settings, reach: number) {
  const rpm = rootOf(fastestRpm, stallRpm, (speed) => balanceW(engine, controls, reach, speed, warmK).watts);
  return { rpm, depressionsPa: depressionsPa(engine, controls, reach, rpm) };
}

const depressionsPa = (engine: SteadyEngine, controls: Settings, reach: number, rpm: number) =>
  balanceW(engine, controls, reach, rpm, warmK).pressuresPa.map((pa) => engine.ambientPa - pa);

/** By halving, from where a function is below 0 to where it is not. */
function rootOf(below: number, above: number, of: (at: number) => number): number {
  let [low, high] = [below, above];
  for (let halving = 0; halving < 45; halving += 1) {
    const middle = (low + high) / 2;
    if (of(middle) < 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * At rest between drive and brake, c p = p₀ − p + friction: c p is what the charge of a stroke gives, so c follows from
 * the depression of a levelled set.
 */
export const givenPerPa = (levelPa: number, ambientPa: number, friction: number): number =>
  (levelPa + friction) / (ambientPa - levelPa);

/** The share of the fuel's heat that has to push the pistons for that. */
export const indicatedEfficiencyOf = (
  given: number,
  volumetricEfficiency: number,
  airToFuel: number,
): number => (given * dryAirGasConstant * intakeK * airToFuel) / (volumetricEfficiency * petrolHeatJPerKg);

/** Highest less lowest. */
export const trueSpreadPa = (engine: SteadyEngine, controls: Settings): number => {
  const depressions = trueDepressionsPa(engine, controls);
  return Math.max(...depressions) - Math.min(...depressions);
};

/** The open area that keeps a cylinder at a depression and a speed, m². */
export function areaForM2(
  cylinder: Omit<SteadyCylinder, 'areaM2'>,
  depressionPa: number,
  rpm: number,
  ambientPa: number,
  ambientK: number,
): number {
  const pa = ambientPa - depressionPa;
  const flux = ambientPa / Math.sqrt(dryAirGasConstant * ambientK);
  const density = pa / (dryAirGasConstant * intakeK);
  const drawn = (cylinder.volumetricEfficiency * density * cylinder.displacementM3 * rpm) / 120;
  return (
    (drawn / (flux * isentropicFlowFunction(pa / ambientPa)) - cylinder.leakM2) /
    cylinder.dischargeCoefficient
  );
}
