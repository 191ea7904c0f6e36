import { describeLesson, lessons } from '../../../calculators/index.ts';
import type { LessonId } from '../../../calculators/index.ts';

interface Props {
  readonly reached: readonly LessonId[];
  readonly onBegin: (lesson: LessonId) => void;
}

/** The six lessons: what each teaches, and whether its goal was reached on this device. */
export function LessonList({ reached, onBegin }: Props) {
  return (
    <ol class="lessons">
      {lessons.map(({ id, about }) => (
        <li key={id} data-lesson={id}>
          <h3>{describeLesson(id)}</h3>
          <p>{about}</p>
          <p class="actions needs-script">
            <button type="button" class="button" onClick={() => onBegin(id)}>
              Begin<span class="unseen"> {describeLesson(id).toLowerCase()}</span>
            </button>
            <span class="aside">{reached.includes(id) ? 'reached' : 'not reached yet'}</span>
          </p>
        </li>
      ))}
    </ol>
  );
}
