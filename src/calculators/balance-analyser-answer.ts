import { analyseBalance } from './balance-analyser.ts';
import type { BalanceAnalyserField, BalanceAnalyserForm } from './balance-analyser-form.ts';
import { describeBalance } from './balance-analyser-words.ts';
import type { DescribedBalance } from './balance-analyser-words.ts';
import { refuse } from './calculator-answer.ts';
import type { FormAnswer } from './calculator-answer.ts';
import { formatPressure } from './format-pressure.ts';
import { parseBalanceAnalyser } from './parse-balance-analyser.ts';

/** From the form as typed to the words of the answer, or to every problem beside its field. */
export function answerBalanceAnalyser(
  form: BalanceAnalyserForm,
): FormAnswer<DescribedBalance, BalanceAnalyserField> {
  const words = (field: BalanceAnalyserField) => ({
    // Of a list the whole would be quoted, and not the reading that is wrong.
    ...(field !== 'readings' && { typed: form[field] }),
    formatPressure: (pascals: number) => formatPressure(pascals, field === 'ambient' ? 'kPa' : form.unit),
  });
  const parsed = parseBalanceAnalyser(form);
  if (!parsed.ok) return refuse(parsed.problems, words);
  const analysis = analyseBalance(parsed.value.given);
  // The form has checked the rest.
  if (!analysis.ok) return refuse([{ field: 'speedEffect', problem: analysis.problem }], words);
  return { ok: true, answer: describeBalance(parsed.value, analysis.value, form.readings) };
}
