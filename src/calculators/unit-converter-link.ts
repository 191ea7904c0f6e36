import { longestNumber } from './parse-number.ts';
import { parsePressure } from './parse-pressure.ts';
import { pressureUnits } from './pressure-unit-table.ts';
import { pressureUnit } from './pressure-units.ts';
import type { Problem } from './problem.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';
import { pressureKinds, unitConverterExample } from './unit-converter.ts';
import type { ConversionForm, PressureKind } from './unit-converter.ts';

/** Version of the link; a newer one is refused in words. */
export const unitConverterLinkVersion = 1;

const keys = ['v', 'q', 'as', 'ambient', 'u'];
const { kind: usualKind, ambientTyped: usualAmbient, usualUnit } = unitConverterExample;

export type UnitConverterLink = {
  readonly form: ConversionForm;
  /** Keys that this page does not know; they are named and ignored. */
  readonly unknownKeys: readonly string[];
  /** What was wrong with single values; their defaults are taken instead. */
  readonly problems: readonly Problem[];
};

/**
 * The form as the keys of a link: `v=1`, `q` what was typed, `as` its kind, `ambient` with its unit, and `u`,
 * the unit of a number that was typed without one. Defaults are left out.
 */
export function writeUnitConverterLink(form: ConversionForm): Readonly<Record<string, string>> {
  const reading = parsePressure(form.typed, pressureUnit(form.usualUnit));
  const ambient = parsePressure(form.ambientTyped, pressureUnit('kPa'));
  const ambientText =
    ambient.ok && !ambient.value.unitTyped ? `${form.ambientTyped.trim()} kPa` : form.ambientTyped.trim();
  return {
    v: String(unitConverterLinkVersion),
    ...(form.typed.trim() !== '' && { q: form.typed.trim() }),
    ...(form.kind !== usualKind && { as: form.kind }),
    ...(ambientText !== '' && ambientText !== usualAmbient && { ambient: ambientText }),
    ...(reading.ok && !reading.value.unitTyped && { u: form.usualUnit }),
  };
}

/**
 * Reads the keys of a link. A bare number as `ambient` is in pascals. Problem: newer-version, and nothing is read.
 * Single bad values (too-long, unknown-choice, unknown-unit) are reported beside the form, which then holds their defaults.
 */
export function parseUnitConverterLink(record: Readonly<Record<string, string>>): Result<UnitConverterLink> {
  const read = (key: string): string | undefined => (Object.hasOwn(record, key) ? record[key] : undefined);
  const version = Number(read('v') ?? unitConverterLinkVersion);
  if (version > unitConverterLinkVersion)
    return fail({
      kind: 'newer-version',
      field: 'v',
      value: version,
      limit: { max: unitConverterLinkVersion },
    });

  const problems: Problem[] = Number.isInteger(version)
    ? []
    : [
        {
          kind: 'unknown-choice',
          field: 'v',
          typed: read('v') ?? '',
          known: [String(unitConverterLinkVersion)],
        },
      ];
  const readText = (key: string): string => {
    const text = read(key) ?? '';
    if (text.length <= longestNumber) return text;
    problems.push({ kind: 'too-long', field: key, value: text.length, limit: { max: longestNumber } });
    return '';
  };
  const readChoice = <Choice extends string>(
    key: string,
    known: readonly Choice[],
    usual: Choice,
  ): Choice => {
    const text = read(key);
    const choice = known.find((each) => each === text);
    if (text !== undefined && choice === undefined)
      problems.push({ kind: 'unknown-choice', field: key, typed: text, known });
    return choice ?? usual;
  };

  const ambientText = readText('ambient').trim();
  const ambientTyped = /^[\d.]+$/u.test(ambientText) ? `${ambientText} Pa` : ambientText;
  const form: ConversionForm = {
    typed: readText('q'),
    kind: readChoice<PressureKind>('as', pressureKinds, usualKind),
    ambientTyped: ambientTyped === '' ? usualAmbient : ambientTyped,
    usualUnit: readChoice(
      'u',
      pressureUnits.map(({ id }) => id),
      usualUnit,
    ),
  };
  const unknownKeys = Object.keys(record).filter((key) => !keys.includes(key));
  return succeed({ form, unknownKeys, problems });
}
