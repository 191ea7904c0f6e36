import { fromSi, measureUnit } from './measure-units.ts';
import type { MeasureFamily } from './measure-unit.ts';
import type { ParsedMeasure } from './parse-measure.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

/** Bounds of a measure, in a unit that reads well: 2 mm to 25 mm. */
export type MeasureLimit = {
  readonly family: MeasureFamily;
  readonly unitId: string;
  readonly min: number;
  readonly max: number;
};

/** Bounds are met where a typed figure differs from them by less than this share: 1 in is 25.4 mm. */
const hair = 1e-9;

/** A measure within its bounds, in the SI unit; both bounds count as within. Problem: `measure-out-of-range`. */
export function withinMeasure(
  field: string,
  typed: string,
  measure: ParsedMeasure,
  { family, unitId, min, max }: MeasureLimit,
): Result<number> {
  const unit = measureUnit(family, unitId);
  const figure = fromSi(measure.value, unit);
  const slack = hair * Math.max(Math.abs(min), Math.abs(max));
  return figure >= min - slack && figure <= max + slack
    ? succeed(measure.value)
    : fail({ kind: 'measure-out-of-range', field, typed, symbol: unit.symbol, limit: { min, max } });
}
