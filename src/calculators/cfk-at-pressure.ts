import { cfkConstants } from './coburn-forster-kane-constants.ts';
import { cfkPeople } from './cfk-person.ts';
import { zeroCelsiusKelvins } from './exact-definitions.ts';
import type { CfkPerson } from './cfk-person.ts';

/** Body and standard temperature in kelvins. */
export const bodyKelvins = 310.15;
export const standardMmHg = 760;

/** A volume at body temperature, saturated with vapour, as a dry one at 0 °C and 760 mmHg. */
export const standardDryMl = (bodyMl: number, barometricMmHg: number, vapourMmHg: number): number =>
  bodyMl * ((barometricMmHg - vapourMmHg) / standardMmHg) * (zeroCelsiusKelvins / bodyKelvins);

/** Oxygen in dry air, and how far its pressure in the capillaries is below that breathed in. */
export const oxygenShare = 0.21;
export const oxygenFallMmHg = 49;

/**
 * The resting person of an open calculation of the Occupational Safety and Health Administration: oxygen pressure from
 * the barometer, PcO2 = 0.21 (PB − PH2O) − 49; DL = 20; VA = 6 L/min at body temperature, saturated with vapour.
 * Source: Salt Lake Technical Center, COHb (COHb.R), in whose words DL also falls a little with oxygen (by less than
 * 0.1 % in air); that is left out here.
 */
export const restingPersonOfOpenCode: CfkPerson = {
  ...cfkPeople.rest,
  diffusingCapacityMlPerMinMmHg: 20,
  ventilationMlPerMin: standardDryMl(
    6000,
    cfkConstants.barometricPressure.value,
    cfkConstants.waterVapour.value,
  ),
  capillaryOxygenMmHg:
    oxygenShare * (cfkConstants.barometricPressure.value - cfkConstants.waterVapour.value) - oxygenFallMmHg,
};
