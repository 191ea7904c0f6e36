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

/** What stands in the line: a title, perhaps with an amount that leads to its screw; a reason, or a button. */
interface Line {
  readonly title: string;
  readonly amount?: { readonly words: string; readonly screw: number };
  readonly reason: string;
  readonly press?: () => void;
}

/** A stopped engine comes first, then the task, then what the bench session says. */
function lineOf({ run, figures, advice, benchFigures, lesson, onRound, onStart }: Props): Line {
  if (!run.state.running)
    return { title: 'The engine stands still', reason: 'Start the engine', press: onStart };
  if (advice === null)
    return {
      title: lesson === null ? 'Level the set' : lessonOf(lesson).title,
      reason: describeTask(run.engine, lesson, figures),
    };
  if (!advice.ok) return { title: 'No advice', reason: describeProblem(advice.problem) };
  const { step } = advice.value;
  const { before: title, amount = '', reason } = moveWords(advice.value, benchFigures);
  if (step.kind === 'turn') return { title, amount: { words: amount, screw: step.screw }, reason };
  return step.kind === 'done'
    ? { title, reason: 'Start the sign-off round', press: onRound }
    : { title, reason };
}

/** The next move by the bench session, or the task. */
export function MoveLine(props: Props) {
  const { title, amount, reason, press } = lineOf(props);
  return (
    <section class="practice-move" aria-labelledby="move">
      <div role="status">
        <h1 id="move" tabIndex={-1}>
          {title}
          {amount && (
            <button
              type="button"
              class="amount"
              aria-describedby="to-screw"
              onClick={() => props.onScrew(amount.screw)}
            >
              {amount.words}
            </button>
          )}
        </h1>
      </div>
      {amount && (
        <span class="unseen" id="to-screw">
          Press to go to this screw.
        </span>
      )}
      <p class="reason">
        {press ? (
          <button type="button" class="button" onClick={press}>
            {reason}
          </button>
        ) : (
          reason
        )}
      </p>
    </section>
  );
}
