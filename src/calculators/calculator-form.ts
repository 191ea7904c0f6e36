import type { Problem } from './problem.ts';
import type { Result } from './result.ts';

/** One field of a calculator's form, as the page first shows it. */
export type FormField =
  | { readonly kind: 'text'; readonly initially: string; readonly longest?: number }
  | { readonly kind: 'choice'; readonly initially: string; readonly choices: readonly string[] };

/** The fields of a form by name; their initial values are the worked example of the page. */
export type FormFields<Field extends string> = Readonly<Record<Field, FormField>>;

/** A form as typed and chosen: text, whatever it holds. */
export type Form<Field extends string> = Readonly<Record<Field, string>>;

/** What is wrong with one field. */
export type FormProblem<Field extends string> = { readonly field: Field; readonly problem: Problem };

/** What a form says, or everything that is wrong with it. */
export type FormResult<Value, Field extends string> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly problems: readonly FormProblem<Field>[] };

/** The form with every field as it first stands. */
export const initialForm = <Field extends string>(fields: FormFields<Field>): Form<Field> =>
  Object.fromEntries(
    Object.entries<FormField>(fields).map(([name, { initially }]) => [name, initially]),
  ) as Form<Field>;

/** Takes the values of a form one by one, and keeps every problem with the field that it belongs to. */
export function formReader<Field extends string>() {
  const problems: FormProblem<Field>[] = [];
  const blame = (field: Field, problem: Problem): void => void problems.push({ field, problem });
  const take = <Value>(field: Field, result: Result<Value>): Value | undefined => {
    if (result.ok) return result.value;
    blame(field, result.problem);
    return undefined;
  };
  return { problems, take, blame };
}
