import { describeWarmth, practicePaces } from '../../../calculators/index.ts';
import type { PlayControl } from './use-play.ts';
import { WayQuestions } from './WayQuestions.tsx';
import type { WaysToWork } from './WayQuestions.tsx';

interface Props {
  readonly control: PlayControl;
  readonly ways: WaysToWork;
  readonly onWays: (ways: WaysToWork) => void;
  readonly onTruth: () => void;
  readonly onLeave: () => void;
}

/** The engine as a whole, the clock, and how the work is shown. */
export function EnginePanel({ control, ways, onWays, onTruth, onLeave }: Props) {
  const { run, pace, paused, act } = control;
  const { running, controls } = run.state;
  return (
    <section class="side engine-side" aria-labelledby="engine-side">
      <h2 id="engine-side">Engine and time</h2>
      <div class="keys">
        <button
          type="button"
          class="button"
          aria-pressed={controls.fan}
          onClick={() => act(() => ({ kind: 'fan', on: !controls.fan }))}
        >
          Fan
        </button>
        <button
          type="button"
          class="button wide-key"
          onClick={() => act(() => ({ kind: running ? 'stop' : 'start' }))}
        >
          {running ? 'Stop the engine' : 'Start the engine'}
        </button>
      </div>
      <p class="aside stand">{describeWarmth(run.state).words}</p>
      <div class="keys" role="group" aria-label="How fast time passes">
        <button type="button" class="button" aria-pressed={paused} onClick={() => control.setPaused(!paused)}>
          Pause
        </button>
        {practicePaces.map((each) => (
          <button
            key={each}
            type="button"
            class="button"
            aria-pressed={pace === each}
            onClick={() => control.setPace(each)}
          >
            <span>
              <span class="unseen">Time </span>×{each}
            </span>
          </button>
        ))}
      </div>
      <WayQuestions ways={ways} onWays={onWays} />
      <p class="actions">
        <button type="button" class="button" onClick={onTruth}>
          Show the truth
        </button>
        <button type="button" class="plain" onClick={onLeave}>
          Leave the engine
        </button>
      </p>
    </section>
  );
}
