import { mean } from '../mean.ts';
import type { AtLeastOne } from '../mean.ts';
import type { PracticeEngine } from './engine.ts';
import { practiceEngineExample } from './exercise.ts';
import { firstState } from './state.ts';
import { trueDepressionsPa } from './steady.ts';

/** Depressions at one speed of a set that is level but for a leak at its first cylinder. */
export type LeakAtSpeed = {
  readonly rpm: number;
  readonly leakingPa: number;
  /** The same for all the others. */
  readonly soundPa: number;
  readonly apartPa: number;
};

/** A leak behind one throttle of an invented engine, at idle, where it is balanced, and above; figures from memory. */
export const leakExample = {
  exercise: practiceEngineExample,
  /** Size of the leak, as a share of what the shut throttle lets past. */
  leakOfIdleOpening: 0.15,
  speedsRpm: [1100, 2200, 3300],
} as const;

/**
 * What a leak does to the readings: all throttles are set to the same opening, one leak is added, and the hand brings
 * the engine to each speed. `leakOfIdleOpening` is the area of the leak over that of the throttle with the hand off it.
 */
export function leakAtSpeeds(
  engine: PracticeEngine,
  leakOfIdleOpening: number,
  speedsRpm: readonly number[],
): readonly LeakAtSpeed[] {
  const [first] = engine.cylinders;
  if (first === undefined) throw new RangeError('an engine without a cylinder');
  const areaM2 = mean(engine.cylinders.map((cylinder) => cylinder.areaM2) as unknown as AtLeastOne);
  const leakM2 = leakOfIdleOpening * first.dischargeCoefficient * areaM2;
  const cylinders = engine.cylinders.map((_, i) => ({ ...first, areaM2, leakM2: i === 0 ? leakM2 : 0 }));
  const level: PracticeEngine = { ...engine, cylinders };
  const { controls } = firstState(level, 0);
  return speedsRpm.map((rpm) => {
    const [leakingPa = NaN, soundPa = NaN] = trueDepressionsPa(level, controls, rpm);
    return { rpm, leakingPa, soundPa, apartPa: soundPa - leakingPa };
  });
}
