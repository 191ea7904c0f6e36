import { benchDefaults } from './bench-defaults.ts';

/** Running time gathered so far, and since when (wall time) the engine has been running again; null while it stands. */
export type RunningTimer = { readonly gatheredMs: number; readonly runningSince: number | null };

const msPerMinute = 60_000;

/** Minutes that the engine has run. A clock that was set back adds nothing. */
export const runningMinutes = (timer: RunningTimer, nowMs: number): number =>
  (timer.gatheredMs + sinceStart(timer, nowMs)) / msPerMinute;

export const startTimer = (timer: RunningTimer, nowMs: number): RunningTimer =>
  timer.runningSince === null ? { ...timer, runningSince: nowMs } : timer;

export const stopTimer = (timer: RunningTimer, nowMs: number): RunningTimer => ({
  gatheredMs: timer.gatheredMs + sinceStart(timer, nowMs),
  runningSince: null,
});

const sinceStart = (timer: RunningTimer, nowMs: number): number =>
  timer.runningSince === null ? 0 : Math.max(0, nowMs - timer.runningSince);

/** Whether an engine that stands still has run long enough to rest. */
export const heatOf = (minutes: number): 'cool' | 'soon' | 'rest' => {
  if (minutes >= benchDefaults.restAfterMinutes) return 'rest';
  return minutes >= benchDefaults.restAfterMinutes - benchDefaults.reminderMinutes ? 'soon' : 'cool';
};

/** Minutes as an event keeps them: hundredths, finer than a hand is quick. */
export const recordedMinute = (minutes: number): number => Math.round(minutes * 100) / 100;
