import { refuse } from './calculator-answer.ts';
import type { FormAnswer } from './calculator-answer.ts';
import type { Form } from './calculator-form.ts';
import { formatPressure } from './format-pressure.ts';
import type { LiquidColumnField } from './liquid-column-form.ts';
import { computeLiquidColumn } from './liquid-column.ts';
import { describeLiquidColumn } from './liquid-column-words.ts';
import type { LiquidColumnDescribed } from './liquid-column-words.ts';
import { parseLiquidColumn } from './parse-liquid-column.ts';

/** Reads the form, computes and describes; or says what is wrong with which field. */
export function answerLiquidColumn(
  form: Form<LiquidColumnField>,
): FormAnswer<LiquidColumnDescribed, LiquidColumnField> {
  const parsed = parseLiquidColumn(form);
  if (parsed.ok)
    return { ok: true, answer: describeLiquidColumn(parsed.value, computeLiquidColumn(parsed.value)) };
  return refuse(parsed.problems, (field) => ({
    typed: form[field],
    formatPressure: (pascals) => formatPressure(pascals, 'mmHg'),
  }));
}
