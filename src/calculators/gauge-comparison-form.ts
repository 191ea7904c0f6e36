import { accuracyClasses } from './accuracy-class.ts';
import type { Form, FormField, FormFields } from './calculator-form.ts';
import { pressureUnits } from './pressure-unit-table.ts';

const text = (initially: string, longest?: number): FormField => ({
  kind: 'text',
  initially,
  ...(longest !== undefined && { longest }),
});

const choice = (initially: string, choices: readonly string[]): FormField => ({
  kind: 'choice',
  initially,
  choices,
});

/** Gauges, as the choices and the ends of the field names count them. */
export const gaugeNumbers = ['1', '2', '3', '4', '5', '6', '7', '8'] as const;
export type GaugeNumber = (typeof gaugeNumbers)[number];

const forEachGauge = <Name extends string>(
  name: Name,
  field: (gauge: GaugeNumber) => FormField,
): Readonly<Record<`${Name}${GaugeNumber}`, FormField>> =>
  Object.fromEntries(gaugeNumbers.map((gauge) => [`${name}${gauge}`, field(gauge)])) as Readonly<
    Record<`${Name}${GaugeNumber}`, FormField>
  >;

/** Longest list of one gauge: some thirty readings with their units. */
const longestList = 400;

/** Gauges after one another, all at the same moment, or two that are exchanged. */
export const comparisonWays = ['in-turn', 'together', 'abba', 'aba'] as const;
export type ComparisonWay = (typeof comparisonWays)[number];

const exampleReadings: Readonly<Partial<Record<GaugeNumber, string>>> = {
  1: '250; 255; 250',
  2: '245; 245; 240',
  3: '255; 255; 250',
  4: '275; 280; 275',
};

/**
 * The fields of the gauge comparison. Their first values are the worked example, invented: four dials of class 2.5 from 0
 * to 760 mmHg, marked every 5 mmHg, on one take-off through a branched hose, read together three times; then one on each
 * carburettor of an engine.
 */
export const gaugeComparisonFields = {
  way: choice('together', comparisonWays),
  gauges: choice('4', gaugeNumbers.slice(1)),
  unit: choice(
    'mmHg',
    pressureUnits.map(({ id }) => id),
  ),
  ...forEachGauge('readings', (gauge) => text(exampleReadings[gauge] ?? '', longestList)),
  swap: text('250; 262.5; 263.5; 253', longestList),
  reference: choice('mean', ['mean', ...gaugeNumbers]),
  resolution: text('5'),
  flutter: text('3'),
  ...forEachGauge('class', (gauge) =>
    choice(gauge in exampleReadings ? '2.5' : 'none', ['none', ...accuracyClasses.map(String)]),
  ),
  ...forEachGauge('span', (gauge) => text(gauge in exampleReadings ? '0..760' : '')),
  engine: text('1: 212, 2: 248, 3: 251, 4: 187', 2000),
} satisfies FormFields<string>;

export type GaugeField = keyof typeof gaugeComparisonFields;
export type GaugeForm = Form<GaugeField>;
