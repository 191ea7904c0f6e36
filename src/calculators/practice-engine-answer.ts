import { refuse } from './calculator-answer.ts';
import type { FormAnswer } from './calculator-answer.ts';
import type { Form } from './calculator-form.ts';
import { parsePracticeEngine } from './practice-engine-form.ts';
import type { PracticeEngineField } from './practice-engine-form.ts';
import { describeExercise } from './practice-engine-words.ts';
import type { Exercise } from './practice/exercise.ts';
import { lessonIds, lessonOf, lessons } from './practice/lessons.ts';
import type { LessonId } from './practice/lessons.ts';
import { numberInWords } from './number-in-words.ts';

/** An exercise that is ready to be begun. */
export type DescribedExercise = {
  readonly exercise: Exercise;
  readonly lesson: LessonId | null;
  /** Its name: that of the lesson, or what the engine is. */
  readonly title: string;
  /** Of a lesson; empty for an exercise of one’s own. */
  readonly about: string;
  /** Whether something else than the balance may be wrong, so that the person may say what. */
  readonly faultToFind: boolean;
  readonly announcement: string;
};

/** `Lesson two: The see-saw of two`. */
export const describeLesson = (id: LessonId): string =>
  `Lesson ${numberInWords(lessonIds.indexOf(id) + 1)}: ${lessonOf(id).title}`;

/** The exercise that the form tells. */
export function answerPracticeEngine(
  form: Form<PracticeEngineField>,
): FormAnswer<DescribedExercise, PracticeEngineField> {
  const parsed = parsePracticeEngine(form);
  if (!parsed.ok) return refuse(parsed.problems, (field) => ({ typed: form[field] }));
  const exercise = parsed.value;
  const lesson = lessons.find(({ id }) => id === form.lesson) ?? null;
  const what = `${describeExercise(exercise)}.`;
  const title = lesson === null ? what : `${describeLesson(lesson.id)}.`;
  return {
    ok: true,
    answer: {
      exercise,
      lesson: lesson?.id ?? null,
      title,
      about: lesson === null ? '' : `${lesson.about} ${what}`,
      faultToFind: lesson === null ? form.fault !== 'none' : exercise.fault !== null,
      announcement: title,
    },
  };
}
