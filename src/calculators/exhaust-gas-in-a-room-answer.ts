import { refuse } from './calculator-answer.ts';
import type { FormAnswer } from './calculator-answer.ts';
import type { Form } from './calculator-form.ts';
import type { ExhaustGasInARoomField as Field } from './exhaust-gas-in-a-room-form.ts';
import { describeExhaustGasInARoom } from './exhaust-gas-in-a-room-words.ts';
import type { ExhaustGasWords } from './exhaust-gas-in-a-room-words.ts';
import { computeExhaustGasInARoom } from './exhaust-gas-in-a-room.ts';
import { parseExhaustGasInARoom } from './parse-exhaust-gas-in-a-room.ts';

/** The answer to a form, or what is wrong with which field. */
export function answerExhaustGasInARoom(form: Form<Field>): FormAnswer<ExhaustGasWords, Field> {
  const words = (field: Field) => ({ typed: form[field] });
  const given = parseExhaustGasInARoom(form);
  if (!given.ok) return refuse(given.problems, words);
  const answer = computeExhaustGasInARoom(given.value);
  return answer.ok
    ? { ok: true, answer: describeExhaustGasInARoom(answer.value) }
    : // More gas than the sum is made for: the time is the first to shorten.
      refuse([{ field: 'running', problem: answer.problem }], words);
}
