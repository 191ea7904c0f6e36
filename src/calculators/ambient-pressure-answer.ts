import type { AmbientPressureField } from './ambient-pressure-form.ts';
import { computeAmbientPressure } from './ambient-pressure.ts';
import { describeAmbientPressure } from './ambient-pressure-words.ts';
import type { AmbientPressureDescribed } from './ambient-pressure-words.ts';
import { refuse } from './calculator-answer.ts';
import type { FormAnswer } from './calculator-answer.ts';
import type { Form } from './calculator-form.ts';
import { formatPressure } from './format-pressure.ts';
import { parseAmbientPressure } from './parse-ambient-pressure.ts';
import { valueOfChecked } from './value-of-checked.ts';

/** Reads the form, computes and describes; or says what is wrong with which field. */
export function answerAmbientPressure(
  form: Form<AmbientPressureField>,
): FormAnswer<AmbientPressureDescribed, AmbientPressureField> {
  const words = (field: AmbientPressureField) => ({
    typed: form[field],
    formatPressure: (pascals: number) => formatPressure(pascals, field === 'reading' ? 'mmHg' : 'hPa'),
  });
  const parsed = parseAmbientPressure(form);
  if (!parsed.ok) return refuse(parsed.problems, words);
  // The bounds of the fields keep every place within the standard atmosphere, and every reading below its air.
  const answer = valueOfChecked(computeAmbientPressure(parsed.value));
  return { ok: true, answer: describeAmbientPressure(parsed.value, answer) };
}
