import { useEffect, useState } from 'preact/hooks';
import { continueReplay, startReplay } from '../../../calculators/index.ts';
import type { PracticeRun, Problem, Replay } from '../../../calculators/index.ts';
import { whenIdle } from '../../../device/animation.ts';

/** What the advice would have done, worked out slice by slice while the browser has nothing else to do. */
export function useReplay(run: PracticeRun): { readonly replay: Replay; readonly problem: Problem | null } {
  const [replay, setReplay] = useState(() => startReplay(run));
  const [problem, setProblem] = useState<Problem | null>(null);
  const isGoing = problem === null && (replay.phase === 'warming' || replay.phase === 'working');
  useEffect(() => {
    if (!isGoing) return;
    return whenIdle(() => {
      const next = continueReplay(run.engine, replay);
      if (next.ok) setReplay(next.value);
      else setProblem(next.problem);
    });
  }, [replay, isGoing]);
  return { replay, problem };
}
