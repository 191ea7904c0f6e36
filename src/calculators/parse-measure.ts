import type { MeasureFamily, MeasureUnit } from './measure-unit.ts';
import { findMeasureUnit, measureUnit, toSi } from './measure-units.ts';
import type { ParsedNumber } from './parse-number.ts';
import { parseQuantity } from './parse-quantity.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

export type ParsedMeasure = {
  /** In the SI unit of the family: metres, kelvins, revolutions per second; see `family.siUnit`. */
  readonly value: number;
  /** The figure as typed, in `unit`. */
  readonly number: ParsedNumber;
  readonly unit: MeasureUnit;
  /** False if no unit was typed and the usual one was taken. */
  readonly unitTyped: boolean;
};

/**
 * Reads a measure of a family: `5.5 mm`, `9 1/2 ft-lb`, `20 °C`, `26 TPI`.
 *
 * @param usualUnitId the unit of a number that is typed without one
 * Problems: those of `parseQuantity`; below-absolute-zero; pitch-not-above-zero; negative-measure.
 */
export function parseMeasure(
  typed: string,
  family: MeasureFamily,
  usualUnitId: string,
  field?: string,
): Result<ParsedMeasure> {
  const usualUnit = measureUnit(family, usualUnitId);
  const known = family.units.map(({ symbol }) => symbol);
  const parsed = parseQuantity(typed, { find: (unit) => findMeasureUnit(unit, family), known }, field);
  if (!parsed.ok) return parsed;
  const { number, unit: unitOrNull } = parsed.value;
  const unit = unitOrNull ?? usualUnit;
  // A figure of 0 or below has no finite or no meaningful reciprocal, so the figure itself is asked.
  const value = number.value === 0 && unit.scale.kind === 'reciprocal' ? 0 : toSi(number.value, unit);
  const { limit } = family;
  if (limit === undefined || ('min' in limit ? value >= 0 : value > 0))
    return succeed({ value, number, unit, unitTyped: unitOrNull !== null });
  const place = field === undefined ? {} : { field };
  return fail(
    family.name === 'temperature'
      ? { kind: 'below-absolute-zero', ...place, typed }
      : { kind: 'impossible-measure', ...place, typed, measure: family.name, limit },
  );
}
