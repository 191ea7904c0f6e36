import type { Form, FormField, FormFields } from './calculator-form.ts';
import { longestNumber } from './parse-number.ts';
import type { Problem } from './problem.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

/** Version of the link of every calculator that has a form of plain fields; a newer one is refused in words. */
export const calculatorLinkVersion = 1;

export type CalculatorLink<Field extends string> = {
  readonly form: Form<Field>;
  /** Keys that the calculator does not know; they are named and ignored. */
  readonly unknownKeys: readonly string[];
  /** What was wrong with single values; they then stand at their first value. */
  readonly problems: readonly Problem[];
};

/** The form as the keys of a link: `v=1` and every field that is not as it first stands, under its own name. */
export function writeCalculatorLink<Field extends string>(
  fields: FormFields<Field>,
  form: Form<Field>,
): Readonly<Record<string, string>> {
  const changed = Object.entries<string>(form)
    .map(([name, text]) => [name, text.trim()] as const)
    .filter(([name, text]) => text !== fields[name as Field].initially);
  return { v: String(calculatorLinkVersion), ...Object.fromEntries(changed) };
}

/** Reads the keys of a link. Problem: newer-version, and nothing is read. */
export function parseCalculatorLink<Field extends string>(
  fields: FormFields<Field>,
  record: Readonly<Record<string, string>>,
): Result<CalculatorLink<Field>> {
  const read = (key: string): string | undefined => (Object.hasOwn(record, key) ? record[key] : undefined);
  const versionTyped = read('v') ?? String(calculatorLinkVersion);
  const version = Number(versionTyped);
  if (version > calculatorLinkVersion)
    return fail({ kind: 'newer-version', field: 'v', value: version, limit: { max: calculatorLinkVersion } });
  const known = [String(calculatorLinkVersion)];
  const problems: Problem[] = known.includes(versionTyped)
    ? []
    : [{ kind: 'unknown-choice', field: 'v', typed: versionTyped, known }];
  const form = Object.fromEntries(
    Object.entries<FormField>(fields).map(([name, field]) => {
      const text = read(name);
      const problem = text === undefined ? undefined : problemOf(name, field, text);
      if (problem !== undefined) problems.push(problem);
      return [name, text === undefined || problem !== undefined ? field.initially : text];
    }),
  ) as Form<Field>;
  const unknownKeys = Object.keys(record).filter((key) => key !== 'v' && !Object.hasOwn(fields, key));
  return succeed({ form, unknownKeys, problems });
}

/** Both ways, for a form whose link has the names of its fields as keys. */
export const calculatorLink = <Field extends string>(fields: FormFields<Field>) => ({
  write: (form: Form<Field>) => writeCalculatorLink(fields, form),
  parse: (record: Readonly<Record<string, string>>) => parseCalculatorLink(fields, record),
});

function problemOf(name: string, field: FormField, text: string): Problem | undefined {
  if (field.kind === 'choice')
    return field.choices.includes(text)
      ? undefined
      : { kind: 'unknown-choice', field: name, typed: text, known: field.choices };
  const longest = field.longest ?? longestNumber;
  return text.length <= longest
    ? undefined
    : { kind: 'too-long', field: name, value: text.length, limit: { max: longest } };
}
