import * as dryAir from '../dry-air.ts';
import { handbookCelsius, usualGlycolPercent } from '../liquid-density.ts';
import { bendM, catchFactor, columnMargin, leastLevelM, tallestLegM, wellFactor } from '../liquid-column.ts';
import { mercuryGrowth } from '../mercury-density.ts';
import {
  olderMercuryGrowth,
  olderMercuryQuadratic,
  olderMercuryVolumeMl,
} from '../mercury-specific-volume.ts';
import {
  gravityAtEquator,
  gravityPerMetre,
  gravityWithDoubleLatitude,
  gravityWithLatitude,
} from '../normal-gravity.ts';
import { oilExpansionTimesDensity } from '../oil-expansion.ts';
import { atmosphereLayers, earthRadiusM, seaLevelTemperatureK } from '../standard-atmosphere.ts';
import { jonesHarrisCoefficients } from '../water-density-jones-harris.ts';
import { kellDenominator, kellNumerator } from '../water-density-kell.ts';
import { cubicCentimetresPerOlderMillilitre } from '../water-density-of-older-tables.ts';
import { tanakaCoefficients } from '../water-density-tanaka.ts';
import { describeConstants } from './constant.ts';
import type { ConstantGroup } from './constant.ts';

export const airConstants: ConstantGroup = {
  title: 'Air, the atmosphere and gravity',
  constants: [
    ...describeConstants(dryAir, {
      heatCapacityRatioOfAir: ['1', 'ratio of the specific heats of air', 'conventional', 'iso2533'],
      isoGasConstantOfAir: ['J/(kg K)', 'gas constant of dry air', 'conventional', 'iso2533'],
      usGasConstantOfAir: ['J/(kg K)', 'gas constant of dry air, United States', 'conventional', 'us-1976'],
      dryAirGasConstant: ['J/(kg K)', 'gas constant of dry air, rounded for engines', 'measured', 'heywood'],
    }),
    ...describeConstants(
      { seaLevelTemperatureK, earthRadiusM, atmosphereLayers },
      {
        seaLevelTemperatureK: ['K', 'temperature of the standard atmosphere at sea level', 'conventional', 'us-1976'],
        earthRadiusM: ['m', 'radius of the earth where gravity is standard', 'conventional', 'us-1976'],
        atmosphereLayers: ['m; K/m', 'foot of each layer and how the temperature goes above it', 'conventional', 'us-1976'],
      },
    ),
    ...describeConstants(
      { gravityAtEquator, gravityWithLatitude, gravityWithDoubleLatitude, gravityPerMetre },
      {
        gravityAtEquator: ['m/s²', 'free fall at the equator', 'conventional', 'grs80'],
        gravityWithLatitude: ['1', 'how it grows with sin² of the latitude', 'conventional', 'grs80'],
        gravityWithDoubleLatitude: ['1', 'how it shrinks with sin² of twice the latitude', 'conventional', 'grs80'],
        gravityPerMetre: ['m/s² per m', 'what a metre of height takes away', 'measured', 'grs80'],
      },
    ),
  ],
}; // prettier-ignore

export const liquidConstants: ConstantGroup = {
  title: 'Density of liquids',
  constants: describeConstants(
    {
      tanakaCoefficients,
      kellNumerator,
      kellDenominator,
      jonesHarrisCoefficients,
      mercuryGrowth,
      cubicCentimetresPerOlderMillilitre,
      olderMercuryVolumeMl,
      olderMercuryGrowth,
      olderMercuryQuadratic,
      oilExpansionTimesDensity,
      handbookCelsius,
      usualGlycolPercent,
    },
    {
      tanakaCoefficients: ['°C, °C, °C², °C, kg/m³', 'water from 0 °C to 40 °C', 'measured', 'tanaka'],
      kellNumerator: ['kg/m³ per °C to the power', 'water up to 150 °C, above the line', 'measured', 'kell'],
      kellDenominator: ['1/°C', 'water up to 150 °C, below the line', 'measured', 'kell'],
      jonesHarrisCoefficients: ['kg/m³ per °C to the power', 'water from 5 °C to 40 °C', 'measured', 'jones-harris'],
      mercuryGrowth: ['× 10⁻⁸ per °C to the power', 'how a volume of mercury grows, from the first power', 'measured', 'beattie'],
      cubicCentimetresPerOlderMillilitre: ['cm³', 'millilitre of 1901', 'from memory'],
      olderMercuryVolumeMl: ['mL of 1901', 'a gram of mercury at 0 °C in the older tables', 'measured', 'older-mercury'],
      olderMercuryGrowth: ['1/°C to the power', 'how it grows', 'measured', 'older-mercury'],
      olderMercuryQuadratic: ['mL of 1901 per °C to the power', 'the quadratic of those tables', 'measured', 'older-mercury'],
      oilExpansionTimesDensity: ['kg/m³ per °F', 'expansion of lubricating oil × its density', 'measured', 'petroleum-tables'],
      handbookCelsius: ['°C', 'temperature of handbooks', 'conventional', 'fluid-table'],
      usualGlycolPercent: ['% by volume', 'strength that coolants are mixed to', 'common practice'],
    },
  ),
}; // prettier-ignore

export const columnConstants: ConstantGroup = {
  title: 'Building a liquid column',
  constants: describeConstants(
    { columnMargin, catchFactor, wellFactor, bendM, tallestLegM, leastLevelM },
    {
      columnMargin: ['1', 'height of the tube over the height expected', 'common practice'],
      catchFactor: ['1', 'catch pot over all the liquid', 'common practice'],
      wellFactor: ['1', 'well over what the tube takes out of it', 'common practice'],
      bendM: ['m', 'tube for the bend or the dip', 'from memory'],
      tallestLegM: ['m', 'tallest leg that stands on a bench', 'from memory'],
      leastLevelM: ['m', 'least level that can be read to a twentieth', 'from memory'],
    },
  ),
}; // prettier-ignore
