import { refuse } from './calculator-answer.ts';
import type { FormAnswer } from './calculator-answer.ts';
import type { ConversionTable } from './conversion-table.ts';
import { formatPressure } from './format-pressure.ts';
import { parseMeasure } from './parse-measure.ts';
import { parseConversion, usualUnitIn } from './unit-converter-form.ts';
import type { ConversionForm, UnitConverterField } from './unit-converter-form.ts';
import { describeMeasure } from './unit-converter-measures.ts';
import { converterMeasures } from './unit-converter-quantities.ts';
import type { ConverterMeasureName } from './unit-converter-quantities.ts';
import { describeConversions } from './unit-converter-words.ts';
import { computeConversions } from './unit-converter.ts';

type Answer = FormAnswer<ConversionTable, UnitConverterField>;

/** What the converter answers to its form: a table of all units, or a sentence beside each field that has a problem. */
export const answerUnitConverter = (form: ConversionForm): Answer =>
  form.quantity === 'pressure'
    ? answerPressure(form)
    : answerMeasure(form, form.quantity as ConverterMeasureName);

function answerMeasure(form: ConversionForm, name: ConverterMeasureName): Answer {
  const measure = parseMeasure(form.typed, converterMeasures[name].family, usualUnitIn(form), 'typed');
  return measure.ok
    ? { ok: true, answer: describeMeasure(measure.value, name) }
    : refuse([{ field: 'typed', problem: measure.problem }]);
}

function answerPressure(form: ConversionForm): Answer {
  const question = parseConversion(form);
  if (!question.ok)
    return refuse(question.problems, (field) => (field === 'ambient' ? { typed: form.ambient } : {}));
  const conversions = computeConversions(question.value);
  if (conversions.ok) return { ok: true, answer: describeConversions(conversions.value) };
  const unit = question.value.pressure.unit.id;
  return refuse([{ field: 'typed', problem: conversions.problem }], () => ({
    formatPressure: (pascals) => formatPressure(pascals, unit),
  }));
}
