import { useEffect, useState } from 'preact/hooks';
import { continueReplay, startReplay } from '../../../calculators/index.ts';
import type { PracticeRun, Replay } from '../../../calculators/index.ts';
import { whenIdle } from '../../../device/animation.ts';

/** What the advice would have done, worked out slice by slice while the browser has nothing else to do. */
export function useReplay(run: PracticeRun): Replay {
  const [replay, setReplay] = useState(() => startReplay(run));
  const isGoing = replay.phase === 'warming' || replay.phase === 'working';
  useEffect(() => {
    if (!isGoing) return;
    return whenIdle(() => setReplay(continueReplay(run.engine, replay)));
  }, [replay]);
  return replay;
}
