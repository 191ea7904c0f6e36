import type { Generation } from '../linkage.ts';
import type { PracticeFault } from './engine.ts';

/** How hard an exercise is: 1 for the first time, 4 for somebody who has done it before. */
export const practiceGrades = [1, 2, 3, 4] as const;
export type PracticeGrade = (typeof practiceGrades)[number];

/** An exercise is wholly told by this; the same one gives the same engine everywhere. */
export type Exercise = {
  readonly generation: Generation;
  /** 2–6. */
  readonly carburettors: number;
  readonly grade: PracticeGrade;
  readonly seed: number;
  /** A fault to find, beside the balance; null for none. */
  readonly fault: PracticeFault | null;
};

export const exerciseLimits = { carburettors: { min: 2, max: 6 }, seed: { min: 0, max: 999_999 } } as const;

/** The worked example: the exercise that the page opens with. */
export const practiceEngineExample: Exercise = {
  generation: 'all-adjustable',
  carburettors: 4,
  grade: 1,
  seed: 1,
  fault: null,
};
