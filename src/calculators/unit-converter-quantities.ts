import { engineSpeeds } from './engine-speed-units.ts';
import { lengths } from './length-units.ts';
import type { MeasureFamily } from './measure-unit.ts';
import { findMeasureUnit } from './measure-units.ts';
import { findPressureUnit } from './pressure-units.ts';
import { speeds } from './speed-units.ts';
import { temperatureDifferences } from './temperature-difference-units.ts';
import { temperatures } from './temperature-units.ts';
import { threadPitches } from './thread-pitch-units.ts';
import { torques } from './torque-units.ts';
import { volumes } from './volume-units.ts';

type ConverterMeasure = {
  readonly family: MeasureFamily;
  /** Id of the unit of a number without one, until another is chosen. */
  readonly usualUnit: string;
  /** Ids of the units that the announcement names. */
  readonly announced: readonly string[];
};

/** What the converter knows besides pressure. */
export const converterMeasures = {
  length: { family: lengths, usualUnit: 'mm', announced: ['mm', 'cm', 'thou', 'in'] },
  torque: { family: torques, usualUnit: 'Nm', announced: ['Nm', 'kgfm', 'lbfft', 'lbfin'] },
  temperature: { family: temperatures, usualUnit: 'C', announced: ['C', 'F', 'K'] },
  'temperature-difference': {
    family: temperatureDifferences,
    usualUnit: 'C',
    announced: ['C', 'F', 'K'],
  },
  volume: { family: volumes, usualUnit: 'mL', announced: ['cm3', 'L', 'us-floz', 'imp-floz', 'us-qt'] },
  speed: { family: speeds, usualUnit: 'km/h', announced: ['km/h', 'mph', 'm/s'] },
  'engine-speed': { family: engineSpeeds, usualUnit: 'rpm', announced: ['rpm', 'Hz', 'rad/s'] },
  'thread-pitch': { family: threadPitches, usualUnit: 'mm', announced: ['mm', 'tpi', 'in'] },
} as const satisfies Record<string, ConverterMeasure>;

export type ConverterMeasureName = keyof typeof converterMeasures;
export type ConverterQuantity = 'pressure' | ConverterMeasureName;

export const converterMeasureNames = Object.keys(converterMeasures) as readonly ConverterMeasureName[];
export const converterQuantities: readonly ConverterQuantity[] = ['pressure', ...converterMeasureNames];

/** The family of a quantity; null for pressure, which has kinds and an ambient pressure besides. */
export const familyOf = (quantity: string): MeasureFamily | null =>
  quantity in converterMeasures ? converterMeasures[quantity as ConverterMeasureName].family : null;

/** Id of the unit of a number without one, until another is chosen. */
export const usualUnitOf = (quantity: string): string =>
  quantity in converterMeasures ? converterMeasures[quantity as ConverterMeasureName].usualUnit : 'inHg';

/** The unit of a spelling within a quantity, or null. */
export function findUnit(spelling: string, quantity: string): { readonly id: string } | null {
  const family = familyOf(quantity);
  return family === null ? findPressureUnit(spelling) : findMeasureUnit(spelling, family);
}

/** The quantities that have a unit of this spelling: the way out for somebody who typed `5 mm` as a pressure. */
export const quantitiesOfUnit = (spelling: string): readonly ConverterQuantity[] =>
  converterQuantities.filter((quantity) => findUnit(spelling, quantity) !== null);
