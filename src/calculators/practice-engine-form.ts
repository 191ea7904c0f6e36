import { formReader } from './calculator-form.ts';
import type { Form, FormFields, FormResult } from './calculator-form.ts';
import { checkNumber } from './check-number.ts';
import { generations } from './linkage.ts';
import { parseChoice } from './parse-choice.ts';
import { parseNumber } from './parse-number.ts';
import { practiceFaults } from './practice/engine.ts';
import type { PracticeFault } from './practice/engine.ts';
import { exerciseLimits, practiceEngineExample, practiceGrades } from './practice/exercise.ts';
import type { Exercise } from './practice/exercise.ts';
import { lessonIds, lessonOf } from './practice/lessons.ts';
import { drawsFrom } from './practice/random.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

const counts = ['2', '3', '4', '5', '6'] as const;
const { generation, carburettors, grade, seed } = practiceEngineExample;

/**
 * The fields that tell an exercise; a link with them gives the same one everywhere. With a lesson the other fields are
 * not looked at. `fault` is `none`, `hidden` (one of the faults, or none: the seed decides), or a fault by its name.
 */
export const practiceEngineFields = {
  lesson: { kind: 'choice', initially: 'none', choices: ['none', ...lessonIds] },
  generation: { kind: 'choice', initially: generation, choices: generations },
  carburettors: { kind: 'choice', initially: String(carburettors), choices: counts },
  grade: { kind: 'choice', initially: String(grade), choices: practiceGrades.map(String) },
  seed: { kind: 'text', initially: String(seed) },
  fault: { kind: 'choice', initially: 'none', choices: ['none', 'hidden', ...practiceFaults] },
} as const satisfies FormFields<string>;

export type PracticeEngineField = keyof typeof practiceEngineFields;

/** Reads the form. Problems: those of `parseNumber` for the seed; `out-of-range`; `groups-needed` for five carburettors in pairs. */
export function parsePracticeEngine(
  form: Form<PracticeEngineField>,
): FormResult<Exercise, PracticeEngineField> {
  const lesson = lessonIds.find((id) => id === form.lesson);
  if (lesson !== undefined) return { ok: true, value: lessonOf(lesson).exercise };
  const { problems, take, blame } = formReader<PracticeEngineField>();
  const chosen = take('generation', parseChoice(form.generation, generations, 'generation'));
  const count = take('carburettors', parseChoice(form.carburettors, counts, 'carburettors'));
  const hard = take('grade', parseChoice(form.grade, practiceGrades.map(String), 'grade'));
  const drawn = take('seed', parseSeed(form.seed));
  const fault = take('fault', parseChoice(form.fault, practiceEngineFields.fault.choices, 'fault'));
  if (chosen === 'paired-screws' && count === '5') blame('carburettors', { kind: 'groups-needed', value: 5 });
  const gradeOf = practiceGrades.find((each) => String(each) === hard);
  if (
    chosen === undefined ||
    count === undefined ||
    gradeOf === undefined ||
    drawn === undefined ||
    fault === undefined ||
    problems.length > 0
  )
    return { ok: false, problems };
  return {
    ok: true,
    value: {
      generation: chosen,
      carburettors: Number(count),
      grade: gradeOf,
      seed: drawn,
      fault: faultOf(fault, drawn),
    },
  };
}

function parseSeed(typed: string): Result<number> {
  const parsed = parseNumber(typed, 'seed');
  if (!parsed.ok) return parsed;
  const { value } = parsed.value;
  const problem = checkNumber('seed', value, exerciseLimits.seed);
  if (problem !== undefined) return fail(problem);
  return Number.isInteger(value) ? succeed(value) : fail({ kind: 'not-whole', field: 'seed', typed });
}

function faultOf(choice: string, drawnSeed: number): PracticeFault | null {
  const named = practiceFaults.find((fault) => fault === choice) ?? null;
  if (choice !== 'hidden') return named;
  const index = drawsFrom(drawnSeed, 3).index(practiceFaults.length + 2);
  return practiceFaults[index] ?? null;
}
