import { openM2 } from './breathing.ts';
import type { PracticeFault } from './engine.ts';
import type { PracticeEntry, PracticeRun } from './run.ts';
import type { Controls } from './state.ts';
import { firstState } from './state.ts';
import { trueDepressionsPa } from './steady.ts';

export type PracticeTruth = {
  /** Open areas at the speed of the exercise less the part that all have in common, relative to their mean; 1 is level. */
  readonly openings: readonly number[];
  readonly depressionsPa: readonly number[];
  readonly spreadPa: number;
};

/** What no gauge showed: how the work went. */
export type PracticeReview = {
  readonly first: PracticeTruth;
  readonly now: PracticeTruth;
  readonly within: boolean;
  readonly nutsTight: boolean;
  readonly readings: number;
  readonly moves: number;
  readonly turns: number;
  readonly seconds: number;
  readonly hottestK: number;
  readonly tooHotSeconds: number;
  readonly fault: PracticeFault | null;
  /** True spread after each reading and each turn. */
  readonly course: readonly { readonly entry: PracticeEntry; readonly spreadPa: number }[];
};

/** The truth with the screws so far turned. */
export function truthAt(run: PracticeRun, screwTurns: readonly number[]): PracticeTruth {
  const { engine, state } = run;
  const controls: Controls = { ...state.controls, screwTurns };
  const depressionsPa = trueDepressionsPa(engine, controls);
  const areas = engine.cylinders.map((_, i) => openM2(engine, i, state.lift, controls));
  const mean = areas.reduce((sum, area) => sum + area, 0) / areas.length;
  return {
    openings: areas.map((area) => area / mean),
    depressionsPa,
    spreadPa: Math.max(...depressionsPa) - Math.min(...depressionsPa),
  };
}

/** The review of a run so far. */
export function reviewRun(run: PracticeRun): PracticeReview {
  const { engine, state, entries } = run;
  const first = truthAt(run, firstState(engine, 0).controls.screwTurns);
  const now = truthAt(run, state.controls.screwTurns);
  const turns = entries.flatMap((entry) =>
    entry.kind === 'action' && entry.action.kind === 'turn' ? [entry.happened.turns] : [],
  );
  const told = entries.filter(
    (entry) => entry.kind === 'reading' || ['turn', 'tighten'].includes(entry.action.kind),
  );
  return {
    first,
    now,
    within: now.spreadPa <= engine.tolerancePa,
    nutsTight: state.controls.nutTight.every(Boolean),
    readings: entries.filter(({ kind }) => kind === 'reading').length,
    moves: turns.filter((turned) => turned !== 0).length,
    turns: turns.reduce((sum, turned) => sum + Math.abs(turned), 0),
    seconds: state.seconds,
    hottestK: run.hottestK,
    tooHotSeconds: run.tooHotSeconds,
    fault: engine.fault,
    course: courseOf(run, told),
  };
}

/** Most entries move nothing: the truth is worked out only where the screws stand elsewhere than before. */
function courseOf(run: PracticeRun, told: readonly PracticeEntry[]): PracticeReview['course'] {
  const spreads = new Map<readonly number[], number>();
  return told.map((entry) => {
    const spreadPa = spreads.get(entry.screwTurns) ?? truthAt(run, entry.screwTurns).spreadPa;
    spreads.set(entry.screwTurns, spreadPa);
    return { entry, spreadPa };
  });
}
