import type { FormField, FormFields } from './calculator-form.ts';
import { carburettorLimit } from './check-session.ts';
import { generations } from './linkage.ts';

/** The adjusters that a form can hold. */
export const adjusterNumbers = [1, 2, 3, 4, 5, 6, 7, 8] as const satisfies {
  readonly length: (typeof carburettorLimit)['max'];
};
type AdjusterNumber = (typeof adjusterNumbers)[number];

const text = (initially: string): FormField => ({ kind: 'text', initially });
const choice = (choices: readonly string[], initially: string): FormField => ({
  kind: 'choice',
  initially,
  choices,
});

/** The worked example, invented: four adjusters M5 on a ganged set, all with a fair plan, one near the end of its thread. */
const exampleAdjusters: readonly (readonly [closing: string, opening: string, planned: string])[] = [
  ['5.1', '0.6', '1/2'],
  ['4.3', '1.4', '0'],
  ['4.7', '1', '-1/4'],
  ['5.5', '0.2', '3/4'],
];
const adjusterField = (position: number, column: 0 | 1 | 2): FormField =>
  text(exampleAdjusters[position]?.[column] ?? '');

type Column = 'closing' | 'opening' | 'planned';
const columns = (name: Column, column: 0 | 1 | 2): Record<`${Column}${AdjusterNumber}`, FormField> =>
  Object.fromEntries(
    adjusterNumbers.map((number, position) => [`${name}${number}`, adjusterField(position, column)]),
  ) as Record<`${Column}${AdjusterNumber}`, FormField>;

/** What the page asks. Fields of adjusters that are not there stay as they are. */
export const threadTravelBudgetFields = {
  generation: choice(generations, 'all-adjustable'),
  adjusters: choice(adjusterNumbers.map(String), '4'),
  /** From the tables, or measured over several turns. */
  threadFrom: choice(['table', 'measured'], 'table'),
  thread: text('M5'),
  pitchTurns: text('10'),
  pitchTravel: text('8 mm'),
  starts: choice(['1', '2', '3'], '1'),
  /** `lengths`: thread that shows, measured. `turns`: turns counted to the end, which then needs neither nut nor engagement. */
  showing: choice(['lengths', 'turns'], 'lengths'),
  comesOut: choice(['opening', 'closing'], 'opening'),
  engagement: text('6 mm'),
  minimum: text(''),
  nut: choice(['none', 'thin', 'regular', 'measured'], 'thin'),
  nutHeight: text(''),
  nutAt: choice(['head', 'tip'], 'head'),
  ...columns('closing', 0),
  ...columns('opening', 1),
  ...columns('planned', 2),
  idle: choice(['known', 'unknown'], 'known'),
  idleThreadFrom: choice(['table', 'measured'], 'table'),
  idleThread: text('M6'),
  idlePitchTurns: text('10'),
  idlePitchTravel: text('10 mm'),
  idleClosing: text('4'),
  idleOpening: text('4'),
  idleRatio: text(''),
} satisfies FormFields<string>;

export type ThreadTravelBudgetField = keyof typeof threadTravelBudgetFields;
