import { describe, expect, it } from 'vitest';
import {
  firstState,
  inventEngine,
  leakAtSpeeds,
  leakExample,
  trueDepressionsPa,
} from '../../src/calculators/index.ts';

const engine = inventEngine(leakExample.exercise);
if (!engine.ok) throw new Error(engine.problem.kind);
const mean = (values: readonly number[]) => values.reduce((sum, each) => sum + each, 0) / values.length;
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
    expect(() => leakAtSpeeds({ ...engine.value, cylinders: [] }, 0.1, [1100])).toThrow(
      'an engine without a cylinder',
    );
  });

  it('puts readings further apart where the leak is larger', () => {
    const [small, large] = [apart(0.1), apart(0.2)];
    large.forEach((difference, speed) => expect(difference).toBeGreaterThan(small[speed] ?? NaN));
  });

  it('draws as much beside the throttle as that would let past if it were opened by the share', () => {
    const [first] = engine.value.cylinders;
    const areaM2 = mean(engine.value.cylinders.map((cylinder) => cylinder.areaM2));
    const opened = engine.value.cylinders.map((_, i) => ({
      ...first!,
      areaM2: areaM2 * (i === 0 ? 1.2 : 1),
    }));
    const other = { ...engine.value, cylinders: opened };
    for (const { rpm, leakingPa, soundPa } of leakAtSpeeds(engine.value, 0.2, [1100, 2200])) {
      const [openedPa, otherPa] = trueDepressionsPa(other, firstState(other, 0).controls, rpm);
      expect(leakingPa / openedPa!).toBeCloseTo(1, 6);
      expect(soundPa / otherPa!).toBeCloseTo(1, 6);
    }
  });
});
