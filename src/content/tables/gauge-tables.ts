import {
  accuracyClasses,
  answerFlutterAndRepeats,
  flutterAndRepeatsFields,
  flutterConfidence,
  formatExact,
  formatFixed,
  formatSignificant,
  initialForm,
  inUnit,
  pascalsOf,
  permissibleError,
  pressureUnit,
  readingsNeeded,
  standardUncertaintyOf,
  type FlutterField,
} from '../../calculators/index.ts';
import { valueOf } from '../value-of.ts';
import { noFigure, type DataTable } from './data-table.ts';

const unit = pressureUnit('mmHg');
const pascals = (figure: number): number => pascalsOf(figure, unit);
const mmHg = (pressurePa: number): string => formatSignificant(inUnit(pressurePa, unit), 2);

/** Scales that vacuum gauges have: one bar, and thirty inches of mercury. */
const scales = [
  { heading: 'on a scale of 1 bar', spanPa: pressureUnit('bar').pascals, shownIn: 'kPa' },
  {
    heading: 'on a scale of 30 inHg',
    spanPa: pascalsOf(30, pressureUnit('inHg')),
    shownIn: 'inHg',
  },
] as const;

export const accuracyClassErrors: DataTable = {
  caption: 'Accuracy classes of EN 837-1, and how far a gauge of each may be off, either way.',
  columns: [
    { heading: 'class' },
    { heading: '± of the span', unit: '%' },
    ...scales.flatMap(({ heading, shownIn }) => [
      { heading: `± ${heading}`, unit: pressureUnit(shownIn).symbol },
      { heading: `± ${heading}`, unit: unit.symbol },
    ]),
    { heading: 'standard uncertainty on 1 bar', unit: unit.symbol },
  ],
  rows: accuracyClasses.map((accuracyClass) => {
    const errorPa = (spanPa: number): number => valueOf(permissibleError(accuracyClass, spanPa));
    return {
      cells: [
        formatExact(accuracyClass),
        formatExact(accuracyClass),
        ...scales.flatMap(({ spanPa, shownIn }) => [
          formatSignificant(inUnit(errorPa(spanPa), pressureUnit(shownIn)), 2),
          mmHg(errorPa(spanPa)),
        ]),
        mmHg(standardUncertaintyOf('rectangular', errorPa(scales[0].spanPa))),
      ],
      sources: ['en837', 'gum'],
    };
  }),
};

const steps = [1, 2, 5];
const swings = [1, 2, 3, 5, 10];
const differences = [2, 5, 10, 20];

export const readingsForADifference: DataTable = {
  caption: 'Readings of each of two carburettors that tell a difference apart at 95 %, by step and swing.',
  columns: [
    { heading: 'step', unit: unit.symbol },
    { heading: 'swing each way', unit: unit.symbol },
    ...differences.map((difference) => ({ heading: `for ${difference} ${unit.symbol}` })),
  ],
  rows: steps.flatMap((step) =>
    swings.map((swing) => ({
      cells: [
        formatExact(step),
        formatExact(swing),
        ...differences.map((difference) => {
          const needed = readingsNeeded(
            {
              scatterPa: standardUncertaintyOf('rectangular', pascals(swing)),
              resolutionPa: pascals(step),
            },
            pascals(difference),
            { confidence: flutterConfidence },
          );
          return needed.ok ? formatFixed(needed.value, 0) : noFigure;
        }),
      ],
      sources: ['nist-handbook', 'gum'],
    })),
  ),
};

const settlingTimes = ['0.1', '0.2', '0.5', '1', '2', '3', '5'];
const speeds = ['1000', '2000', '2500'];

/** A figure of the calculator for its worked example, with some fields changed. */
export function flutterFigure(changed: Partial<Record<FlutterField, string>>, id: string): string {
  const answered = answerFlutterAndRepeats({ ...initialForm(flutterAndRepeatsFields), ...changed });
  if (!answered.ok) throw new Error(`no answer: ${JSON.stringify(answered.problems)}`);
  const { needle, waits, uncertainties, readings } = answered.answer;
  const line = [...needle, ...waits, ...uncertainties, ...readings].find((each) => each.id === id);
  if (line === undefined) throw new Error(`no figure “${id}”`);
  return line.text;
}

const withoutUnit = (text: string): string => text.split('\u00a0')[0] ?? '';

export const swingAfterDamping: DataTable = {
  caption: 'What the damping leaves of the swing of one take-off, by the time in which the needle settles.',
  columns: [
    { heading: 'settles in', unit: 's' },
    ...speeds.map((rpm) => ({ heading: `left at ${rpm} rpm`, unit: '%' })),
  ],
  rows: settlingTimes.map((seconds) => ({
    cells: [
      seconds,
      ...speeds.map((rpm) => withoutUnit(flutterFigure({ rpm, damping: `${seconds} s` }, 'share'))),
    ],
    sources: ['doebelin'],
  })),
};
