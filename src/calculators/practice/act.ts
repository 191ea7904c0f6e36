import { startRpm, tooHotK } from './constants.ts';
import type { PracticeEngine } from './engine.ts';
import { nextNormal } from './random.ts';
import { kineticJOf } from './state.ts';
import type { Controls, EngineState } from './state.ts';

/** What a person can do at the engine. Screws and cylinders are counted from 1; positive turns open. */
export type PracticeAction =
  | { readonly kind: 'hand'; readonly reach: number }
  | { readonly kind: 'idle-screw'; readonly turns: number }
  | { readonly kind: 'select'; readonly cylinder: number | null }
  | { readonly kind: 'tap'; readonly opening: number }
  | { readonly kind: 'vent'; readonly open: boolean }
  | { readonly kind: 'fan'; readonly on: boolean }
  | { readonly kind: 'loosen'; readonly screw: number }
  | { readonly kind: 'turn'; readonly screw: number; readonly turns: number }
  | { readonly kind: 'tighten'; readonly screw: number; readonly held: boolean }
  | { readonly kind: 'start' }
  | { readonly kind: 'stop' };

/** What came of it: turns really made, whether a thread stopped them, and whether a tight nut forbade them. */
export type Happened = {
  readonly turns: number;
  readonly boundWhen: 'closing' | 'opening' | null;
  readonly nutTight: boolean;
};

const nothing: Happened = { turns: 0, boundWhen: null, nutTight: false };

/** A nut that is tightened without holding the screw drags it so many times as far; common practice says “hold it”, the figure is from memory. */
const letGoFactor = 4;

/** The engine's answer to an action; it takes no time of its own. */
export function act(
  engine: PracticeEngine,
  state: EngineState,
  action: PracticeAction,
): { readonly state: EngineState; readonly happened: Happened } {
  const { controls } = state;
  const set = (part: Partial<Controls>, happened = nothing) => ({
    state: { ...state, controls: { ...controls, ...part } },
    happened,
  });
  switch (action.kind) {
    case 'hand': {
      const hand = clamp(action.reach, 0, 1);
      const lift = clamp(state.lift, hand - engine.cableStick, hand + engine.cableStick);
      const moved = set({ hand });
      return { ...moved, state: { ...moved.state, lift: Math.max(0, lift) } };
    }
    case 'idle-screw': {
      const { thread } = engine.idleScrew;
      const wanted = controls.idleTurns + action.turns;
      const idleTurns = clamp(wanted, -thread.closing, thread.opening);
      return set({ idleTurns }, madeTurns(idleTurns - controls.idleTurns, wanted - idleTurns));
    }
    case 'select':
      return set({ selected: action.cylinder });
    case 'tap':
      return set({ tap: clamp(action.opening, 0, 1) });
    case 'vent':
      return set({ venting: action.open });
    case 'fan':
      return set({ fan: action.on });
    case 'loosen':
      return set({ nutTight: replaced(controls.nutTight, action.screw, false) });
    case 'turn':
      return turned(engine, state, action.screw, action.turns);
    case 'tighten':
      return tightened(engine, state, action.screw, action.held);
    case 'stop':
      return { state: { ...state, running: false }, happened: nothing };
    case 'start': {
      if (state.running) return { state, happened: nothing };
      const kineticJ = kineticJOf(engine, startRpm);
      const { ledger } = state;
      const starterJ = ledger.starterJ + kineticJ - state.kineticJ;
      return {
        state: { ...state, running: true, kineticJ, ledger: { ...ledger, starterJ } },
        happened: nothing,
      };
    }
  }
}

/** Too hot to go on: it has to be stopped, or a fan put before it. */
export const isTooHot = (state: EngineState): boolean => state.metalK > tooHotK;

function turned(engine: PracticeEngine, state: EngineState, screw: number, turns: number) {
  const { controls } = state;
  const own = engine.screws[screw - 1];
  const before = controls.screwTurns[screw - 1];
  if (own === undefined || before === undefined) throw new RangeError(`no screw ${screw}`);
  if (controls.nutTight[screw - 1]) return { state, happened: { ...nothing, nutTight: true } };
  const wanted = before + turns;
  const after = clamp(wanted, -own.thread.closing, own.thread.opening);
  return {
    state: { ...state, controls: { ...controls, screwTurns: replaced(controls.screwTurns, screw, after) } },
    happened: madeTurns(after - before, wanted - after),
  };
}

function tightened(engine: PracticeEngine, state: EngineState, screw: number, held: boolean) {
  const { controls } = state;
  const own = engine.screws[screw - 1];
  const before = controls.screwTurns[screw - 1];
  if (own === undefined || before === undefined) throw new RangeError(`no screw ${screw}`);
  if (controls.nutTight[screw - 1]) return { state, happened: { ...nothing, nutTight: true } };
  const [drawn, random] = nextNormal(state.random);
  const shift = drawn * own.lockShiftTurns * (held ? 1 : letGoFactor);
  const after = clamp(before + shift, -own.thread.closing, own.thread.opening);
  return {
    state: {
      ...state,
      random,
      controls: {
        ...controls,
        screwTurns: replaced(controls.screwTurns, screw, after),
        nutTight: replaced(controls.nutTight, screw, true),
      },
    },
    happened: { ...nothing, turns: after - before },
  };
}

/** Past its thread a screw does not turn: `missing` is what the thread did not allow. */
const madeTurns = (turns: number, missing: number): Happened => ({
  turns,
  boundWhen: Math.abs(missing) < 1e-9 ? null : missing < 0 ? 'closing' : 'opening',
  nutTight: false,
});

const clamp = (value: number, low: number, high: number): number => Math.min(Math.max(value, low), high);

const replaced = <Value>(values: readonly Value[], member: number, value: Value): readonly Value[] =>
  values.map((each, index) => (index === member - 1 ? value : each));
