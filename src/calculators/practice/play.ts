import { stepSeconds, watchSeconds } from './constants.ts';
import type { Happened, PracticeAction } from './act.ts';
import { look } from './look.ts';
import { passTime, perform, writeReading } from './run.ts';
import type { PracticeRun } from './run.ts';

/** How fast the engine's time passes: as in life, and faster for warming up and waiting. */
export const practicePaces = [1, 4, 16] as const;
export type PracticePace = (typeof practicePaces)[number];

/** A run in the time of the person before it: frames of a screen are no whole steps of the engine. */
export type Play = {
  readonly run: PracticeRun;
  /** Time that has passed for the person and not yet for the engine; less than a step. */
  readonly owedSeconds: number;
  /** The vent springs shut at this time of the engine; null while it is shut. */
  readonly ventShutsAt: number | null;
};

/** A press opens the vent for so long: the line empties in a tenth of it. Common practice: a second at most. */
export const ventPressSeconds = 0.5;

/** What one press of a button moves: shares of the reach of the hand and of the tap; turns of a screw. */
export const practiceSteps = {
  hand: { fine: 0.0025, coarse: 0.02 },
  tap: 0.01,
  turns: [1 / 60, 1 / 16, 1 / 8, 1 / 4, 1 / 2],
} as const;

/** The hand's range on the screen: twice what the fastest exercise needs. */
export const mostHand = 0.6;

export const startPlay = (run: PracticeRun): Play => ({ run, owedSeconds: 0, ventShutsAt: null });

/** So many seconds pass for the person. */
export function playFor(play: Play, elapsedSeconds: number, pace: PracticePace): Play {
  const dueSeconds = play.owedSeconds + elapsedSeconds * pace;
  const steps = Math.floor(dueSeconds / stepSeconds);
  if (steps === 0) return { ...play, owedSeconds: dueSeconds };
  const run = passTime(play.run, steps * stepSeconds);
  const later = { ...play, run, owedSeconds: dueSeconds - steps * stepSeconds };
  return play.ventShutsAt !== null && run.state.seconds >= play.ventShutsAt ? shutVent(later) : later;
}

/** The person does something; the vent has `pressVent`. */
export function playAction(
  play: Play,
  action: PracticeAction,
): { readonly play: Play; readonly happened: Happened } {
  const { run, happened } = perform(play.run, action);
  return { play: { ...play, run }, happened };
}

/** Opens the vent; it springs shut after `ventPressSeconds` of the engine's time. */
export function pressVent(play: Play): Play {
  const { run } = perform(play.run, { kind: 'vent', open: true });
  return { ...play, run, ventShutsAt: run.state.seconds + ventPressSeconds };
}

function shutVent(play: Play): Play {
  return { ...play, run: perform(play.run, { kind: 'vent', open: false }).run, ventShutsAt: null };
}

/** Moves the hand by a share of its reach. */
export const nudgeHand = ({ run }: Play, by: number): PracticeAction => ({
  kind: 'hand',
  reach: Math.min(run.state.controls.hand + by, mostHand),
});

/** Moves the tap by a share of its range. */
export const nudgeTap = ({ run }: Play, by: number): PracticeAction => ({
  kind: 'tap',
  opening: run.state.controls.tap + by,
});

/** Writes the reading down; the same play while the selector connects nothing. */
export function playReading(play: Play): Play {
  const run = writeReading(play.run);
  return run === null ? play : { ...play, run };
}

/**
 * Whether the needle has come to rest since the last action: over the second that the eye watches, the middle of its
 * swing has moved by less than half a step of the gauge.
 */
export function isSettled({ engine, state, entries }: PracticeRun): boolean {
  const { watched } = state;
  if (state.seconds - (entries.at(-1)?.seconds ?? 0) < watchSeconds) return false;
  const half = watched.length / 2;
  const middleOf = (values: readonly number[]): number => (Math.max(...values) + Math.min(...values)) / 2;
  const moved = middleOf(watched.slice(half)) - middleOf(watched.slice(0, half));
  return Math.abs(moved) < engine.gauge.resolutionPa / 2;
}

/** How far the speed on the tachometer is from that of the exercise, in rpm; a reading counts within 50. */
export const offSpeedRpm = ({ engine, state }: PracticeRun): number =>
  look(engine, state).rpm - engine.targetRpm;
