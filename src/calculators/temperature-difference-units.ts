import { fahrenheitDegreesPerKelvin } from './exact-definitions.ts';
import { siBrochure, sp811, unitEntry } from './measure-unit-entry.ts';
import type { MeasureFamily } from './measure-unit.ts';

/** Differences between two temperatures, in kelvins: how much warmer, where the zero of the scale does not matter. */
export const temperatureDifferences: MeasureFamily = {
  name: 'temperature difference',
  siUnit: 'K',
  units: [
    unitEntry(
      'C',
      'degrees Celsius of difference',
      1,
      '1 K',
      'deg C, degrees Celsius, degree Celsius, Celsius, centigrade, degrees centigrade',
      siBrochure,
      '°C',
    ),
    unitEntry(
      'F',
      'degrees Fahrenheit of difference',
      1 / fahrenheitDegreesPerKelvin,
      '5/9 K',
      'deg F, degrees Fahrenheit, degree Fahrenheit, Fahrenheit',
      sp811,
      '°F',
    ),
    unitEntry('K', 'kelvins', 1, 'the SI unit', 'kelvin, deg K'),
  ],
};
