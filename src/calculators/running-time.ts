import { benchDefaults } from './bench-defaults.ts';

/** Running time gathered so far, and since when (wall time) the engine has been running again; null while it stands. */
export type RunningTimer = { readonly gatheredMs: number; readonly runningSince: number | null };

const msPerMinute = 60_000;

/** The timer of an engine that stands still after so many minutes. */
export const stoppedTimer = (minutes: number): RunningTimer => ({
  gatheredMs: minutes * msPerMinute,
  runningSince: null,
});

/** Minutes that the engine has run. A clock that was set back adds nothing. */
export const runningMinutes = (timer: RunningTimer, nowMs: number): number =>
  (timer.gatheredMs + sinceStart(timer, nowMs)) / msPerMinute;

export const msInMinutes = (ms: number): number => ms / msPerMinute;

export const startTimer = (timer: RunningTimer, nowMs: number): RunningTimer =>
  timer.runningSince === null ? { ...timer, runningSince: nowMs } : timer;

export const stopTimer = (timer: RunningTimer, nowMs: number): RunningTimer => ({
  gatheredMs: timer.gatheredMs + sinceStart(timer, nowMs),
  runningSince: null,
});

const sinceStart = (timer: RunningTimer, nowMs: number): number =>
  timer.runningSince === null ? 0 : Math.max(0, nowMs - timer.runningSince);

/** A sight of the clocks: the wall clock, which can be set, and one that only counts while the page lives. */
export type Moment = { readonly wallMs: number; readonly steadyMs: number };

/** The timer at a later sight of the clocks, and for how long nobody watched it: then it stopped at the earlier sight. */
export type SeenTimer = { readonly timer: RunningTimer; readonly unwatchedMs: number };

/** A wall clock that falls behind by more than this was set back; by less, it was put right. */
const clockSetBackMs = 10_000;

/**
 * Engine time must neither jump nor run backwards. A clock that was set back moves the start back with it. A gap, since
 * the device slept or the clock was set forward, is left out until the person has said whether the engine ran.
 */
export const seeTimer = (timer: RunningTimer, before: Moment, now: Moment): SeenTimer => {
  if (timer.runningSince === null) return { timer, unwatchedMs: 0 };
  const wall = now.wallMs - before.wallMs;
  const steady = now.steadyMs - before.steadyMs;
  const gap = Math.max(wall, steady);
  if (isUnwatched(gap)) return { timer: stopTimer(timer, before.wallMs), unwatchedMs: gap };
  if (steady - wall <= clockSetBackMs) return { timer, unwatchedMs: 0 };
  return { timer: { ...timer, runningSince: timer.runningSince + wall - steady }, unwatchedMs: 0 };
};

/** The timer of a session that is opened again; nobody has watched it since the latest minute of its events. */
export const reopenTimer = (
  timer: RunningTimer,
  events: readonly { readonly minute?: number | undefined }[],
  nowMs: number,
): SeenTimer => {
  const lastMinute = Math.max(0, ...events.map(({ minute = 0 }) => minute));
  const unwatchedMs = (runningMinutes(timer, nowMs) - lastMinute) * msPerMinute;
  return timer.runningSince === null || !isUnwatched(unwatchedMs)
    ? { timer, unwatchedMs: 0 }
    : { timer: stoppedTimer(lastMinute), unwatchedMs };
};

const isUnwatched = (ms: number): boolean => ms >= benchDefaults.unwatchedMinutes * msPerMinute;

/** The engine ran while nobody watched: the time counts, and goes on. */
export const ranUnwatched = (timer: RunningTimer, unwatchedMs: number, nowMs: number): RunningTimer => ({
  gatheredMs: timer.gatheredMs + unwatchedMs,
  runningSince: nowMs,
});

/** Whether an engine that stands still has run long enough to rest. */
export const heatOf = (minutes: number): 'cool' | 'soon' | 'rest' => {
  if (minutes >= benchDefaults.restAfterMinutes) return 'rest';
  return minutes >= benchDefaults.restAfterMinutes - benchDefaults.reminderMinutes ? 'soon' : 'cool';
};

/** Minutes as an event keeps them: hundredths, finer than a hand is quick. */
export const recordedMinute = (minutes: number): number => Math.round(minutes * 100) / 100;
