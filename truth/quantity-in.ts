import {
  convertMeasure,
  densities,
  findMeasureUnit,
  measureUnit,
  temperatures,
} from '../src/calculators/index.ts';
import type { MeasureFamily, MeasureUnit } from '../src/calculators/index.ts';

/** The unit that a row names; throws if the family has none of that spelling. */
export function unitIn(family: MeasureFamily, typed: string): MeasureUnit {
  const unit = findMeasureUnit(typed, family);
  if (unit === null) throw new Error(`no unit of ${family.name} “${typed}”`);
  return unit;
}

/** A density in kg/m³ as a figure in the unit that a row expects. */
export const densityIn = (kgPerM3: number, unit: string): number =>
  convertMeasure(kgPerM3, measureUnit(densities, 'kg/m3'), unitIn(densities, unit));

/** A temperature in kelvins as a figure in the unit that a row expects. */
export const temperatureIn = (kelvins: number, unit: string): number =>
  convertMeasure(kelvins, measureUnit(temperatures, 'K'), unitIn(temperatures, unit));

/** A temperature in the unit that a row names, in degrees Celsius. */
export const celsiusOf = (figure: number, unit: string): number =>
  convertMeasure(figure, unitIn(temperatures, unit), measureUnit(temperatures, 'C'));
