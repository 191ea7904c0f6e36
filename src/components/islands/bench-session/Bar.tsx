import { useEffect, useState } from 'preact/hooks';
import {
  benchDefaults,
  formatChance,
  formatRunningTime,
  heatOf,
  runningMinutes,
  startTimer,
  stopTimer,
  type Bench,
} from '../../../calculators/index.ts';
import { everySecond, nowMs } from '../../../device/clock.ts';
import type { SessionHead } from '../../../device/stored-session.ts';
import type { BenchActions } from './use-bench.ts';
import { figureWithUnit, type Figures } from './words.ts';

/** How long the engine has run, when it should rest, and the chance; the same height in every state. */
export function Bar({
  head,
  bench,
  figures,
  actions,
}: {
  head: SessionHead;
  bench: Bench;
  figures: Figures;
  actions: BenchActions;
}) {
  const [now, setNow] = useState(nowMs());
  useEffect(() => everySecond(() => setNow(nowMs())), []);
  const minutes = runningMinutes(head.timer, now);
  const running = head.timer.runningSince !== null;
  const late = heatOf(minutes) === 'rest';
  const time = formatRunningTime(minutes);
  const toggle = (): void =>
    actions.changeHead({ timer: running ? stopTimer(head.timer, nowMs()) : startTimer(head.timer, nowMs()) });
  return (
    <div class="bar">
      <button class="timer" type="button" onClick={toggle}>
        {late ? (
          <span class="late">
            {running ? 'Running' : 'Off,'} {time} · stop and let it cool
          </span>
        ) : (
          <span>
            {running ? 'Running' : 'Engine off,'} <b>{time}</b>
            <span class="rest"> · rest at {formatRunningTime(benchDefaults.restAfterMinutes)}</span>
          </span>
        )}
        <span class="unseen">
          {' '}
          {running ? 'Press when the engine stands.' : 'Press when the engine runs.'}
        </span>
      </button>
      <span>
        <b>{formatChance(bench.estimate.chanceWithin)}</b> within{' '}
        {figureWithUnit(figures.setUp.tolerancePa, figures)}
      </span>
    </div>
  );
}
