import { describeShare, lastReadings, nudgeTap, practiceSteps } from '../../../calculators/index.ts';
import type { PracticeFigures } from '../../../calculators/index.ts';
import { NudgeRow } from './NudgeRow.tsx';
import type { PlayControl } from './use-play.ts';

interface Props {
  readonly control: PlayControl;
  readonly figures: PracticeFigures;
}

/** What a reading needs: selector, damping tap, vent, and writing it down. */
export function GaugePanel({ control, figures }: Props) {
  const { run } = control;
  const { selected, tap } = run.state.controls;
  const { tap: step } = practiceSteps;
  const select = (cylinder: number | null) => control.act(() => ({ kind: 'select', cylinder }));
  const nudge = (by: number) => () => control.act((play) => nudgeTap(play, by));
  return (
    <section class="side gauge-side" aria-labelledby="gauge-side">
      <h2 id="gauge-side">Line and gauge</h2>
      <div class="keys many" role="group" aria-label="Selector: the line to the gauge">
        <button type="button" class="button" aria-pressed={selected === null} onClick={() => select(null)}>
          shut
        </button>
        {lastReadings(run, figures).map((reading, i) => (
          <button
            key={i}
            type="button"
            class="button"
            aria-pressed={selected === i + 1}
            onClick={() => select(i + 1)}
          >
            <span>
              <span class="unseen">Carburettor </span>
              {i + 1}
            </span>{' '}
            <small>
              {reading !== null && <span class="unseen">last read </span>}
              {reading ?? '–'}
            </small>
          </button>
        ))}
      </div>
      <NudgeRow
        label="Tap"
        value={tap}
        words={describeShare(tap, 0)}
        most={1}
        step={step}
        onSet={(opening) => control.act(() => ({ kind: 'tap', opening }))}
        less={[{ sign: '−', words: 'Damping tap shut a little', press: nudge(-step) }]}
        more={[{ sign: '+', words: 'Damping tap open a little', press: nudge(step) }]}
      />
      <div class="keys">
        <button type="button" class="button" onClick={control.vent}>
          Vent
        </button>
        <button
          type="button"
          class="button first wide-key"
          disabled={selected === null}
          onClick={control.write}
        >
          Write down this reading
        </button>
      </div>
    </section>
  );
}
