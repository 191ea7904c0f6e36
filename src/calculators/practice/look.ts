import type { PracticeEngine } from './engine.ts';
import type { EngineState } from './state.ts';

export type Look = {
  /** What the eye reads: the middle of the needle's swing over the last second, to the nearest step. */
  readonly depressionPa: number;
  /** Half of that swing. */
  readonly flutterPa: number;
  readonly rpm: number;
  /** The needle stood quite still: either the line is shut, or nothing changes there. */
  readonly still: boolean;
};

/** Below this share of a step the eye sees no movement; from memory. */
const seenShare = 0.1;

/** What a person reads on gauge and tachometer now. */
export function look(engine: PracticeEngine, state: EngineState): Look {
  const { gauge } = engine;
  const highest = Math.max(...state.watched);
  const lowest = Math.min(...state.watched);
  const steps = Math.round((highest + lowest) / 2 / gauge.resolutionPa);
  return {
    depressionPa: Math.min(Math.max(0, steps * gauge.resolutionPa), gauge.fullScalePa),
    flutterPa: (highest - lowest) / 2,
    rpm: tachometer(engine, state.tachometerRpm),
    still: highest - lowest < seenShare * gauge.resolutionPa,
  };
}

/** What the tachometer shows: its own error, to the nearest mark. */
export const tachometer = ({ tachometer: own }: PracticeEngine, rpm: number): number =>
  Math.max(0, Math.round((rpm + own.errorRpm) / own.stepRpm) * own.stepRpm);
