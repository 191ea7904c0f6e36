import { standardAtmospherePa } from '../exact-definitions.ts';
import { warmK } from '../practice/constants.ts';
import type { SteadyEngine } from '../practice/engine.ts';
import { frictionPa } from '../practice/friction.ts';
import { areaForM2, givenPerPa, indicatedEfficiencyOf } from '../practice/steady.ts';
import { mmHgPa } from './mmhg.ts';

/** Every figure is an invented engine's, from memory, of the kind that the practice engine invents. */
const oneScrewEngine = {
  rpm: 2100,
  levelMmHg: 240,
  effectMmHg: 140,
  airToFuel: 13,
  ambientK: 293.15,
  frictionFactor: 1,
} as const;
const oneScrewCylinder = {
  displacementM3: 125e-6,
  volumetricEfficiency: 0.75,
  dischargeCoefficient: 0.75,
  leakM2: 0,
} as const;

/** A warm engine whose cylinders show these depressions at its speed, with screws that move what `moves` says. */
export function engineShowing(
  depressionsMmHg: readonly number[],
  moves: readonly (readonly number[])[],
): SteadyEngine {
  const { rpm, levelMmHg, effectMmHg, airToFuel, ambientK, frictionFactor } = oneScrewEngine;
  const ambientPa = standardAtmospherePa;
  const areaM2 = (depressionMmHg: number): number =>
    areaForM2(oneScrewCylinder, depressionMmHg * mmHgPa, rpm, ambientPa, ambientK);
  const given = givenPerPa(levelMmHg * mmHgPa, ambientPa, frictionPa(rpm, warmK, frictionFactor));
  const areaPerTurnM2 = (effectMmHg * (areaM2(levelMmHg - 1) - areaM2(levelMmHg + 1))) / 2;
  return {
    ambientPa,
    ambientK,
    airToFuel,
    frictionFactor,
    targetRpm: rpm,
    indicatedEfficiency: indicatedEfficiencyOf(given, oneScrewCylinder.volumetricEfficiency, airToFuel),
    handM2: areaM2(levelMmHg),
    idleScrew: { areaPerTurnM2: 0 },
    cylinders: depressionsMmHg.map((each) => ({ ...oneScrewCylinder, areaM2: areaM2(each) })),
    screws: moves.map((each) => ({ moves: each, areaPerTurnM2 })),
  };
}
