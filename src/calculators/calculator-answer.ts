import type { FormProblem } from './calculator-form.ts';
import { describeProblem } from './describe-problem.ts';
import type { ProblemWords } from './describe-problem.ts';

/** A problem with the words that stand beside its field. */
export type SaidProblem<Field extends string> = FormProblem<Field> & { readonly sentence: string };

/** What a calculator answers to a form: its words and figures, or what is wrong with which field. */
export type FormAnswer<Described, Field extends string> =
  | { readonly ok: true; readonly answer: Described }
  | { readonly ok: false; readonly problems: readonly SaidProblem<Field>[] };

/** The problems of a form with their words; `words` may differ from field to field. */
export const sayProblems = <Field extends string>(
  problems: readonly FormProblem<Field>[],
  words: (field: Field) => ProblemWords = () => ({}),
): FormAnswer<never, Field> => ({
  ok: false,
  problems: problems.map((each) => ({
    ...each,
    sentence: describeProblem(each.problem, words(each.field)),
  })),
});
