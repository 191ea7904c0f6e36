import type { UnsaidProblem } from './calculator-answer.ts';
import type { FormProblem } from './calculator-form.ts';
import { describeProblem, describeReadings } from './describe-problem.ts';

/** A problem with the words that stand beside its field. */
export type SaidProblem<Field extends string> = FormProblem<Field> & {
  readonly sentence: string;
  /** For the buttons that ask how a comma is meant. */
  readonly readings?: ReturnType<typeof describeReadings>;
};

/** The words of a problem. A page need not have them before somebody errs, so that nothing else here asks for them. */
export const sayProblem = <Field extends string>({
  field,
  problem,
  words,
}: UnsaidProblem<Field>): SaidProblem<Field> => ({
  field,
  problem,
  sentence: describeProblem(problem, words),
  ...(problem.kind === 'ambiguous-number' && { readings: describeReadings(problem.readings) }),
});
