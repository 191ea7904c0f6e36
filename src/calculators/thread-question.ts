import type { Form } from './calculator-form.ts';
import { checkNumber } from './check-number.ts';
import { lengths } from './length-units.ts';
import { parseMeasure } from './parse-measure.ts';
import { parseNumber } from './parse-number.ts';
import { parseThread } from './parse-thread.ts';
import type { Limit } from './problem.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';
import type { ScrewThread } from './screw-thread.ts';

/** A thread as the form tells it: from the tables with all that they hold, or only what one turn goes. */
export type ToldThread = {
  readonly thread: ScrewThread | null;
  /** Pitch of a thread of the tables; what one turn goes, whatever the starts, of a measured one. */
  readonly pitchMm: number;
};

/**
 * Pitches that are believed, in millimetres; turns and travel of a measurement. Wider than any adjuster: 16BA has 0.19 mm,
 * M24 has 3 mm (ISO 261, BS 93), and a steep adjuster of several starts about 6 mm (from memory).
 */
export const pitchLimitMm = { min: 0.1, max: 10 } as const;
const measuredTurnsLimit: Limit = { min: 1, max: 100 };

const millimetresPerMetre = 1000;

/** A length in millimetres; a number without a unit is in millimetres. */
export function parseLengthMm(typed: string, field: string, limit: Limit): Result<number> {
  const parsed = parseMeasure(typed, lengths, 'mm', field);
  if (!parsed.ok) return parsed;
  const millimetres =
    parsed.value.unit.id === 'mm' ? parsed.value.number.value : parsed.value.value * millimetresPerMetre;
  const problem = checkNumber(`${field}Mm`, millimetres, limit);
  return problem === undefined ? succeed(millimetres) : fail(problem);
}

/** A plain number within a limit. */
export function parseWithin(typed: string, field: string, limit: Limit): Result<number> {
  const parsed = parseNumber(typed, field);
  if (!parsed.ok) return parsed;
  const problem = checkNumber(field, parsed.value.value, limit);
  return problem === undefined ? succeed(parsed.value.value) : fail(problem);
}

/** The fields that tell one thread. */
export type ThreadFields<Field extends string> = {
  readonly from: Field;
  readonly thread: Field;
  readonly turns: Field;
  readonly travel: Field;
};

/**
 * Reads a thread, each problem with its field: the name from the tables, or travel ÷ turns of a measurement.
 * Problems: those of `parseThread`, `parseNumber` and `parseMeasure`; out-of-range.
 */
export function readToldThread<Field extends string>(
  form: Form<Field>,
  fields: ThreadFields<Field>,
  take: <Value>(field: Field, result: Result<Value>) => Value | undefined,
): ToldThread | undefined {
  if (form[fields.from] === 'table') {
    const thread = take(fields.thread, parseThread(form[fields.thread], fields.thread));
    return thread && { thread, pitchMm: thread.pitchMm };
  }
  const turns = take(fields.turns, parseWithin(form[fields.turns], fields.turns, measuredTurnsLimit));
  const travelMm = take(fields.travel, parseLengthMm(form[fields.travel], fields.travel, {}));
  if (turns === undefined || travelMm === undefined) return undefined;
  // The limit is told as the travel that was asked for, not as a pitch that nobody typed.
  const limitMm = { min: pitchLimitMm.min * turns, max: pitchLimitMm.max * turns };
  const problem = checkNumber(`${fields.travel}Mm`, travelMm, limitMm);
  const told = { thread: null, pitchMm: travelMm / turns };
  return take(fields.travel, problem === undefined ? succeed(told) : fail(problem));
}
