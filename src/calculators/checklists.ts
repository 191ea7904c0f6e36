import { blockAfter } from './checklist-after.ts';
import { blockBefore } from './checklist-before.ts';
import type { ChecklistBlock } from './checklist-block.ts';
import { blockDuring } from './checklist-during.ts';
import { blocksOfTools } from './checklist-tools.ts';
import type { ChecklistKind } from './checklists-form.ts';
import type { Generation } from './linkage.ts';

/** Goes up whenever a line of any list changes its meaning; a code on paper carries it. */
export const checklistVersion = '1.0';
/** The day of that version. */
export const checklistDate = '25 November 2026';

/** Which list: the kind of linkage and the number of carburettors, 2 to 8. */
export type ChecklistChoice = {
  readonly list: ChecklistKind;
  readonly generation: Generation;
  readonly carburettors: number;
};

export type ChecklistRecord = { readonly caption: string; readonly columns: readonly string[] };

export type Checklist = ChecklistChoice & {
  /** The two columns of the sheet; read down the first, then down the second. */
  readonly columns: readonly [readonly ChecklistBlock[], readonly ChecklistBlock[]];
  /** What is written in by hand at the top. */
  readonly blanks: readonly string[];
  /** A line of paper for each carburettor; the tools have none. */
  readonly record: ChecklistRecord | null;
};

const recordOf: Readonly<Record<Generation, ChecklistRecord>> = {
  'separate-cables': {
    caption: 'Record, one line per carburettor. Depression in ________',
    columns: ['idle, first', 'idle, last', 'at speed, first', 'at speed, last', 'turns left'],
  },
  'all-adjustable': {
    caption: 'Record, one line per carburettor. Depression in ________',
    columns: ['first', 'last, locked', 'turns made', 'left to close', 'left to open'],
  },
  'fixed-reference': {
    caption: 'Record, one line per carburettor. Depression in ________',
    columns: ['first', 'last, locked', 'turns made', 'left to close', 'left to open'],
  },
  'paired-screws': {
    caption: 'Record, one line per carburettor and the screw between it and the next. Depression in ________',
    columns: ['first', 'last, locked', 'turns made', 'left to close', 'left to open'],
  },
  'bypass-screws': {
    caption: 'Record, one line per throttle body. Depression in ________',
    columns: ['first', 'last', 'turns made', 'open, first', 'open, last'],
  },
};

const everyBlank = ['Engine', 'Date', 'Gauge', 'Speed (rpm)'];
const blanksOf = (generation: Generation): readonly string[] => {
  if (generation === 'fixed-reference') return [...everyBlank, 'Without adjuster: number'];
  return generation === 'bypass-screws' ? [...everyBlank, 'Left alone: number'] : everyBlank;
};

/** The list of a choice: its lines in blocks of at most ten, its blanks and its record. */
export function checklist(choice: ChecklistChoice): Checklist {
  const { list, generation, carburettors } = choice;
  if (list === 'tools') {
    const [gauge, hand, around] = blocksOfTools(generation, carburettors);
    return { ...choice, columns: [[gauge], [hand, around]], blanks: [], record: null };
  }
  return {
    ...choice,
    columns: [[blockBefore(generation)], [blockDuring(generation, carburettors), blockAfter(generation)]],
    blanks: blanksOf(generation),
    record: recordOf[generation],
  };
}
