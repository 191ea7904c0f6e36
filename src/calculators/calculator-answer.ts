import type { FormProblem } from './calculator-form.ts';
import type { ProblemWords } from './describe-problem.ts';

/** A problem, and what its sentence needs to know of the form; `sayProblem` says it. */
export type UnsaidProblem<Field extends string> = FormProblem<Field> & { readonly words: ProblemWords };

/** What a calculator answers to a form: its words and figures, or what is wrong with which field. */
export type FormAnswer<Described, Field extends string> =
  | { readonly ok: true; readonly answer: Described }
  | { readonly ok: false; readonly problems: readonly UnsaidProblem<Field>[] };

/** The problems of a form in place of an answer; `words` may differ from field to field. */
export const refuse = <Field extends string>(
  problems: readonly FormProblem<Field>[],
  words: (field: Field) => ProblemWords = () => ({}),
): FormAnswer<never, Field> => ({
  ok: false,
  problems: problems.map((each) => ({ ...each, words: words(each.field) })),
});
