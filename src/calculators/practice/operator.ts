import { nextStep } from '../next-step.ts';
import type { NextStep, SessionEvent, SetUp } from '../protocol.ts';
import type { Result } from '../result.ts';
import { succeed } from '../result.ts';
import { act } from './act.ts';
import type { PracticeAction } from './act.ts';
import { advance } from './advance.ts';
import type { PracticeEngine } from './engine.ts';
import { look } from './look.ts';
import type { EngineState } from './state.ts';

/*
 * A careful person at the practice engine: vents, selects, damps, brings the speed back, waits, reads; loosens, turns,
 * holds the screw and nips the nut. Every wait takes the engine's own time. Seconds from common practice.
 */
const ventFor = 0.5;
const settleFor = 2.5;
const turningTakes = 15;
const readingTakes = 6;
/** Where the needle just still moves on these gauges. */
const goodTap = 0.15;
/** So many rpm to a full reach of the hand, roughly: what a person learns in the first minute. */
const rpmPerReach = 4500;
const speedCloseEnough = 20;
const triesForSpeed = 25;

/** What the bench session is told of a practice engine before the first reading. */
export const setUpOf = (engine: PracticeEngine): SetUp => ({
  carburettors: engine.cylinders.length,
  screws: engine.screws.map(({ moves, thread }) => ({ moves, turnsLeft: thread })),
  tolerancePa: engine.tolerancePa,
  gauge: { resolutionPa: engine.gauge.resolutionPa, flutterPa: engine.gauge.flutterPa },
  targetRpm: engine.targetRpm,
  ambientPa: engine.ambientPa,
});

const does = (engine: PracticeEngine, state: EngineState, action: PracticeAction): EngineState =>
  act(engine, state, action).state;

/** Brings the speed back to that of the exercise with the hand, watching the tachometer. */
export function bringSpeedBack(engine: PracticeEngine, before: EngineState): EngineState {
  let state = before.running ? before : does(engine, before, { kind: 'start' });
  for (let tries = 0; tries < triesForSpeed; tries += 1) {
    const off = engine.targetRpm - look(engine, state).rpm;
    if (Math.abs(off) <= speedCloseEnough && tries > 0) break;
    const reach = state.controls.hand + off / rpmPerReach;
    state = advance(engine, does(engine, state, { kind: 'hand', reach }), 1.2);
  }
  return state;
}

/** Runs the engine until it is warm; a fan stands before it from then on. */
export function warmUp(engine: PracticeEngine, before: EngineState, wantedK: number): EngineState {
  let state = bringSpeedBack(engine, before);
  for (let halfMinutes = 0; halfMinutes < 40 && state.metalK < wantedK; halfMinutes += 1)
    state = bringSpeedBack(engine, advance(engine, state, 30));
  return does(engine, state, { kind: 'fan', on: true });
}

/** Reads a cylinder; the event is what a person would write down. */
export function readCylinder(
  engine: PracticeEngine,
  before: EngineState,
  cylinder: number,
): { readonly state: EngineState; readonly event: SessionEvent } {
  let state = does(engine, before, { kind: 'select', cylinder: null });
  state = advance(engine, does(engine, state, { kind: 'vent', open: true }), ventFor);
  state = does(engine, does(engine, state, { kind: 'vent', open: false }), { kind: 'select', cylinder });
  state = bringSpeedBack(engine, does(engine, state, { kind: 'tap', opening: goodTap }));
  state = advance(engine, state, settleFor);
  const { depressionPa, rpm } = look(engine, state);
  const minute = state.seconds / 60;
  return {
    state: advance(engine, state, readingTakes),
    event: { kind: 'reading', carburettor: cylinder, depressionPa, rpm, minute },
  };
}

/** Turns a screw and locks it, holding it; the event tells the turns that were really made before the nut was nipped. */
export function turnScrew(
  engine: PracticeEngine,
  before: EngineState,
  screw: number,
  turns: number,
): { readonly state: EngineState; readonly event: SessionEvent } {
  const loose = does(engine, before, { kind: 'loosen', screw });
  const { state, happened } = act(engine, loose, { kind: 'turn', screw, turns });
  const locked = does(engine, state, { kind: 'tighten', screw, held: true });
  const after = advance(engine, locked, turningTakes);
  return { state: after, event: { kind: 'turn', screw, turns: happened.turns, minute: after.seconds / 60 } };
}

/** One step of the advice, done: what was asked, what was written down, and the engine after it. */
export type AdvisedStep = {
  readonly asked: NextStep;
  readonly state: EngineState;
  readonly events: readonly SessionEvent[];
};

/**
 * Does what the advice asks for next, given what was written down before. Once the advice says done or stop the events
 * and the state stay as they are. Problems: those of `nextStep`.
 */
export function doAdvisedStep(
  engine: PracticeEngine,
  state: EngineState,
  events: readonly SessionEvent[],
): Result<AdvisedStep> {
  const asked = nextStep(setUpOf(engine), events);
  if (!asked.ok) return asked;
  const { step } = asked.value;
  if (step.kind === 'done' || step.kind === 'stop') return succeed({ asked: asked.value, state, events });
  const done =
    step.kind === 'turn'
      ? turnScrew(engine, state, step.screw, step.turns)
      : readCylinder(engine, state, step.carburettor);
  return succeed({ asked: asked.value, state: done.state, events: [...events, done.event] });
}
