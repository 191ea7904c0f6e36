import { describeShare, mostHand, nudgeHand, practiceSteps } from '../../../calculators/index.ts';
import { NudgeRow } from './NudgeRow.tsx';
import type { PlayControl } from './use-play.ts';

const { fine, coarse } = practiceSteps.hand;

/** The hand on the throttle; it stays where it is left. */
export function ThrottleRow({ control }: { readonly control: PlayControl }) {
  const { hand } = control.run.state.controls;
  const nudge = (by: number) => () => control.act((play) => nudgeHand(play, by));
  return (
    <NudgeRow
      label="Throttle"
      value={hand}
      words={describeShare(hand, 1)}
      most={mostHand}
      step={fine}
      onSet={(reach) => control.act(() => ({ kind: 'hand', reach }))}
      less={[
        { sign: '−−', words: 'Throttle down, much', press: nudge(-coarse) },
        { sign: '−', words: 'Throttle down, a little', press: nudge(-fine) },
      ]}
      more={[
        { sign: '+', words: 'Throttle up, a little', press: nudge(fine) },
        { sign: '++', words: 'Throttle up, much', press: nudge(coarse) },
      ]}
    />
  );
}
