import {
  fahrenheitDegreesPerKelvin,
  zeroCelsiusFahrenheit,
  zeroCelsiusKelvins,
} from './exact-definitions.ts';
import { siBrochure, sp811, unitEntry } from './measure-unit-entry.ts';
import type { MeasureFamily } from './measure-unit.ts';

/** Temperatures, in kelvins. 20 °C is 68 °F, but a difference of 20 °C is one of 36 °F: see `temperatureDifferences`. */
export const temperatures: MeasureFamily = {
  name: 'temperature',
  siUnit: 'K',
  limit: { min: 0 },
  units: [
    unitEntry(
      'C',
      'degrees Celsius',
      { kind: 'temperature', degreesPerKelvin: 1, atZeroCelsius: 0 },
      'K − 273.15',
      'deg C, degree Celsius, Celsius, centigrade, degrees centigrade',
      siBrochure,
      '°C',
    ),
    unitEntry(
      'F',
      'degrees Fahrenheit',
      {
        kind: 'temperature',
        degreesPerKelvin: fahrenheitDegreesPerKelvin,
        atZeroCelsius: zeroCelsiusFahrenheit,
      },
      '9/5 × °C + 32',
      'deg F, degree Fahrenheit, Fahrenheit',
      sp811,
      '°F',
    ),
    unitEntry(
      'K',
      'kelvins',
      { kind: 'temperature', degreesPerKelvin: 1, atZeroCelsius: zeroCelsiusKelvins },
      'the SI unit',
      'kelvin, deg K',
    ),
  ],
};
