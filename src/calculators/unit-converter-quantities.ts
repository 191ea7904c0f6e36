import type { SaidUnits } from './conversion-table.ts';
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
  /** The first is also the unit of a number without one, until another is chosen. */
  readonly said: SaidUnits;
};

/** What the converter knows besides pressure. */
export const converterMeasures = {
  length: { family: lengths, said: ['mm', 'in', 'thou', 'cm'] },
  torque: { family: torques, said: ['Nm', 'lbfft', 'kgfm', 'lbfin'] },
  temperature: { family: temperatures, said: ['C', 'F', 'K'] },
  'temperature-difference': {
    family: temperatureDifferences,
    said: ['C', 'F', 'K'],
  },
  volume: { family: volumes, said: ['mL', 'us-floz', 'L', 'imp-floz', 'us-qt'] },
  speed: { family: speeds, said: ['km/h', 'mph', 'm/s'] },
  'engine-speed': { family: engineSpeeds, said: ['rpm', 'Hz', 'rad/s'] },
  'thread-pitch': { family: threadPitches, said: ['mm', 'tpi', 'in'] },
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
  quantity in converterMeasures ? converterMeasures[quantity as ConverterMeasureName].said[0] : 'inHg';

/** The unit of a spelling within a quantity, or null. */
export function findUnit(spelling: string, quantity: string): { readonly id: string } | null {
  const family = familyOf(quantity);
  return family === null ? findPressureUnit(spelling) : findMeasureUnit(spelling, family);
}

/** The quantities that have a unit of this spelling: the way out for somebody who typed `5 mm` as a pressure. */
export const quantitiesOfUnit = (spelling: string): readonly ConverterQuantity[] =>
  converterQuantities.filter((quantity) => findUnit(spelling, quantity) !== null);
