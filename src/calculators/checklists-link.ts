import { calculatorLinkVersion, parseCalculatorLink } from './calculator-link.ts';
import type { CalculatorLink } from './calculator-link.ts';
import { checklistFields, noteLinesLimit } from './checklists-form.ts';
import type { ChecklistField, ChecklistForm } from './checklists-form.ts';
import { plainLine, plainLines } from './plain-text.ts';
import { succeed } from './result.ts';
import type { Result } from './result.ts';

/** Keys of a link, as `#v=1&g=paired-screws&n=4&h=Spring+evening`: short, so that a code of it stays coarse. */
const fieldOfKey: ReadonlyMap<string, ChecklistField> = new Map([
  ['l', 'list'],
  ['g', 'generation'],
  ['n', 'carburettors'],
  ['h', 'heading'],
  ['t', 'notes'],
  ['p', 'printed'],
]);

/** Whether the keys of an address are about a list at all. */
export const isChecklistLink = (record: Readonly<Record<string, string>>): boolean =>
  Object.keys(record).some((key) => key === 'v' || fieldOfKey.has(key));

/** Whether they say which list. */
export const namesChecklist = (record: Readonly<Record<string, string>>): boolean =>
  Object.hasOwn(record, 'g') && Object.hasOwn(record, 'n');

/** A club’s words as plain text; what chooses a list stays to the letter. */
const plain = (field: ChecklistField, text: string): string => {
  if (field === 'notes') return plainLines(text, noteLinesLimit).join('\n');
  return field === 'heading' || field === 'printed' ? plainLine(text) : text;
};

/** Reads the keys of a link. Problems: newer-version; and one by one unknown-choice and too-long. */
export function parseChecklistLink(
  record: Readonly<Record<string, string>>,
): Result<CalculatorLink<ChecklistField>> {
  const known = [...fieldOfKey].flatMap(([key, field]) =>
    Object.hasOwn(record, key) ? [[field, plain(field, record[key]!)] as const] : [],
  );
  const version = Object.entries(record).filter(([key]) => key === 'v');
  const read = parseCalculatorLink(checklistFields, Object.fromEntries([...version, ...known]));
  if (!read.ok) return read;
  const unknownKeys = Object.keys(record).filter((key) => key !== 'v' && !fieldOfKey.has(key));
  return succeed({ ...read.value, unknownKeys });
}

/** The keys of a link to a list: which list always, a club’s words if there are any. */
export function writeChecklistLink(form: ChecklistForm): Readonly<Record<string, string>> {
  const written = [...fieldOfKey].flatMap(([key, field]) => {
    const text = plain(field, form[field]);
    const isSaid = field === 'generation' || field === 'carburettors';
    return isSaid || text !== checklistFields[field].initially ? [[key, text] as const] : [];
  });
  return { v: String(calculatorLinkVersion), ...Object.fromEntries(written) };
}

/**
 * The longest address that a code on the sheet carries: 85 modules a side at level M (ISO/IEC 18004, version 17: 504
 * bytes), so that a module of the printed code is about a third of a millimetre wide.
 */
export const codeLengthLimit = 504;

/** What the code on the sheet says: the address with the club’s words, or without them where they make it too fine. */
export const checklistCode = (
  whole: string,
  withoutWords: string,
): { readonly text: string; readonly whole: boolean } =>
  whole.length <= codeLengthLimit ? { text: whole, whole: true } : { text: withoutWords, whole: false };
