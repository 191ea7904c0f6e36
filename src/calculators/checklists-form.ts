import type { Form, FormFields } from './calculator-form.ts';
import { generations } from './linkage.ts';

/** The work itself, or what is laid out for it. */
export const checklistKinds = ['work', 'tools'] as const;
export type ChecklistKind = (typeof checklistKinds)[number];

/** Numbers of carburettors that there are lists for, as they are chosen. */
export const checklistNumbers = ['2', '3', '4', '5', '6', '7', '8'] as const;

/** Longest words of a club, in characters: one sheet holds them, and a code can carry them. */
export const headingLimit = 60;
export const notesLimit = 240;
/** Lines of a club’s notes. */
export const noteLinesLimit = 6;

/** Longest name of a version on paper, in characters. */
export const printedLimit = 5;

/** A list as it is asked for. The example is the commonest kind; heading and notes are a club’s own. */
export const checklistFields = {
  list: { kind: 'choice', initially: 'work', choices: checklistKinds },
  generation: { kind: 'choice', initially: 'all-adjustable', choices: generations },
  carburettors: { kind: 'choice', initially: '4', choices: checklistNumbers },
  heading: { kind: 'text', initially: '', longest: headingLimit },
  notes: { kind: 'text', initially: '', longest: notesLimit },
  /** Version of the paper whose code was read. */
  printed: { kind: 'text', initially: '', longest: printedLimit },
} as const satisfies FormFields<string>;

export type ChecklistField = keyof typeof checklistFields;
export type ChecklistForm = Form<ChecklistField>;
