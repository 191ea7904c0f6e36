import { columnUnit, heights } from './column-unit.ts';
import {
  conventionalMercuryDensity,
  conventionalWaterDensity,
  kilogramsPerPound,
  mercuryDensityAt0Celsius,
  mercuryDensityAt60Fahrenheit,
  metresPerInch,
  standardAtmospherePa,
  standardGravity,
  torrPerAtmosphere,
  waterDensityAt4Celsius,
  waterDensityAt60Fahrenheit,
} from './exact-definitions.ts';
import type { PressureUnit } from './pressure-unit.ts';

const si = 'The International System of Units, BIPM, 9th edition, 2019';
const sp811 = 'Thompson and Taylor, NIST Special Publication 811, 2008, appendix B';
const iso = 'ISO 80000-4:2019, annex; NIST SP 811, 2008, appendix B';

const hg = ['mercury', 'Hg'] as const;
// WC, WG and WS: water column, water gauge and the German Wassersäule, as gauges are marked.
const h2o = ['water', 'H2O', 'WC', 'WG', 'WS'] as const;

const column = { symbol: 'Hg', words: hg, exactness: 'conventional', source: iso, temperatures: [] } as const;
const measured = { exactness: 'measured', source: sp811 } as const;
const mercury = { ...column, densityKgPerM3: conventionalMercuryDensity };
const water = { ...column, symbol: 'H₂O', words: h2o, densityKgPerM3: conventionalWaterDensity };
const ice = {
  ...mercury,
  ...measured,
  densityKgPerM3: mercuryDensityAt0Celsius,
  temperatures: ['32°F', '0°C'],
};
const roomMercury = {
  ...mercury,
  ...measured,
  densityKgPerM3: mercuryDensityAt60Fahrenheit,
  temperatures: ['60°F'],
};
const densestWater = {
  ...water,
  ...measured,
  densityKgPerM3: waterDensityAt4Celsius,
  temperatures: ['39.2°F', '39°F', '4°C'],
};
const roomWater = {
  ...water,
  ...measured,
  densityKgPerM3: waterDensityAt60Fahrenheit,
  temperatures: ['60°F'],
};

const exact = (
  id: string,
  name: string,
  pascals: number,
  composition: string,
  aliases: string,
  source = si,
  symbol = id,
): PressureUnit => ({
  id,
  symbol,
  name,
  aliases: aliases.split(', '),
  pascals,
  exactness: 'exact',
  composition,
  source,
  rare: false,
});

/** Every pressure unit, in the order of the converter's table; the rare ones last. */
export const pressureUnits: readonly PressureUnit[] = [
  exact('Pa', 'pascals', 1, '1 N/m²', 'pascal, N/m2'),
  exact('hPa', 'hectopascals', 100, '100 Pa', 'hectopascal'),
  exact('kPa', 'kilopascals', 1000, '1000 Pa', 'kilopascal'),
  exact('mbar', 'millibars', 100, '0.001 bar', 'millibar, mb'),
  exact('bar', 'bars', 100_000, '100000 Pa', 'bar'),
  columnUnit(heights.mm, mercury, false),
  exact('Torr', 'torr', standardAtmospherePa / torrPerAtmosphere, '101325 Pa / 760', 'torrs', sp811),
  columnUnit(heights.cm, mercury, false),
  columnUnit(heights.in, mercury, false),
  columnUnit(heights.mm, water, false),
  columnUnit(heights.cm, water, false),
  columnUnit(heights.in, water, false),
  columnUnit(heights.ft, water, false),
  exact(
    'psi',
    'pounds per square inch',
    (kilogramsPerPound * standardGravity) / (metresPerInch * metresPerInch),
    '0.45359237 kg × 9.80665 m/s² / (0.0254 m)²',
    'lbf/in2, lb/in2, lbs/in2, lb/sq in, lbf/sq in, lbs/sq in, pound per square inch',
    sp811,
  ),
  exact('atm', 'standard atmospheres', standardAtmospherePa, '101325 Pa', 'atmosphere, atmospheres', sp811),
  exact(
    'at',
    'technical atmospheres',
    standardGravity * 10_000,
    '9.80665 N × 10000 cm²/m²',
    'technical atmosphere, at (kgf/cm2), kgf/cm2, kg/cm2, kp/cm2, kgf/sq cm, kg/sq cm, kilogram-force per square centimetre',
    sp811,
    'kgf/cm² (at)',
  ),
  columnUnit(heights.ft, mercury, true),
  columnUnit(heights.cm, ice, true),
  columnUnit(heights.in, ice, true),
  columnUnit(heights.in, roomMercury, true),
  columnUnit(heights.mm, densestWater, true),
  columnUnit(heights.cm, densestWater, true),
  columnUnit(heights.in, densestWater, true),
  columnUnit(heights.ft, densestWater, true),
  columnUnit(heights.in, roomWater, true),
  columnUnit(heights.ft, roomWater, true),
];
