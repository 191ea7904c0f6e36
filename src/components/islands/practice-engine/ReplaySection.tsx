import { useState } from 'preact/hooks';
import { describeReplay, describeReplayStep } from '../../../calculators/index.ts';
import type { PracticeFigures, PracticeReview, PracticeRun } from '../../../calculators/index.ts';
import { TruthStrip } from './TruthStrip.tsx';
import { useReplay } from './use-replay.ts';

interface Props {
  readonly run: PracticeRun;
  readonly review: PracticeReview;
  readonly figures: PracticeFigures;
}

/** The advice on the same engine, step by step. */
export function ReplaySection({ run, review, figures }: Props) {
  const replay = useReplay(run);
  const [at, setAt] = useState(0);
  const { steps } = replay;
  const step = steps[at];
  const before = steps[at - 1]?.depressionsPa ?? review.first.depressionsPa;
  const words = step && describeReplayStep(run.engine, step, figures);
  return (
    <section class="flow" aria-labelledby="replay">
      <h2 id="replay">What the advice would have done</h2>
      <p role="status">{describeReplay(run.engine, replay, figures)}</p>
      {step && words && (
        <>
          <p class="actions">
            <button type="button" class="button" disabled={at === 0} onClick={() => setAt(at - 1)}>
              Step back
            </button>
            <button
              type="button"
              class="button"
              disabled={at + 1 >= steps.length}
              onClick={() => setAt(at + 1)}
            >
              Next step
            </button>
          </p>
          <p class="replayed" role="status">
            <b>
              Step {at + 1} of {steps.length}.
            </b>{' '}
            {words.words}. Highest and lowest truly lie {words.spread} apart.
          </p>
          <TruthStrip
            engine={run.engine}
            figures={figures}
            depressionsPa={step.depressionsPa}
            beforePa={before}
            words={words.stripWords}
          />
        </>
      )}
    </section>
  );
}
