import { lessonIds } from '../calculators/index.ts';
import type { LessonId } from '../calculators/index.ts';
import { readSetting, writeSetting } from './settings.ts';

const name = 'practice-lessons';

/** The lessons whose goal was reached on this device. Never throws. */
export const readReachedLessons = (): readonly LessonId[] => {
  const kept = (readSetting(name) ?? '').split(' ');
  return lessonIds.filter((id) => kept.includes(id));
};

/** Keeps that the goal of a lesson was reached. Never throws. */
export const writeReachedLesson = (id: LessonId): void =>
  writeSetting(
    name,
    lessonIds.filter((each) => each === id || readReachedLessons().includes(each)).join(' '),
  );
