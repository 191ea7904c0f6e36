import {
  computeAmbientPressure,
  formatFixed,
  formatSignificant,
  fromSi,
  inUnit,
  lengths,
  measureUnit,
  pascalsOf,
  pressureUnit,
} from '../../calculators/index.ts';
import { valueOf } from '../value-of.ts';
import type { DataTable } from './data-table.ts';

const shown = ['mmHg', 'cmHg', 'inHg', 'kPa', 'mbar', 'cmH2O'] as const;

/** Round readings and differences of gauges marked in each of the three usual units. */
const roundReadings = [
  ['mmHg', [5, 10, 20, 50, 100, 150, 200, 250, 300, 350, 400, 500]],
  ['inHg', [0.2, 0.5, 1, 2, 5, 8, 10, 12, 15, 20]],
  ['kPa', [0.5, 1, 2, 5, 10, 20, 30, 40, 50]],
] as const;

/** Three digits: more than any needle shows. */
const readingDigits = 3;

export const usualReadings: DataTable = {
  caption: 'Usual readings and differences of gauges in each other’s units.',
  columns: [
    { heading: 'On the gauge', words: true },
    ...shown.map((id) => ({ heading: pressureUnit(id).name, unit: pressureUnit(id).symbol })),
  ],
  rows: roundReadings.flatMap(([id, readings]) =>
    readings.map((reading) => ({
      cells: [
        `${formatSignificant(reading, 1)}\u00a0${pressureUnit(id).symbol}`,
        ...shown.map((unitId) =>
          formatSignificant(
            inUnit(pascalsOf(reading, pressureUnit(id)), pressureUnit(unitId)),
            readingDigits,
          ),
        ),
      ],
      sources: ['iso80000', 'sp811'],
    })),
  ),
};

const heightsM = [0, 100, 200, 300, 400, 500, 750, 1000, 1250, 1500, 2000, 2500, 3000, 4000, 5000];

export const depressionLimit: DataTable = {
  caption: 'The standard air at a height, which is also the largest depression that is possible there.',
  columns: [
    { heading: 'height', unit: 'm' },
    { heading: 'height', unit: 'ft' },
    { heading: 'air', unit: 'hPa' },
    { heading: 'limit', unit: 'mmHg' },
    { heading: 'limit', unit: 'inHg' },
    { heading: 'limit', unit: 'kPa' },
    { heading: 'share of the air at the sea' },
  ],
  rows: heightsM.map((geopotentialM) => {
    const place = { from: 'altitude', height: { geopotentialM } } as const;
    const air = valueOf(computeAmbientPressure({ place, reading: null }));
    const pressure = (id: string, decimals: number): string =>
      formatFixed(inUnit(air.largestDepressionPa, pressureUnit(id)), decimals);
    return {
      cells: [
        formatFixed(geopotentialM, 0),
        formatFixed(fromSi(geopotentialM, measureUnit(lengths, 'ft')), 0),
        pressure('hPa', 0),
        pressure('mmHg', 0),
        pressure('inHg', 1),
        pressure('kPa', 1),
        formatFixed(air.shareOfSeaLevel, 3),
      ],
      sources: ['us-1976'],
    };
  }),
};
