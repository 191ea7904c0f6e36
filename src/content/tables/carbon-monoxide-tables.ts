import {
  alarmPoints,
  carbonMonoxideLimits,
  formatExact,
  formatSignificant,
  limitPpm,
  measureUnit,
  mgPerM3PerPpm,
  overWords,
  standardAtmospherePa,
  temperatures,
  toSi,
} from '../../calculators/index.ts';
import { valueOf } from '../value-of.ts';
import type { DataTable } from './data-table.ts';

const roomCelsius = 20;
const mgPerPpm = valueOf(
  mgPerM3PerPpm({
    kelvins: toSi(roomCelsius, measureUnit(temperatures, 'C')),
    pascals: standardAtmospherePa,
  }),
);

export const carbonMonoxideLimitsTable: DataTable = {
  caption:
    'Published limits for carbon monoxide in air. None of them makes a running engine in a room acceptable.',
  columns: [
    { heading: 'body and year', words: true },
    { heading: 'for', words: true, beneath: true },
    { heading: 'averaged', words: true },
    { heading: 'limit as published', words: true },
    { heading: `the same at ${roomCelsius} °C`, unit: 'ppm' },
  ],
  rows: carbonMonoxideLimits.map((limit) => ({
    cells: [
      `${limit.body}, ${limit.year}`,
      `${limit.meaning}${limit.seen === 'memory' ? ' (from memory)' : ''}`,
      overWords(limit),
      `${formatExact(limit.value)}\u00a0${limit.unit === 'ppm' ? 'ppm' : 'mg/m³'}`,
      formatSignificant(limitPpm(limit, mgPerPpm), 2),
    ],
    sources: [limit.sourceId],
  })),
};

export const alarmPointsTable: DataTable = {
  caption: 'A household alarm in air that stays at a level. It is a last warning, and no permission.',
  columns: [
    { heading: 'level', unit: 'ppm' },
    { heading: 'silent at least', unit: 'min' },
    { heading: 'silent at most', unit: 'min' },
  ],
  rows: alarmPoints.map(({ ppm, earliestMinutes, latestMinutes }) => ({
    cells: [formatExact(ppm), formatExact(earliestMinutes), formatExact(latestMinutes)],
    sources: ['ul2034'],
  })),
};
