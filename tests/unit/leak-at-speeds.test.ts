import { describe, expect, it } from 'vitest';
import { inventEngine, leakAtSpeeds, leakExample } from '../../src/calculators/index.ts';

const engine = inventEngine(leakExample.exercise);
if (!engine.ok) throw new Error(engine.problem.kind);
const apart = (leak: number) =>
  leakAtSpeeds(engine.value, leak, leakExample.speedsRpm).map(({ apartPa }) => apartPa);

describe('leakAtSpeeds(engine, leak, speeds)', () => {
  it('leaves a set without a leak level at every speed', () => {
    for (const difference of apart(0)) expect(difference).toBeCloseTo(0, 3);
  });

  it('makes the leaking cylinder read low, and more so the nearer the engine is to idle', () => {
    const differences = apart(leakExample.leakOfIdleOpening);
    expect(differences).toEqual(differences.toSorted((a, b) => b - a));
    expect(differences.at(-1)).toBeGreaterThan(0);
  });

  it('has no answer for an engine without a cylinder', () => {
    expect(() => leakAtSpeeds({ ...engine.value, cylinders: [] }, 0.1, [1100])).toThrow(RangeError);
  });

  it('puts readings further apart where the leak is larger', () => {
    const [small, large] = [apart(0.1), apart(0.2)];
    large.forEach((difference, speed) => expect(difference).toBeGreaterThan(small[speed] ?? NaN));
  });
});
