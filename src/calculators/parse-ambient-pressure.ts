import {
  ambientPressureLimits,
  ambientSources,
  heightKinds,
  otherPlaceKinds,
} from './ambient-pressure-form.ts';
import type { AmbientPressureField } from './ambient-pressure-form.ts';
import { ambientPressure } from './ambient-pressure.ts';
import type { AmbientPlace, AmbientQuestion } from './ambient-pressure.ts';
import type { Form, FormResult } from './calculator-form.ts';
import type { DecimalMark } from './format-number.ts';
import { parseChoice } from './parse-choice.ts';
import type { PressureUnit } from './pressure-unit.ts';
import type { Height } from './standard-atmosphere.ts';
import { typedFields } from './typed-fields.ts';
import { valueOfChecked } from './value-of-checked.ts';

export type AmbientTyped = AmbientQuestion & {
  /** The unit of the reading; null if there is none. */
  readonly unit: PressureUnit | null;
  readonly mark: DecimalMark;
};

type Field = AmbientPressureField;
type Fields = ReturnType<typeof typedFields<Field>>;

/**
 * Reads what applies; an empty reading is none. Numbers without a unit: metres, hectopascals, and mmHg for the reading.
 * Problems: those of the parsers; `measure-out-of-range`; `out-of-range`; `depression-beyond-ambient` of the reading.
 */
export function parseAmbientPressure(form: Form<Field>): FormResult<AmbientTyped, Field> {
  const fields = typedFields(form);
  const place = parsePlace(form, fields);
  const reading = form.reading.trim() === '' ? null : parseReading(form, fields);
  if (place === undefined || reading === undefined) return { ok: false, problems: fields.problems };
  return {
    ok: true,
    value: { place, reading, unit: reading?.unit ?? null, mark: fields.mark() },
  };
}

function parsePlace(form: Form<Field>, fields: Fields): AmbientPlace | undefined {
  const from = fields.take('from', parseChoice(form.from, ambientSources, 'from'));
  if (from === undefined) return undefined;
  if (from === 'barometer') {
    const barometer = fields.pressure('barometer', 'hPa', ambientPressureLimits.barometerPa);
    return barometer && { from, stationPa: barometer.pascals };
  }
  const height = parseHeight('altitude', form, fields);
  const setting =
    from === 'setting' ? fields.pressure('setting', 'hPa', ambientPressureLimits.settingPa) : null;
  if (height === undefined || setting === undefined) return undefined;
  return setting === null
    ? { from: 'altitude', height }
    : { from: 'setting', height, settingPa: setting.pascals };
}

function parseHeight(
  field: 'altitude' | 'otherAltitude',
  form: Form<Field>,
  fields: Fields,
): Height | undefined {
  const kind = fields.take('altitudeIs', parseChoice(form.altitudeIs, heightKinds, 'altitudeIs'));
  const metres = fields.measure(field, ambientPressureLimits.altitude);
  if (kind === undefined || metres === undefined) return undefined;
  return kind === 'geometric' ? { geometricM: metres } : { geopotentialM: metres };
}

function parseReading(
  form: Form<Field>,
  fields: Fields,
): (NonNullable<AmbientQuestion['reading']> & { readonly unit: PressureUnit }) | undefined {
  const place = parseOtherPlace(form, fields);
  const reading = fields.pressure('reading', 'mmHg', { above: 0 });
  if (place === undefined || reading === undefined) return undefined;
  const there = valueOfChecked(ambientPressure(place));
  const { pascals, unit } = reading;
  if (pascals <= there) return { depressionPa: pascals, place, unit };
  const limit = { min: 0, max: there };
  fields.blame('reading', { kind: 'depression-beyond-ambient', depressionPa: pascals, limit });
  return undefined;
}

function parseOtherPlace(form: Form<Field>, fields: Fields): AmbientPlace | undefined {
  const kind = fields.take('otherPlace', parseChoice(form.otherPlace, otherPlaceKinds, 'otherPlace'));
  if (kind === undefined) return undefined;
  if (kind === 'altitude') {
    const height = parseHeight('otherAltitude', form, fields);
    return height && { from: 'altitude', height };
  }
  const pressure = fields.pressure('otherPressure', 'hPa', ambientPressureLimits.barometerPa);
  return pressure && { from: 'barometer', stationPa: pressure.pascals };
}
