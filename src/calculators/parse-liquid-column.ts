import type { Form, FormResult } from './calculator-form.ts';
import { zeroCelsiusKelvins } from './exact-definitions.ts';
import type { DecimalMark } from './format-number.ts';
import { glycolPercentLimit } from './glycol-solution-density.ts';
import { columnKinds, columnLimits, columnSides, liquidChoices, ownLiquid } from './liquid-column-form.ts';
import type { LiquidColumnField } from './liquid-column-form.ts';
import type { ColumnQuestion } from './liquid-column.ts';
import { liquidDensity, usualGlycolPercent } from './liquid-density.ts';
import type { Liquid } from './liquid.ts';
import { liquidOf } from './liquids.ts';
import type { Manometer } from './manometer.ts';
import { parseChoice } from './parse-choice.ts';
import type { PressureUnit } from './pressure-unit.ts';
import { temperatures } from './temperature-units.ts';
import { typedFields } from './typed-fields.ts';
import { valueOfChecked } from './value-of-checked.ts';

export type ColumnTyped = ColumnQuestion & {
  readonly kind: (typeof columnKinds)[number];
  /** Null for a liquid of the reader's own. */
  readonly liquid: Liquid | null;
  /** Null where the reader gives the density. */
  readonly celsius: number | null;
  /** Per cent of glycol by volume; only a solution of it asks for it. */
  readonly strengthPercent: number;
  /** The unit of the figure that the column must show. */
  readonly unit: PressureUnit;
  readonly mark: DecimalMark;
};

type Fields = ReturnType<typeof typedFields<LiquidColumnField>>;

/**
 * Reads what applies to the chosen column and liquid; the other fields may hold anything.
 * Problems: those of the parsers; `measure-out-of-range`; `out-of-range`; `well-too-narrow`.
 */
export function parseLiquidColumn(form: Form<LiquidColumnField>): FormResult<ColumnTyped, LiquidColumnField> {
  const fields = typedFields(form);
  const sides = fields.take('sides', parseChoice(form.sides, columnSides, 'sides'));
  const filling = parseFilling(form, fields);
  const tube = parseTube(form, fields);
  const difference =
    sides === 'difference' ? fields.pressure('difference', 'mmHg', columnLimits.pressure) : null;
  const depression = fields.pressure('depression', 'mmHg', columnLimits.pressure);
  const readingM = form.reading.trim() === '' ? null : fields.measure('reading', columnLimits.reading);
  if (!sides || !filling || !tube || !depression || difference === undefined || readingM === undefined)
    return { ok: false, problems: fields.problems };
  return {
    ok: true,
    value: {
      ...filling,
      ...tube,
      sides,
      differencePa: difference?.pascals ?? 0,
      depressionPa: depression.pascals,
      readingM,
      unit: (difference ?? depression).unit,
      mark: fields.mark(),
    },
  };
}

type Filling = Pick<ColumnTyped, 'liquid' | 'celsius' | 'strengthPercent' | 'kgPerM3'>;

function parseFilling(form: Form<LiquidColumnField>, fields: Fields): Filling | undefined {
  const id = fields.take('liquid', parseChoice(form.liquid, liquidChoices, 'liquid'));
  if (id === undefined) return undefined;
  if (id === ownLiquid) {
    const kgPerM3 = fields.measure('density', columnLimits.density);
    return kgPerM3 === undefined
      ? undefined
      : { liquid: null, celsius: null, strengthPercent: usualGlycolPercent, kgPerM3 };
  }
  const liquid = liquidOf(id);
  const kelvins = fields.measure('temperature', { family: temperatures, unitId: 'C', ...liquid.range });
  const strengthPercent =
    liquid.density.kind === 'glycol-solution'
      ? fields.number('strength', glycolPercentLimit, '%')
      : usualGlycolPercent;
  if (kelvins === undefined || strengthPercent === undefined) return undefined;
  // 273.15 K less 273.15 leaves a tail that may lie a hair beyond the bound.
  const celsius = Math.min(liquid.range.max, Math.max(liquid.range.min, kelvins - zeroCelsiusKelvins));
  const kgPerM3 = valueOfChecked(liquidDensity(liquid, celsius, strengthPercent));
  return { liquid, celsius, strengthPercent, kgPerM3 };
}

type Tube = Pick<ColumnTyped, 'kind' | 'manometer' | 'boreM'>;

function parseTube(form: Form<LiquidColumnField>, fields: Fields): Tube | undefined {
  const kind = fields.take('kind', parseChoice(form.kind, columnKinds, 'kind'));
  const boreM = fields.measure('bore', columnLimits.bore);
  if (kind === undefined) return undefined;
  if (kind === 'u-tube') return boreM === undefined ? undefined : { kind, boreM, manometer: { kind } };
  const wellBoreM = fields.measure('wellBore', columnLimits.wellBore);
  const degrees = kind === 'inclined' ? fields.number('angle', columnLimits.angle, '°') : 90;
  if (boreM === undefined || wellBoreM === undefined || degrees === undefined) return undefined;
  if (wellBoreM <= boreM) {
    fields.blame('wellBore', { kind: 'well-too-narrow', field: 'wellBore', typed: form.wellBore });
    return undefined;
  }
  const manometer: Manometer = { kind: 'well', boreM, wellBoreM, angleRad: (degrees * Math.PI) / 180 };
  return { kind, boreM, manometer };
}
