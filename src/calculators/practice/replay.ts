import type { SessionEvent } from '../protocol.ts';
import { valueOfChecked } from '../value-of-checked.ts';
import { act } from './act.ts';
import { advance } from './advance.ts';
import { warmK } from './constants.ts';
import type { PracticeEngine } from './engine.ts';
import { bringSpeedBack, doAdvisedStep } from './operator.ts';
import type { PracticeRun } from './run.ts';
import { firstState } from './state.ts';
import type { EngineState } from './state.ts';
import { trueDepressionsPa } from './steady.ts';

/** One step of the advice on the same engine: what was written down, and where the cylinders truly stood after it. */
export type ReplayStep = {
  readonly event: SessionEvent;
  readonly depressionsPa: readonly number[];
  readonly spreadPa: number;
};

/** What the advice would have done, as far as it has been worked out. */
export type Replay = {
  readonly phase: 'warming' | 'working' | 'done' | 'stop';
  readonly state: EngineState;
  readonly steps: readonly ReplayStep[];
  readonly hottestK: number;
};

/** It is worked out in slices of about so much of the engine's time while it warms up, seconds. */
const warmingSlice = 30;

/** The same engine as it stood before the person came. */
export const startReplay = ({ engine, exercise }: PracticeRun): Replay => ({
  phase: 'warming',
  state: firstState(engine, exercise.seed),
  steps: [],
  hottestK: engine.startK,
});

/** Works out the next slice: half a minute of warming up, or one step of the advice. */
export function continueReplay(engine: PracticeEngine, replay: Replay): Replay {
  const { phase, state, steps } = replay;
  if (phase === 'warming') return warmOn(engine, replay);
  if (phase !== 'working') return replay;
  const events = steps.map(({ event }) => event);
  const done = valueOfChecked(doAdvisedStep(engine, state, events));
  const { asked, state: after } = done;
  if (asked.step.kind === 'done' || asked.step.kind === 'stop') return { ...replay, phase: asked.step.kind };
  const event = done.events.at(-1)!;
  return {
    ...replay,
    state: after,
    steps: [...steps, { event, ...whereItStands(engine, replay, after) }],
    hottestK: Math.max(replay.hottestK, after.metalK),
  };
}

function warmOn(engine: PracticeEngine, replay: Replay): Replay {
  const held = bringSpeedBack(engine, replay.state);
  if (held.metalK >= warmK) {
    const { state } = act(engine, held, { kind: 'fan', on: true });
    return { ...replay, state, phase: 'working' };
  }
  const state = advance(engine, held, warmingSlice);
  return { ...replay, state, hottestK: Math.max(replay.hottestK, state.metalK) };
}

/** A reading moves nothing: only after a turn the truth is worked out anew. */
function whereItStands(engine: PracticeEngine, { state, steps }: Replay, after: EngineState) {
  const last = steps.at(-1);
  if (last !== undefined && after.controls.screwTurns === state.controls.screwTurns)
    return { depressionsPa: last.depressionsPa, spreadPa: last.spreadPa };
  const depressionsPa = trueDepressionsPa(engine, after.controls);
  return { depressionsPa, spreadPa: Math.max(...depressionsPa) - Math.min(...depressionsPa) };
}
