import * as definitions from '../exact-definitions.ts';
import * as molarGas from '../molar-gas-constant.ts';
import { describeConstants } from './constant.ts';
import type { ConstantGroup } from './constant.ts';

/** What units are composed from. */
export const definitionConstants: ConstantGroup = {
  title: 'Definitions',
  constants: [
    ...describeConstants(definitions, {
      metresPerInch: ['m', 'inch', 'exact', 'sp811'],
      inchesPerFoot: ['1', 'inches in a foot', 'exact', 'sp811'],
      kilogramsPerPound: ['kg', 'pound', 'exact', 'sp811'],
      feetPerYard: ['1', 'feet in a yard', 'exact', 'sp811'],
      feetPerMile: ['1', 'feet in a mile', 'exact', 'sp811'],
      ouncesPerPound: ['1', 'ounces in a pound', 'exact', 'sp811'],
      metresPerNauticalMile: ['m', 'nautical mile', 'exact', 'sp811'],
      cubicInchesPerUsGallon: ['in³', 'gallon of the United States', 'exact', 'sp811'],
      litresPerImperialGallon: ['L', 'imperial gallon', 'exact', 'sp811'],
      usFluidOuncesPerGallon: ['1', 'fluid ounces in a gallon of the United States', 'exact', 'sp811'],
      imperialFluidOuncesPerGallon: ['1', 'fluid ounces in an imperial gallon', 'exact', 'sp811'],
      pintsPerGallon: ['1', 'pints in a gallon', 'exact', 'sp811'],
      quartsPerGallon: ['1', 'quarts in a gallon', 'exact', 'sp811'],
      zeroCelsiusKelvins: ['K', '0 °C', 'exact', 'si'],
      zeroCelsiusFahrenheit: ['°F', '0 °C', 'exact', 'sp811'],
      fahrenheitDegreesPerKelvin: ['°F', 'a kelvin of difference', 'exact', 'sp811'],
      secondsPerMinute: ['s', 'minute', 'exact', 'si'],
      minutesPerHour: ['min', 'hour', 'exact', 'si'],
      secondsPerHour: ['s', 'hour', 'exact', 'si'],
      standardGravity: ['m/s²', 'standard acceleration of free fall', 'exact', 'si'],
      standardAtmospherePa: ['Pa', 'standard atmosphere', 'exact', 'sp811'],
      torrPerAtmosphere: ['1', 'torr in a standard atmosphere', 'exact', 'sp811'],
      conventionalMercuryDensity: ['kg/m³', 'mercury of the conventional columns', 'conventional', 'iso80000'],
      conventionalWaterDensity: ['kg/m³', 'water of the conventional columns', 'conventional', 'sp811'],
      mercuryDensityAt0Celsius: ['kg/m³', 'mercury at 0 °C (32 °F)', 'from memory', null],
      mercuryDensityAt60Fahrenheit: ['kg/m³', 'mercury at 60 °F', 'measured', 'sp811'],
      waterDensityAt60Fahrenheit: ['kg/m³', 'water at 60 °F', 'measured', 'sp811'],
      waterDensityAt4Celsius: ['kg/m³', 'water at its densest, 4 °C (39.2 °F)', 'measured', 'sp811'],
    }),
    ...describeConstants(molarGas, {
      avogadroPerMol: ['1/mol', 'Avogadro constant', 'exact', 'si'],
      boltzmannJPerK: ['J/K', 'Boltzmann constant', 'exact', 'si'],
      molarGasConstant: ['J/(mol K)', 'molar gas constant, the product of the two', 'exact', 'si'],
    }),
  ],
}; // prettier-ignore
