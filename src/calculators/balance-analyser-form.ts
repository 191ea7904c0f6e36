import type { Form, FormField, FormFields } from './calculator-form.ts';
import { generations } from './linkage.ts';
import { pressureUnits } from './pressure-unit-table.ts';

const text = (initially: string, longest?: number): Extract<FormField, { kind: 'text' }> => ({
  kind: 'text',
  initially,
  ...(longest !== undefined && { longest }),
});

const choice = (initially: string, choices: readonly string[]): Extract<FormField, { kind: 'choice' }> => ({
  kind: 'choice',
  initially,
  choices,
});

const numbers = ['1', '2', '3', '4', '5', '6', '7', '8'] as const;

/**
 * The fields of the balance analyser. Their first values are the worked example, invented: four carburettors of which
 * the second has no adjuster, read once each, the second again at the end so that the drift shows. The gauge is marked
 * every 5 mmHg and swings by 3 mmHg either way.
 *
 * `readings` holds what `parseReadings` takes, in the order in which they were taken: `2: 248, 1: 212 @ 2150`.
 * `offsetUncertainty` is the ± at 95 % of each gauge’s correction, where every carburettor has a gauge of its own.
 * `speedEffect` is what a reading gains with 100 rpm more. The rest is as in the set-up of the bench session.
 */
export const balanceAnalyserFields = {
  readings: text('2: 248, 1: 212, 3: 251, 4: 187, 2: 252', 2000),
  unit: choice(
    'mmHg',
    pressureUnits.map(({ id }) => id),
  ),
  carburettors: choice('4', numbers.slice(1)),
  generation: choice('fixed-reference', generations),
  fixed: choice('2', ['none', ...numbers]),
  groups: text(''),
  tolerance: text('20'),
  resolution: text('5'),
  flutter: text('3'),
  offsetUncertainty: text(''),
  drift: choice('ends', ['ends', 'none', ...numbers]),
  rpm: text('2100'),
  speedEffect: text(''),
  ambient: text('101.325 kPa'),
  confidence: text('95'),
} satisfies FormFields<string>;

export type BalanceAnalyserField = keyof typeof balanceAnalyserFields;
export type BalanceAnalyserForm = Form<BalanceAnalyserField>;
