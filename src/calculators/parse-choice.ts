import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

/** One of the choices that a field has. Problem: `unknown-choice`. */
export function parseChoice<Choice extends string>(
  typed: string,
  choices: readonly Choice[],
  field: string,
): Result<Choice> {
  const chosen = choices.find((choice) => choice === typed);
  return chosen === undefined
    ? fail({ kind: 'unknown-choice', field, typed, known: choices })
    : succeed(chosen);
}
