import { formatRunningTime, ranUnwatched, msInMinutes } from '../../../calculators/index.ts';
import { nowMs } from '../../../device/clock.ts';
import type { BenchActions, BenchState } from './use-bench.ts';
import type { SessionHead } from '../../../device/stored-session.ts';

/** The device slept, or its clock was changed: only the person knows whether the engine ran. */
export function UnwatchedQuestion({
  timer,
  unwatchedMs,
  actions,
}: {
  timer: SessionHead['timer'];
  unwatchedMs: BenchState['unwatchedMs'];
  actions: BenchActions;
}) {
  if (unwatchedMs === 0) return null;
  return (
    <div class="errors" role="alert">
      <p>
        <b>Did the engine run for the last {formatRunningTime(msInMinutes(unwatchedMs))}?</b> This page was
        not awake, so its time stands still since then.
      </p>
      <p class="actions">
        <button
          class="button"
          type="button"
          onClick={() => actions.seeTimer(ranUnwatched(timer, unwatchedMs, nowMs()), 0)}
        >
          It ran
        </button>
        <button class="button" type="button" onClick={() => actions.seeTimer(timer, 0)}>
          It stood still
        </button>
      </p>
    </div>
  );
}
