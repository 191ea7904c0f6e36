import { formReader } from './calculator-form.ts';
import type { Form } from './calculator-form.ts';
import { checkNumber } from './check-number.ts';
import type { DecimalMark } from './format-number.ts';
import { withinMeasure } from './measure-limit.ts';
import type { MeasureLimit } from './measure-limit.ts';
import { parseMeasure } from './parse-measure.ts';
import { parseNumber } from './parse-number.ts';
import type { ParsedNumber } from './parse-number.ts';
import { parsePressure } from './parse-pressure.ts';
import type { ParsedPressure } from './parse-pressure.ts';
import { pressureUnit } from './pressure-units.ts';
import type { Limit } from './problem.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

/**
 * Takes numbers, measures and pressures out of a form, keeps every problem with its field, and remembers whether a decimal
 * comma was typed. What has a problem is undefined.
 */
export function typedFields<Field extends string>(form: Form<Field>) {
  const { problems, take, blame } = formReader<Field>();
  let mark: DecimalMark = 'point';
  const noteMark = ({ mark: typed }: ParsedNumber): void => {
    if (typed === 'comma') mark = 'comma';
  };
  const inside = (field: Field, checkedAs: string, value: number, limit: Limit): number | undefined =>
    take(field, checked(checkedAs, value, limit));

  /** A bare number; a unit that is always meant, such as ° or %, may stand behind it. */
  const number = (field: Field, limit: Limit, sign: '°' | '%'): number | undefined => {
    const parsed = take(field, parseNumber(withoutSign(form[field], sign), field));
    if (parsed === undefined) return undefined;
    noteMark(parsed);
    return inside(field, field, parsed.value, limit);
  };
  /** In the SI unit of its family. */
  const measure = (field: Field, limit: MeasureLimit): number | undefined => {
    const parsed = take(field, parseMeasure(form[field], limit.family, limit.unitId, field));
    if (parsed === undefined) return undefined;
    noteMark(parsed.number);
    return take(field, withinMeasure(field, form[field], parsed, limit));
  };
  const pressure = (field: Field, usualUnitId: string, limit: Limit): ParsedPressure | undefined => {
    const parsed = take(field, parsePressure(form[field], pressureUnit(usualUnitId), field));
    if (parsed === undefined) return undefined;
    noteMark(parsed.number);
    return inside(field, `${field}Pa`, parsed.pascals, limit) === undefined ? undefined : parsed;
  };
  return { problems, take, blame, number, measure, pressure, mark: (): DecimalMark => mark };
}

const withoutSign = (typed: string, sign: '°' | '%'): string => {
  const text = typed.trimEnd();
  return text.length > sign.length && text.endsWith(sign) ? text.slice(0, -sign.length) : typed;
};

function checked(field: string, value: number, limit: Limit): Result<number> {
  const problem = checkNumber(field, value, limit);
  return problem === undefined ? succeed(value) : fail(problem);
}
