import { minutesPerHour } from './exact-definitions.ts';

/** A published limit for carbon monoxide in air. None of them makes a running engine in a room acceptable. */
export type CarbonMonoxideLimit = {
  readonly id: string;
  /** As the check values and the pages name it: `OSHA PEL 8 h TWA`. */
  readonly name: string;
  readonly body: string;
  readonly year: number;
  /** What the body says of it, in a few words. */
  readonly meaning: string;
  readonly value: number;
  readonly unit: 'ppm' | 'mg/m3';
  /** The figure that the body prints beside it in the other of the two units, rounded as it does. */
  readonly inOtherUnit?: number;
  /** Minutes over which it is averaged; null: at no moment. */
  readonly averagingMinutes: number | null;
  readonly sourceId:
    | 'niosh-idlh'
    | 'earnest'
    | 'eh40'
    | 'eu-carbon-monoxide'
    | 'naaqs'
    | 'who-2000'
    | 'who-2010'
    | 'who-2021'
    | 'aegl-carbon-monoxide';
  readonly seen: 'read' | 'copy' | 'memory';
};

const hour = minutesPerHour;

const work = { sourceId: 'niosh-idlh', seen: 'read', unit: 'ppm' } as const;
const who = { body: 'WHO', unit: 'mg/m3' } as const;
const who2000 = { ...who, year: 2000, meaning: 'guideline', sourceId: 'who-2000', seen: 'copy' } as const;
const who2010 = { ...who, year: 2010, meaning: 'indoor air', sourceId: 'who-2010', seen: 'memory' } as const;

const eh40 = {
  body: 'HSE',
  year: 2020,
  name: 'HSE WEL',
  meaning: 'at work, Great Britain',
  unit: 'ppm',
  sourceId: 'eh40',
  seen: 'copy',
} as const;
const europe = {
  body: 'European Union',
  year: 2022,
  name: 'EU limit at work',
  meaning: 'at work',
  unit: 'ppm',
  sourceId: 'eu-carbon-monoxide',
  seen: 'copy',
} as const;

/** Acute exposure guideline levels in ppm, each over its minutes. There is no level 1. */
const aegl = (
  level: 2 | 3,
  levels: readonly (readonly [minutes: number, ppm: number])[],
): CarbonMonoxideLimit[] =>
  levels.map(([averagingMinutes, value]) => ({
    id: `aegl-${level}-${averagingMinutes}`,
    name: `AEGL-${level} for CO`,
    body: `US EPA, AEGL-${level}`,
    year: 2008,
    meaning: level === 2 ? 'lasting harm, or unable to escape' : 'danger to life, or death',
    value,
    unit: 'ppm',
    averagingMinutes,
    sourceId: 'aegl-carbon-monoxide',
    seen: 'memory',
  }));

export const carbonMonoxideLimits: readonly CarbonMonoxideLimit[] = [
  {
    ...work,
    id: 'osha-pel',
    year: 1971,
    name: 'OSHA PEL 8 h TWA',
    body: 'OSHA',
    meaning: 'permissible at work, United States',
    value: 50,
    inOtherUnit: 55,
    averagingMinutes: 8 * hour,
  },
  {
    ...work,
    id: 'niosh-rel',
    year: 1972,
    name: 'NIOSH REL TWA',
    body: 'NIOSH',
    meaning: 'recommended at work',
    value: 35,
    inOtherUnit: 40,
    averagingMinutes: 8 * hour,
  },
  {
    ...work,
    id: 'niosh-ceiling',
    year: 1972,
    name: 'NIOSH ceiling',
    body: 'NIOSH',
    meaning: 'ceiling at work',
    value: 200,
    inOtherUnit: 229,
    averagingMinutes: null,
  },
  {
    ...work,
    id: 'niosh-idlh',
    year: 1994,
    name: 'NIOSH IDLH',
    body: 'NIOSH',
    meaning: 'immediately dangerous to life or health',
    value: 1200,
    averagingMinutes: null,
    sourceId: 'earnest',
  },
  { ...eh40, id: 'eh40-15', value: 100, averagingMinutes: 15 },
  { ...eh40, id: 'eh40-480', value: 20, averagingMinutes: 8 * hour },
  { ...europe, id: 'eu-15', value: 100, inOtherUnit: 117, averagingMinutes: 15 },
  { ...europe, id: 'eu-480', value: 20, inOtherUnit: 23, averagingMinutes: 8 * hour },
  {
    id: 'naaqs-1h',
    name: 'US NAAQS 1 h',
    body: 'US EPA',
    year: 1971,
    meaning: 'outdoor air, United States',
    value: 35,
    inOtherUnit: 40,
    unit: 'ppm',
    averagingMinutes: hour,
    sourceId: 'naaqs',
    seen: 'copy',
  },
  {
    id: 'naaqs-8h',
    name: 'US NAAQS 8 h',
    body: 'US EPA',
    year: 1971,
    meaning: 'outdoor air, United States',
    value: 9,
    inOtherUnit: 10,
    unit: 'ppm',
    averagingMinutes: 8 * hour,
    sourceId: 'naaqs',
    seen: 'copy',
  },
  { ...who2000, id: 'who-2000-15', name: 'WHO 2000 guideline', value: 100, averagingMinutes: 15 },
  { ...who2000, id: 'who-2000-30', name: 'WHO 2000 guideline', value: 60, averagingMinutes: 30 },
  { ...who2000, id: 'who-2000-60', name: 'WHO 2000 guideline', value: 30, averagingMinutes: hour },
  { ...who2000, id: 'who-2000-480', name: 'WHO 2000 guideline', value: 10, averagingMinutes: 8 * hour },
  { ...who2010, id: 'who-2010-15', name: 'WHO 2010 indoor guideline', value: 100, averagingMinutes: 15 },
  { ...who2010, id: 'who-2010-60', name: 'WHO 2010 indoor guideline', value: 35, averagingMinutes: hour },
  {
    ...who2010,
    id: 'who-2010-480',
    name: 'WHO 2010 indoor guideline',
    value: 10,
    averagingMinutes: 8 * hour,
  },
  {
    ...who2010,
    id: 'who-2010-1440',
    name: 'WHO 2010 indoor guideline',
    value: 7,
    averagingMinutes: 24 * hour,
  },
  {
    ...who,
    id: 'who-2021',
    name: 'WHO 2021 AQG level',
    year: 2021,
    meaning: 'guideline',
    value: 4,
    averagingMinutes: 24 * hour,
    sourceId: 'who-2021',
    seen: 'copy',
  },
  ...aegl(2, [
    [10, 420],
    [30, 150],
    [hour, 83],
    [4 * hour, 33],
    [8 * hour, 27],
  ]),
  ...aegl(3, [
    [10, 1700],
    [30, 600],
    [hour, 330],
    [4 * hour, 150],
    [8 * hour, 130],
  ]),
];

/** The limits of a name and, where one is given, an averaging time. */
export const findLimits = (name: string, averagingMinutes?: number): readonly CarbonMonoxideLimit[] =>
  carbonMonoxideLimits.filter(
    (limit) =>
      limit.name === name && (averagingMinutes === undefined || limit.averagingMinutes === averagingMinutes),
  );

/** A limit in parts per million: as published, or from its mg/m³, of which one part per million is `mgPerPpm`. */
export const limitPpm = ({ value, unit }: CarbonMonoxideLimit, mgPerPpm: number): number =>
  unit === 'ppm' ? value : value / mgPerPpm;

/** What the WHO guidelines of 2000 are made for, in per cent: carboxyhaemoglobin that is not to be passed. */
export const whoCarboxyhaemoglobinPercent = 2.5;
