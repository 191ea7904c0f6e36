import type { Form, FormFields, FormResult } from './calculator-form.ts';
import { formReader, initialForm } from './calculator-form.ts';
import { parseAmbient } from './parse-ambient.ts';
import { parsePressure } from './parse-pressure.ts';
import { unitTextOf, withoutUnit } from './parse-quantity.ts';
import { pressureUnits } from './pressure-unit-table.ts';
import { pressureUnit } from './pressure-units.ts';
import { converterQuantities, familyOf, findUnit, usualUnitOf } from './unit-converter-quantities.ts';
import type { ConverterQuantity } from './unit-converter-quantities.ts';
import { pressureKinds } from './unit-converter.ts';
import type { ConversionQuestion, PressureKind } from './unit-converter.ts';

/** The fields of the converter. Their first values are the worked example of the page. */
export const unitConverterFields = {
  quantity: { kind: 'choice', initially: 'pressure', choices: converterQuantities },
  typed: { kind: 'text', initially: '9 inHg' },
  /** Id of the unit that a number without a unit is in. */
  usualUnit: { kind: 'choice', initially: 'inHg', choices: pressureUnits.map(({ id }) => id) },
  /** What a pressure is counted from. */
  kind: { kind: 'choice', initially: 'depression', choices: pressureKinds },
  ambient: { kind: 'text', initially: '101.325 kPa' },
} as const satisfies FormFields<string>;

export type UnitConverterField = keyof typeof unitConverterFields;
export type ConversionForm = Form<UnitConverterField>;

export const unitConverterExample: ConversionForm = initialForm(unitConverterFields);

/** The units that a quantity is shown in. */
export const unitsOf = (quantity: string): readonly { readonly id: string; readonly symbol: string }[] =>
  familyOf(quantity)?.units ?? pressureUnits;

/** The unit of a number without one: that of the form, unless it belongs to another quantity. */
export const usualUnitIn = ({ quantity, usualUnit }: ConversionForm): string =>
  unitsOf(quantity).some(({ id }) => id === usualUnit) ? usualUnit : usualUnitOf(quantity);

/**
 * Reads the form of a pressure; an ambient pressure comes into it unless a difference is asked for.
 * Problems: those of `parsePressure` and `parseAmbient`.
 */
export function parseConversion(form: ConversionForm): FormResult<ConversionQuestion, UnitConverterField> {
  const { problems, take } = formReader<UnitConverterField>();
  const kind = form.kind as PressureKind;
  const pressure = take('typed', parsePressure(form.typed, pressureUnit(usualUnitIn(form)), 'typed'));
  const ambientPa = take('ambient', parseAmbient(kind === 'difference' ? '' : form.ambient));
  return pressure === undefined || ambientPa === undefined
    ? { ok: false, problems }
    : { ok: true, value: { pressure, kind, ambientPa } };
}

/** The form with the unit that was typed as the usual one, so that it stays when only a number is typed next. */
export function keepTypedUnit(form: ConversionForm): ConversionForm {
  const unitText = unitTextOf(form.typed);
  const unit = unitText === '' ? null : findUnit(unitText, form.quantity);
  return unit === null ? form : { ...form, usualUnit: unit.id };
}

/** The form with another unit in the place of one that was typed. */
const withUnit = (form: ConversionForm, usualUnit: string): ConversionForm => ({
  ...form,
  usualUnit,
  typed: withoutUnit(form.typed) || form.typed,
});

/** The form after a change by the reader: of one field, on which others follow. */
export function changedConversion(form: ConversionForm, part: Partial<ConversionForm>): ConversionForm {
  if (part.quantity !== undefined) return withQuantity(form, part.quantity as ConverterQuantity);
  if (part.usualUnit !== undefined) return withUnit(form, part.usualUnit);
  const changed = { ...form, ...part };
  return part.typed === undefined ? changed : keepTypedUnit(changed);
}

/** The form for another quantity: the number stays, and its unit too if the quantity has such a one. */
function withQuantity(form: ConversionForm, quantity: ConverterQuantity): ConversionForm {
  const asked = { ...form, quantity, usualUnit: usualUnitOf(quantity) };
  const kept = keepTypedUnit(asked);
  return kept === asked ? withUnit(asked, asked.usualUnit) : kept;
}
