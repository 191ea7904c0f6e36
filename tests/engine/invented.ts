import { TestEngine, type EngineDescription } from './engine.ts';
import type { Random } from './random.ts';

/** Conventional millimetre of mercury in pascals (ISO 80000-4). */
export const mmHg = 133.322387415;

export type Case = {
  readonly linkage: readonly (readonly number[])[];
  readonly firstSpreadPa?: number;
  readonly effectFactor?: readonly [number, number];
  readonly screwSpread?: number;
  readonly changes?: Partial<EngineDescription>;
};

/**
 * An invented engine: figures from memory, spread as the hard cases of the bench are. The first spread is brought to
 * the one asked for by scaling the turns that would level the set.
 */
export const inventedEngine = (given: Case, random: Random): TestEngine => {
  const screws = given.linkage.length;
  const [low, high] = given.effectFactor ?? [0.5, 2];
  const description: EngineDescription = {
    ambientPa: 101325,
    targetRpm: 2100,
    linkage: given.linkage,
    meanDepressionPa: random.uniform(230, 340) * mmHg,
    effectPaPerTurn: 140 * mmHg * Math.exp(random.uniform(Math.log(low), Math.log(high))),
    screwFactors: Array.from(
      { length: screws },
      () => 1 + random.uniform(-1, 1) * (given.screwSpread ?? 0.1),
    ),
    turnsToLevel: Array.from({ length: screws }, () => random.uniform(-1, 1)),
    gauge: { resolutionPa: 5 * mmHg, flutterPa: 3 * mmHg },
    speedErrorRpm: 15,
    tachometerErrorRpm: 0,
    lockShiftTurns: 0.015,
    commonShiftTurns: 0.01,
    warmUpPaPerMinute: 0,
    ...given.changes,
  };
  const wanted = given.firstSpreadPa ?? 200 * mmHg;
  const scaled = (factor: number): EngineDescription => ({
    ...description,
    turnsToLevel: description.turnsToLevel.map((turns) => turns * factor),
  });
  const spreadAt = (factor: number): number => new TestEngine(scaled(factor), random).spreadPa;
  let [below, above] = [0, 0.05];
  while (spreadAt(above) < wanted && above < 50) above *= 2;
  for (let k = 0; k < 25; k++) {
    const middle = (below + above) / 2;
    if (spreadAt(middle) < wanted) below = middle;
    else above = middle;
  }
  return new TestEngine(scaled(above), random);
};
