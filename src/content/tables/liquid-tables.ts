import {
  columnHeightM,
  formatSignificant,
  fromSi,
  isRefused,
  lengths,
  liquidDensity,
  liquids,
  measureUnit,
  pascalsOf,
  pressureUnit,
  type Liquid,
} from '../../calculators/index.ts';
import type { SourceId } from '../sources.ts';
import { valueOf } from '../value-of.ts';
import { noFigure, type DataTable } from './data-table.ts';

const temperatures = [10, 20, 30] as const;
const [, usualCelsius] = temperatures;
const usualDifference = { figure: 10, unit: pressureUnit('mmHg') };

/** A constant expansion is not known to more. */
const digitsOf = ({ density }: Liquid): number => (density.kind === 'expansion' ? 3 : 4);

function densityAt(liquid: Liquid, celsius: number): string {
  const density = liquidDensity(liquid, celsius);
  return density.ok ? formatSignificant(density.value, digitsOf(liquid)) : noFigure;
}

const sourcesOf = ({ sourceId, density }: Liquid): [SourceId, ...SourceId[]] => [
  sourceId as SourceId,
  ...(density.kind === 'expansion' && density.expansionSourceId !== sourceId
    ? [density.expansionSourceId as SourceId]
    : []),
];

export const gaugeLiquidDensities: DataTable = {
  caption: 'Liquids of gauges: their density, and the height at which they show a usual difference.',
  columns: [
    { heading: 'liquid', words: true },
    { heading: 'use', words: true, beneath: true },
    { heading: 'danger', words: true, beneath: true },
    ...temperatures.map((celsius) => ({ heading: `density at ${celsius} °C`, unit: 'kg/m³' })),
    {
      heading: `height of ${usualDifference.figure} ${usualDifference.unit.symbol} at ${usualCelsius} °C`,
      unit: 'mm',
    },
  ],
  rows: liquids.map((liquid) => ({
    cells: [
      liquid.name,
      isRefused(liquid) ? 'Refused here.' : 'To fill in.',
      liquid.hazardWords,
      ...temperatures.map((celsius) => densityAt(liquid, celsius)),
      formatSignificant(
        fromSi(
          columnHeightM(
            valueOf(liquidDensity(liquid, usualCelsius)),
            pascalsOf(usualDifference.figure, usualDifference.unit),
          ),
          measureUnit(lengths, 'mm'),
        ),
        3,
      ),
    ],
    sources: sourcesOf(liquid),
  })),
};
