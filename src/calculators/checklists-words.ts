import type { FormAnswer } from './calculator-answer.ts';
import { refuse } from './calculator-answer.ts';
import { formReader } from './calculator-form.ts';
import type { FormResult } from './calculator-form.ts';
import { checklist, checklistDate, checklistVersion } from './checklists.ts';
import type { Checklist, ChecklistChoice } from './checklists.ts';
import { checklistFields, checklistKinds, noteLinesLimit } from './checklists-form.ts';
import type { ChecklistField, ChecklistForm } from './checklists-form.ts';
import { generations } from './linkage.ts';
import type { Generation } from './linkage.ts';
import { numberInWords } from './number-in-words.ts';
import { parseChoice } from './parse-choice.ts';
import { plainLine, plainLines } from './plain-text.ts';

export type ChecklistTyped = ChecklistChoice & {
  /** A club’s own heading and notes, as plain text; empty where there are none. */
  readonly heading: string;
  readonly notes: readonly string[];
  readonly printed: string;
};

export type DescribedChecklist = Checklist & {
  /** Under this name the ticks are kept: `all-adjustable-4`. */
  readonly id: string;
  /** What the list is for: “Four carburettors, an adjuster on each”. */
  readonly title: string;
  /** The club’s heading, or the title. */
  readonly heading: string;
  readonly hasOwnHeading: boolean;
  readonly notes: readonly string[];
  /** `all-adjustable, 4, version 1.0, 25 November 2026`, in parts. */
  readonly name: string;
  readonly edition: string;
  /** Said where the paper that led here is of another version. */
  readonly otherEdition: string | null;
  readonly announcement: string;
};

const kindWords: Readonly<Record<Generation, string>> = {
  'separate-cables': 'each on its own cable',
  'all-adjustable': 'an adjuster on each',
  'fixed-reference': 'one without an adjuster',
  'paired-screws': 'screws between neighbours',
  'bypass-screws': 'an air screw each',
};

/** “Four carburettors, an adjuster on each”. */
export function checklistTitle({ list, generation, carburettors }: ChecklistChoice): string {
  const count = numberInWords(carburettors);
  const what = generation === 'bypass-screws' ? 'throttle bodies' : 'carburettors';
  const title = `${count} ${what}, ${kindWords[generation]}`;
  return list === 'tools' ? `Tools for ${title}` : title.charAt(0).toUpperCase() + title.slice(1);
}

/** The form as a choice and plain words. Problems: unknown-choice, too-long. */
export function parseChecklists(form: ChecklistForm): FormResult<ChecklistTyped, ChecklistField> {
  const { problems, take, blame } = formReader<ChecklistField>();
  const list = take('list', parseChoice(form.list, checklistKinds, 'list'));
  const generation = take('generation', parseChoice(form.generation, generations, 'generation'));
  const carburettors = take(
    'carburettors',
    parseChoice(form.carburettors, checklistFields.carburettors.choices, 'carburettors'),
  );
  const heading = plainLine(form.heading);
  const notes = plainLines(form.notes, noteLinesLimit);
  const written = { heading, notes: notes.join('\n') };
  for (const field of ['heading', 'notes'] as const) {
    const value = written[field].length;
    const max = checklistFields[field].longest;
    if (value > max) blame(field, { kind: 'too-long', field, value, limit: { max } });
  }
  if (list === undefined || generation === undefined || carburettors === undefined || problems.length > 0)
    return { ok: false, problems };
  const choice = { list, generation, carburettors: Number(carburettors) };
  return { ok: true, value: { ...choice, heading, notes, printed: plainLine(form.printed) } };
}

/** A list with every word on its sheet. */
export function describeChecklist(typed: ChecklistTyped): DescribedChecklist {
  const { list, generation, carburettors, heading, notes, printed } = typed;
  const title = checklistTitle(typed);
  const tools = list === 'tools' ? 'tools, ' : '';
  return {
    ...checklist({ list, generation, carburettors }),
    id: `${list === 'tools' ? 'tools-' : ''}${generation}-${carburettors}`,
    title,
    heading: heading === '' ? title : heading,
    hasOwnHeading: heading !== '',
    notes,
    name: `${tools}${generation}, ${carburettors}`,
    edition: `version ${checklistVersion}, ${checklistDate}`,
    otherEdition:
      printed === '' || printed === checklistVersion
        ? null
        : `The paper that led here is version “${printed}” of this list; this is version ${checklistVersion}. Use the newer of the two.`,
    announcement: `The link opens the list “${title}”.`,
  };
}

/** A list for a form, or what is wrong with its fields in words. */
export function answerChecklists(form: ChecklistForm): FormAnswer<DescribedChecklist, ChecklistField> {
  const parsed = parseChecklists(form);
  return parsed.ok
    ? { ok: true, answer: describeChecklist(parsed.value) }
    : refuse<ChecklistField>(parsed.problems);
}
