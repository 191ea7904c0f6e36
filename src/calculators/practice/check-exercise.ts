import { checkNumber } from '../check-number.ts';
import { generations } from '../linkage.ts';
import type { Problem } from '../problem.ts';
import { practiceFaults } from './engine.ts';
import { exerciseLimits, practiceGrades } from './exercise.ts';
import type { Exercise } from './exercise.ts';

/** The first thing that is wrong with an exercise, or undefined. Problems: unknown-choice, carburettor-count, not-finite, out-of-range, groups-needed. */
export function checkExercise(exercise: Exercise): Problem | undefined {
  const { generation, carburettors, grade, seed, fault } = exercise;
  if (!generations.includes(generation))
    return { kind: 'unknown-choice', field: 'generation', typed: generation, known: generations };
  const { min, max } = exerciseLimits.carburettors;
  if (!Number.isInteger(carburettors) || carburettors < min || carburettors > max)
    return { kind: 'carburettor-count', value: carburettors, limit: exerciseLimits.carburettors };
  if (generation === 'paired-screws' && carburettors === 5) return { kind: 'groups-needed', value: 5 };
  if (!practiceGrades.includes(grade))
    return {
      kind: 'unknown-choice',
      field: 'grade',
      typed: String(grade),
      known: practiceGrades.map(String),
    };
  if (!Number.isInteger(seed)) return { kind: 'not-finite', field: 'seed' };
  if (fault !== null && !practiceFaults.includes(fault))
    return { kind: 'unknown-choice', field: 'fault', typed: fault, known: practiceFaults };
  return checkNumber('seed', seed, exerciseLimits.seed);
}
