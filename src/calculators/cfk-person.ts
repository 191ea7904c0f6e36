import { checkNumber } from './check-number.ts';
import { cfkConstants } from './coburn-forster-kane-constants.ts';
import type { Problem } from './problem.ts';

/** All of it in millilitres, minutes and conventional millimetres of mercury. Ventilation at standard state, dry. */
export type CfkPerson = {
  readonly bloodVolumeMl: number;
  readonly endogenousMlPerMin: number;
  readonly haldaneRatio: number;
  readonly capillaryOxygenMmHg: number;
  readonly oxygenCapacityMlPerMl: number;
  readonly diffusingCapacityMlPerMinMmHg: number;
  readonly ventilationMlPerMin: number;
  readonly barometricMmHg: number;
  readonly vapourMmHg: number;
};

const still = {
  bloodVolumeMl: cfkConstants.bloodVolume.value,
  endogenousMlPerMin: cfkConstants.endogenousProduction.value,
  haldaneRatio: cfkConstants.haldaneRatio.value,
  capillaryOxygenMmHg: cfkConstants.capillaryOxygen.value,
  oxygenCapacityMlPerMl: cfkConstants.oxygenCapacity.value,
  barometricMmHg: cfkConstants.barometricPressure.value,
  vapourMmHg: cfkConstants.waterVapour.value,
};

/** The standard man of the equation, sitting and at light work. */
export const cfkPeople = {
  rest: {
    ...still,
    diffusingCapacityMlPerMinMmHg: cfkConstants.diffusingCapacityAtRest.value,
    ventilationMlPerMin: cfkConstants.ventilationAtRest.value,
  },
  'light work': {
    ...still,
    diffusingCapacityMlPerMinMmHg: cfkConstants.diffusingCapacityAtLightWork.value,
    ventilationMlPerMin: cfkConstants.ventilationAtLightWork.value,
  },
} as const satisfies Record<string, CfkPerson>;

export type Activity = keyof typeof cfkPeople;

/** What is wrong with a person, or undefined: every figure is above 0, but production and vapour, which are from 0. */
export function checkCfkPerson(person: CfkPerson): Problem | undefined {
  const { endogenousMlPerMin, vapourMmHg, ...others } = person;
  return (
    Object.entries(others)
      .map(([field, value]) => checkNumber(field, value, { above: 0 }))
      .find(Boolean) ??
    checkNumber('endogenousMlPerMin', endogenousMlPerMin, { min: 0 }) ??
    checkNumber('vapourMmHg', vapourMmHg, { min: 0, below: person.barometricMmHg })
  );
}

/** B = 1/DL + (PB − PH2O)/VA: what the way from the room into the blood resists, in mmHg min/mL. */
export const cfkResistance = (person: CfkPerson): number =>
  1 / person.diffusingCapacityMlPerMinMmHg +
  (person.barometricMmHg - person.vapourMmHg) / person.ventilationMlPerMin;

/** Pressure of carbon monoxide in the air that is breathed in, warm and moist, in mmHg. */
export const inspiredMmHg = (person: CfkPerson, ppm: number): number =>
  ppm * 1e-6 * (person.barometricMmHg - person.vapourMmHg);

/** B · Vco + PIco: what drives carbon monoxide into the blood. */
export const cfkDriveMmHg = (person: CfkPerson, ppm: number): number =>
  cfkResistance(person) * person.endogenousMlPerMin + inspiredMmHg(person, ppm);

/** What is wrong with an exposure, or undefined: concentration and time from 0, COHb from 0 and below 100 %. */
export const checkExposure = (ppm: number, minutes: number, startPercent: number): Problem | undefined =>
  checkNumber('ppm', ppm, { min: 0 }) ??
  checkNumber('minutes', minutes, { min: 0 }) ??
  checkNumber('startPercent', startPercent, { min: 0, below: 100 });
