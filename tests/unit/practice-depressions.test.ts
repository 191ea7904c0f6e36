import { expect, test } from 'vitest';
import {
  advance,
  firstState,
  generations,
  inventEngine,
  practiceEngineExample,
  practiceGrades,
  rpmOf,
  trueDepressionsPa,
} from '../../src/calculators/index.ts';
import { runnerPa } from '../../src/calculators/practice/breathing.ts';
import { warmK } from '../../src/calculators/practice/constants.ts';
import { mmHg } from '../engine/invented.ts';

test.each(generations.flatMap((generation) => practiceGrades.map((grade) => [generation, grade] as const)))(
  '%s, grade %i: depressions as they are commonly found, at work and at idle',
  (generation, grade) => {
    const invented = inventEngine({ ...practiceEngineExample, generation, grade, seed: 5 });
    if (!invented.ok) throw new Error(JSON.stringify(invented.problem));
    const engine = invented.value;
    const level = trueDepressionsPa(engine, firstState(engine, 0).controls).map((pa) => pa / mmHg);
    const mean = level.reduce((sum, each) => sum + each, 0) / level.length;
    expect(mean).toBeGreaterThan(150);
    expect(mean).toBeLessThan(350);
    const warm = advance(engine, { ...firstState(engine, 1), metalK: warmK }, 10);
    const idle = engine.cylinders.map(
      (cylinder, i) => (engine.ambientPa - runnerPa(cylinder, warm.runnerKg[i]!)) / mmHg,
    );
    const meanAtIdle = idle.reduce((sum, each) => sum + each, 0) / idle.length;
    expect(meanAtIdle).toBeGreaterThan(200);
    expect(meanAtIdle).toBeLessThan(530);
    const rpm = rpmOf(engine, warm.kineticJ);
    expect(rpm).toBeGreaterThan(500);
    expect(rpm).toBeLessThan(1600);
  },
);
