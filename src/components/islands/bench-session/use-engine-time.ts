import { useEffect, useRef } from 'preact/hooks';
import { seeTimer } from '../../../calculators/index.ts';
import { everySecond, nowMoment } from '../../../device/clock.ts';
import type { SessionHead } from '../../../device/stored-session.ts';
import type { BenchActions } from './use-bench.ts';

/** Looks at the clocks every second, and puts the engine's time right when one of them was set or stood still. */
export const useEngineTime = (timer: SessionHead['timer'], { seeTimer: put }: BenchActions): void => {
  const latest = useRef({ timer, put });
  latest.current = { timer, put };
  useEffect(() => {
    let before = nowMoment();
    return everySecond(() => {
      const now = nowMoment();
      const seen = seeTimer(latest.current.timer, before, now);
      before = now;
      if (seen.timer !== latest.current.timer) latest.current.put(seen.timer, seen.unwatchedMs);
    });
  }, []);
};
