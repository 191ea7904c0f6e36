import type { CalculatorLink } from './calculator-link.ts';
import { longestNumber } from './parse-number.ts';
import { parsePressure } from './parse-pressure.ts';
import { pressureUnit } from './pressure-units.ts';
import type { Problem } from './problem.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';
import { keepTypedUnit, unitConverterExample, unitsOf, usualUnitIn } from './unit-converter-form.ts';
import type { ConversionForm, UnitConverterField } from './unit-converter-form.ts';
import { converterQuantities, usualUnitOf } from './unit-converter-quantities.ts';
import { pressureKinds } from './unit-converter.ts';

/** Version of the link; a newer one is refused in words. The first knew pressures alone, and they keep its number. */
export const unitConverterLinkVersion = 2;
const pressureLinkVersion = 1;

const keys = ['v', 'of', 'q', 'as', 'ambient', 'u'];

/**
 * The form as the keys of a link: `v`, `of` its quantity, `q` what was typed, `as` the kind of a pressure, `ambient`
 * with its unit, and `u`, the unit of a number that was typed without one. Defaults are left out.
 */
export function writeUnitConverterLink(form: ConversionForm): Readonly<Record<string, string>> {
  const typed = form.typed.trim();
  const isPressure = form.quantity === 'pressure';
  const ambient = ambientWithUnit(form.ambient);
  const unitTyped = keepTypedUnit(form) !== form;
  return {
    v: String(isPressure ? pressureLinkVersion : unitConverterLinkVersion),
    ...(!isPressure && { of: form.quantity }),
    ...(typed !== '' && { q: typed }),
    ...(isPressure && form.kind !== unitConverterExample.kind && { as: form.kind }),
    ...(isPressure && ambient !== '' && ambient !== unitConverterExample.ambient && { ambient }),
    ...(!unitTyped && { u: usualUnitIn(form) }),
  };
}

function ambientWithUnit(typed: string): string {
  const parsed = parsePressure(typed, pressureUnit('kPa'));
  return parsed.ok && !parsed.value.unitTyped ? `${typed.trim()} kPa` : typed.trim();
}

/**
 * Reads the keys of a link; none at all are the worked example. A bare number as `ambient` is in pascals. Problem: newer-version, and nothing is read.
 * Single bad values (too-long, unknown-choice) are reported beside the form, which then holds their defaults.
 */
export function parseUnitConverterLink(
  record: Readonly<Record<string, string>>,
): Result<CalculatorLink<UnitConverterField>> {
  if (Object.keys(record).length === 0)
    return succeed({ form: unitConverterExample, unknownKeys: [], problems: [] });
  const problems: Problem[] = [];
  const read = (key: string): string | undefined => (Object.hasOwn(record, key) ? record[key] : undefined);
  const readText = (key: string): string => {
    const text = read(key) ?? '';
    if (text.length <= longestNumber) return text;
    problems.push({ kind: 'too-long', field: key, value: text.length, limit: { max: longestNumber } });
    return '';
  };
  const readChoice = (key: string, known: readonly string[], usual: string): string => {
    const text = read(key) ?? usual;
    if (known.includes(text)) return text;
    problems.push({ kind: 'unknown-choice', field: key, typed: text, known });
    return usual;
  };

  const max = unitConverterLinkVersion;
  const version = Number(read('v') ?? max);
  if (version > max) return fail({ kind: 'newer-version', field: 'v', value: version, limit: { max } });
  readChoice('v', [String(pressureLinkVersion), String(max)], String(max));
  const quantity = readChoice('of', converterQuantities, unitConverterExample.quantity);
  const ambient = readText('ambient').trim();
  const form = keepTypedUnit({
    quantity,
    typed: readText('q'),
    usualUnit: readChoice(
      'u',
      unitsOf(quantity).map(({ id }) => id),
      usualUnitOf(quantity),
    ),
    kind: readChoice('as', pressureKinds, unitConverterExample.kind),
    ambient: ambient === '' ? unitConverterExample.ambient : ambient.replace(/^[\d.]+$/u, '$& Pa'),
  });
  const unknownKeys = Object.keys(record).filter((key) => !keys.includes(key));
  return succeed({ form, unknownKeys, problems });
}
