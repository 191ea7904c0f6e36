import { describeProblem, describeTask, lessonOf } from '../../../calculators/index.ts';
import type { Bench, LessonId, PracticeFigures, PracticeRun, Result } from '../../../calculators/index.ts';
import { moveWords } from '../bench-session/words.ts';
import type { Figures } from '../bench-session/words.ts';
import type { ChosenScrew } from './ScrewPanel.tsx';

interface Props {
  readonly run: PracticeRun;
  readonly figures: PracticeFigures;
  /** What the bench session says; null while it is not asked. */
  readonly advice: Result<Bench> | null;
  readonly benchFigures: Figures;
  readonly lesson: LessonId | null;
  readonly onScrew: (screw: ChosenScrew) => void;
  readonly onRound: () => void;
  readonly onStart: () => void;
}

/** The next move by the bench session, or the task; a stopped engine comes first. */
export function MoveLine({ run, figures, advice, benchFigures, lesson, onScrew, onRound, onStart }: Props) {
  if (!run.state.running)
    return (
      <section class="practice-move" aria-labelledby="move">
        <div role="status">
          <h1 id="move" tabIndex={-1}>
            The engine stands still
          </h1>
        </div>
        <p class="reason">
          <button type="button" class="button" onClick={onStart}>
            Start the engine
          </button>
        </p>
      </section>
    );
  if (advice === null)
    return (
      <section class="practice-move" aria-labelledby="move">
        <h1 id="move" tabIndex={-1}>
          {lesson === null ? 'Level the set' : lessonOf(lesson).title}
        </h1>
        <p class="reason">{describeTask(run.engine, lesson, figures)}</p>
      </section>
    );
  if (!advice.ok)
    return (
      <section class="practice-move" aria-labelledby="move">
        <h1 id="move" tabIndex={-1}>
          No advice
        </h1>
        <p class="reason">{describeProblem(advice.problem)}</p>
      </section>
    );
  const { step } = advice.value;
  const words = moveWords(advice.value, benchFigures);
  return (
    <section class="practice-move" aria-labelledby="move">
      <div role="status">
        <h1 id="move" tabIndex={-1}>
          {words.before}
          {step.kind === 'turn' && (
            <button
              type="button"
              class="amount"
              aria-describedby="to-screw"
              onClick={() => onScrew(step.screw)}
            >
              {words.amount}
            </button>
          )}
        </h1>
      </div>
      {step.kind === 'turn' && (
        <span class="unseen" id="to-screw">
          Press to go to this screw.
        </span>
      )}
      <p class="reason">
        {step.kind === 'done' ? (
          <button type="button" class="button" onClick={onRound}>
            Start the sign-off round
          </button>
        ) : (
          words.reason
        )}
      </p>
    </section>
  );
}
