import { useEffect, useMemo } from 'preact/hooks';
import { describeReview, reviewRun } from '../../../calculators/index.ts';
import type { DescribedExercise, PracticeFigures, PracticeRun } from '../../../calculators/index.ts';
import { pressureUnit } from '../../../calculators/index.ts';
import { ReplaySection } from './ReplaySection.tsx';
import { TruthStrip } from './TruthStrip.tsx';

interface Props {
  readonly described: DescribedExercise;
  readonly run: PracticeRun;
  readonly figures: PracticeFigures;
  readonly onBack: () => void;
  readonly onAgain: () => void;
  readonly onLeave: () => void;
}

/** What no gauge showed: the truth about a run, and what the advice would have done. */
export function ReviewView({ described, run, figures, onBack, onAgain, onLeave }: Props) {
  const review = useMemo(() => reviewRun(run), [run]);
  const words = describeReview(run, review, figures);
  useEffect(() => document.getElementById('truth')?.focus(), []);
  return (
    <div class="practice-review flow">
      <h1 id="truth" tabIndex={-1}>
        The truth
      </h1>
      <p class="text">{described.title}</p>
      <p class="hold">{words.lead}</p>
      <p class="actions">
        <button type="button" class="button" onClick={onBack}>
          Back to the engine
        </button>
        <button type="button" class="button" onClick={onAgain}>
          The same engine from the start
        </button>
        <button type="button" class="button" onClick={onLeave}>
          Another exercise
        </button>
      </p>
      <TruthStrip
        engine={run.engine}
        figures={figures}
        depressionsPa={review.now.depressionsPa}
        beforePa={review.first.depressionsPa}
        words={words.stripWords}
      />
      <p class="aside">Solid: now. Hollow: at first.</p>
      <div class="truth-tables">
        <table class="table loose">
          <caption>
            True openings against the mean of all, and depressions in {pressureUnit(figures.unit).symbol} at
            the speed of the exercise.
          </caption>
          <thead>
            <tr>
              <th scope="col">Carb.</th>
              {['open at first', 'open now', 'read at first', 'reads now'].map((words) => (
                <th key={words} scope="col" class="num">
                  {words}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {words.rows.map((row) => (
              <tr key={row.carburettor}>
                <th scope="row">{row.carburettor}</th>
                {row.figures.map((figure, column) => (
                  <td key={column} class="num">
                    {figure}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
        <table class="table">
          <caption>The work</caption>
          <tbody>
            {words.lines.map(({ id, label, text }) => (
              <tr key={id} data-line={id}>
                <th scope="row">{label}</th>
                <td class="num">{text}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <h2>What was wrong</h2>
      <p class="text">{words.fault}</p>
      <ReplaySection run={run} review={review} figures={figures} />
      {words.course.length > 0 && (
        <details>
          <summary>Your work, with the true spread after each step</summary>
          <table class="table">
            <thead>
              <tr>
                <th scope="col">Time</th>
                <th scope="col">What was done</th>
                <th scope="col" class="num">
                  true spread
                </th>
              </tr>
            </thead>
            <tbody>
              {words.course.map(({ clock, words: done, spread }, index) => (
                <tr key={index}>
                  <td>{clock}</td>
                  <td>{done}</td>
                  <td class="num">{spread}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </details>
      )}
    </div>
  );
}
