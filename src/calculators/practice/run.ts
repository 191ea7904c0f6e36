import type { SessionEvent } from '../protocol.ts';
import { act, isTooHot } from './act.ts';
import type { Happened, PracticeAction } from './act.ts';
import { advance } from './advance.ts';
import type { PracticeEngine } from './engine.ts';
import type { Exercise } from './exercise.ts';
import { look } from './look.ts';
import type { Look } from './look.ts';
import { firstState } from './state.ts';
import type { EngineState } from './state.ts';

/** One thing that the person did, and what came of it; `screwTurns` are those after it. */
export type PracticeEntry = {
  readonly seconds: number;
  readonly screwTurns: readonly number[];
  readonly nutsTight: boolean;
} & (
  | { readonly kind: 'action'; readonly action: PracticeAction; readonly happened: Happened }
  /** What was read, of which cylinder the person says it is, and how warm the engine was. */
  | { readonly kind: 'reading'; readonly cylinder: number; readonly look: Look; readonly metalK: number }
);

/** A person's work on an exercise: everything follows from the exercise, what was done, and when. */
export type PracticeRun = {
  readonly exercise: Exercise;
  readonly engine: PracticeEngine;
  readonly state: EngineState;
  readonly entries: readonly PracticeEntry[];
  readonly hottestK: number;
  readonly tooHotSeconds: number;
};

export const startRun = (exercise: Exercise, engine: PracticeEngine): PracticeRun => ({
  exercise,
  engine,
  state: firstState(engine, exercise.seed),
  entries: [],
  hottestK: engine.startK,
  tooHotSeconds: 0,
});

/** Time passes. */
export function passTime(run: PracticeRun, seconds: number): PracticeRun {
  const state = advance(run.engine, run.state, seconds);
  return {
    ...run,
    state,
    hottestK: Math.max(run.hottestK, state.metalK),
    tooHotSeconds: run.tooHotSeconds + (isTooHot(state) ? state.seconds - run.state.seconds : 0),
  };
}

/** Small movements of the hand are no entries: the last one before something else stands for all of them. */
const isSameGesture = (last: PracticeEntry | undefined, action: PracticeAction): boolean =>
  last?.kind === 'action' &&
  last.action.kind === action.kind &&
  (action.kind === 'hand' || action.kind === 'tap');

/** The person does something. */
export function perform(
  run: PracticeRun,
  action: PracticeAction,
): { readonly run: PracticeRun; readonly happened: Happened } {
  const { state, happened } = act(run.engine, run.state, action);
  const entry: PracticeEntry = { kind: 'action', action, happened, ...standingOf(state) };
  const before = isSameGesture(run.entries.at(-1), action) ? run.entries.slice(0, -1) : run.entries;
  return { run: { ...run, state, entries: [...before, entry] }, happened };
}

/** The person writes down what the gauge shows as the reading of the selected cylinder; null while none is selected. */
export function writeReading(run: PracticeRun): PracticeRun | null {
  const { selected } = run.state.controls;
  if (selected === null) return null;
  const entry: PracticeEntry = {
    kind: 'reading',
    cylinder: selected,
    look: look(run.engine, run.state),
    metalK: run.state.metalK,
    ...standingOf(run.state),
  };
  return { ...run, entries: [...run.entries, entry] };
}

/** How many readings were written down and how often a screw or a nut was touched: what a goal or an advice can change with. */
export const workDone = ({ entries }: PracticeRun): number =>
  entries.filter(
    (entry) => entry.kind === 'reading' || ['loosen', 'turn', 'tighten'].includes(entry.action.kind),
  ).length;

const standingOf = ({ seconds, controls }: EngineState) => ({
  seconds,
  screwTurns: controls.screwTurns,
  nutsTight: controls.nutTight.every(Boolean),
});

/**
 * What a person would have written down of a run: the readings, and for each time that a nut was tightened the turns
 * that its screw had been given since it was loosened. A reading with a nut loose is left out: the protocol's are locked.
 */
export function sessionEventsOf(run: PracticeRun): readonly SessionEvent[] {
  const events: SessionEvent[] = [];
  const sinceLoosened = new Map<number, number>();
  for (const entry of run.entries) {
    const minute = entry.seconds / 60;
    if (entry.kind === 'reading') {
      if (!entry.nutsTight) continue;
      const { depressionPa, rpm } = entry.look;
      events.push({ kind: 'reading', carburettor: entry.cylinder, depressionPa, rpm, minute });
    } else if (entry.action.kind === 'turn') {
      const { screw } = entry.action;
      sinceLoosened.set(screw, (sinceLoosened.get(screw) ?? 0) + entry.happened.turns);
    } else if (entry.action.kind === 'tighten') {
      const { screw } = entry.action;
      const turns = sinceLoosened.get(screw) ?? 0;
      sinceLoosened.delete(screw);
      if (turns !== 0) events.push({ kind: 'turn', screw, turns, minute });
    }
  }
  return events;
}
