import { pressureUnits } from '../../../calculators/index.ts';
import type { DescribedExercise, LessonId, PracticeEngineField } from '../../../calculators/index.ts';
import { siteAddress } from '../../../device/site-address.ts';
import AnswerSection from '../calculator/AnswerSection.tsx';
import CalculatorFrame from '../calculator/CalculatorFrame.tsx';
import type { Calculator } from '../calculator/use-calculator.ts';
import { LessonList } from './LessonList.tsx';
import { OwnExercise } from './OwnExercise.tsx';
import { WayQuestions } from './WayQuestions.tsx';
import type { WaysToWork } from './WayQuestions.tsx';

interface Props {
  readonly calculator: Calculator<DescribedExercise, PracticeEngineField>;
  readonly reached: readonly LessonId[];
  readonly unit: string;
  readonly ways: WaysToWork;
  readonly onUnit: (unit: string) => void;
  readonly onWays: (ways: WaysToWork) => void;
  readonly onBeginLesson: (lesson: LessonId) => void;
  readonly onBegin: (described: DescribedExercise) => void;
}

/** Before the engine starts: a lesson, or an exercise of one's own, and how to work on it. */
export function SetUpView({
  calculator,
  reached,
  unit,
  ways,
  onUnit,
  onWays,
  onBeginLesson,
  onBegin,
}: Props) {
  const isLesson = calculator.form.lesson !== 'none';
  return (
    <CalculatorFrame calculator={calculator}>
      <div class="asked flow">
        <h2 id="lessons">Six lessons</h2>
        <LessonList reached={reached} onBegin={onBeginLesson} />
        <h2 id="own">Or an exercise of your own</h2>
        {isLesson ? (
          <p class="actions">
            <button type="button" class="button" onClick={() => calculator.change({ lesson: 'none' })}>
              Set up an exercise of my own
            </button>
          </p>
        ) : (
          <OwnExercise calculator={calculator} />
        )}
      </div>
      <AnswerSection calculator={calculator} lead={({ title }) => title}>
        {(described) => (
          <>
            {described.about !== '' && <p>{described.about}</p>}
            <div class="question">
              <label for="practice-unit">Unit of the gauge</label>
              <p class="with-unit">
                <select
                  class="write"
                  id="practice-unit"
                  value={unit}
                  onChange={(event) => onUnit(event.currentTarget.value)}
                >
                  {pressureUnits.map(({ id, symbol }) => (
                    <option key={id} value={id} selected={id === unit}>
                      {symbol}
                    </option>
                  ))}
                </select>
              </p>
            </div>
            <WayQuestions ways={ways} onWays={onWays} />
            <p>
              Nothing here is hot or poisonous. A real engine is both: read{' '}
              <a href={siteAddress('/safety/')}>the safety page</a> before one starts.
            </p>
            <p class="actions needs-script">
              <button type="button" class="button first" onClick={() => onBegin(described)}>
                Go to the engine
              </button>
            </p>
          </>
        )}
      </AnswerSection>
    </CalculatorFrame>
  );
}
