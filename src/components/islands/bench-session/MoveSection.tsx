import type { Bench, WrongWay } from '../../../calculators/index.ts';
import { TurnFigure } from './TurnFigure.tsx';
import type { BenchState } from './use-bench.ts';
import { moveWords, screwName, type Figures } from './words.ts';

/** The next move: the largest thing on the screen, announced when it changes. */
export function MoveSection({
  bench,
  figures,
  wrongWay,
  shown,
  onAmount,
}: {
  bench: Bench;
  figures: Figures;
  wrongWay: WrongWay | null;
  shown: BenchState['shown'];
  onAmount: () => void;
}) {
  const { step } = bench;
  if (wrongWay)
    return (
      <section class="move" aria-labelledby="move">
        <div role="status">
          <h1 id="move">Carburettor&nbsp;{wrongWay.carburettor} moved the wrong way</h1>
        </div>
        <p class="reason">
          After that turn it was expected to {wrongWay.expectedChangePa > 0 ? 'rise' : 'fall'}, and it{' '}
          {wrongWay.seenChangePa > 0 ? 'rose' : 'fell'}. What happened?
        </p>
      </section>
    );
  const words = moveWords(bench, figures);
  return (
    <section class="move" aria-labelledby="move">
      <div role="status">
        <h1 id="move">
          {words.before}
          {words.amount !== undefined && (
            <button class="amount" type="button" aria-describedby="really" onClick={onAmount}>
              {words.amount}
            </button>
          )}
        </h1>
      </div>
      {step.kind === 'turn' && (
        <>
          <span class="unseen" id="really">
            Press to say what you really turned.
          </span>
          <TurnFigure opens={figures.setUp.opens[step.screw - 1] ?? 'unknown'} turns={step.turns} />
        </>
      )}
      <p class="reason">
        {shown !== null && `Noted: ${shown.opens} opens ${screwName(figures.setUp, shown.screw)}. `}
        {words.reason}
      </p>
    </section>
  );
}
