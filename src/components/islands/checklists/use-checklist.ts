import { useLayoutEffect, useState } from 'preact/hooks';
import {
  checklistFields,
  describeProblem,
  initialForm,
  isChecklistLink,
  namesChecklist,
  parseChecklistLink,
} from '../../../calculators/index.ts';
import type { ChecklistForm, Problem } from '../../../calculators/index.ts';
import { readFragment } from '../../../device/fragment.ts';

const labels: Readonly<Record<string, string>> = {
  heading: 'Heading of this link',
  notes: 'Notes of this link',
};
const choices = ['list', 'generation', 'carburettors'];

export type OpenedChecklist = {
  readonly form: ChecklistForm;
  /** Whether the address names a list; the example stands in its place otherwise. */
  readonly opened: boolean;
  /** What is wrong with the address. */
  readonly notices: readonly string[];
  /** Whether the page runs: the server draws no code, as it does not know the address. */
  readonly running: boolean;
  /** Whether it was chosen on this page, not with the address that opened it. */
  readonly chosenHere: boolean;
};

const example: OpenedChecklist = {
  form: initialForm(checklistFields),
  opened: false,
  notices: [],
  running: false,
  chosenHere: false,
};

const fieldOf = (problem: Problem): string => ('field' in problem ? (problem.field ?? '') : '');

/** What an address says. A problem with the choice of the list opens none, lest it be the wrong one. */
function read(record: Readonly<Record<string, string>>, chosenHere: boolean): OpenedChecklist {
  const parsed = parseChecklistLink(record);
  const said = (problem: Problem) =>
    describeProblem(problem, { label: labels[fieldOf(problem)] ?? 'This link' });
  if (!parsed.ok) return { ...example, running: true, notices: [said(parsed.problem)] };
  const { form, problems, unknownKeys } = parsed.value;
  const isWrong = problems.some((problem) => choices.includes(fieldOf(problem)));
  const opened = !isWrong && namesChecklist(record);
  const notices = [
    ...problems.map(said),
    ...unknownKeys.map((key) => `This link: “${key.slice(0, 20)}” is not known here and was ignored.`),
    ...(opened ? [] : ['This link names no list that is here: choose one below.']),
  ];
  return { form: opened ? form : example.form, opened, notices, running: true, chosenHere };
}

/** The list that the address names. */
export function useChecklist(): OpenedChecklist {
  const [state, setState] = useState(example);
  useLayoutEffect(() => {
    const readAddress = (change?: Event): void => {
      const record = readFragment();
      if (isChecklistLink(record)) setState(read(record, change !== undefined));
      // A place on the page, as of the link that skips to the text, leaves an opened list as it is.
      else
        setState((now) =>
          location.hash.length > 1 ? { ...now, running: true } : { ...example, running: true },
        );
    };
    readAddress();
    addEventListener('hashchange', readAddress);
    return () => removeEventListener('hashchange', readAddress);
  }, []);
  return state;
}
