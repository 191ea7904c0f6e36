import { expect, test } from 'vitest';
import { exampleSessions } from '../../src/calculators/example-sessions.ts';
import { compareSessions, type SessionComparison, type SessionEvent } from '../../src/calculators/index.ts';
import { inventedEngine } from '../engine/invented.ts';
import { randomFrom } from '../engine/random.ts';
import { runSession } from '../engine/session.ts';
import { tolerances } from '../tolerances.ts';

const { setUp } = exampleSessions['all-adjustable'];
const compared = (then: readonly SessionEvent[], now: readonly SessionEvent[]): SessionComparison => {
  const result = compareSessions({ setUp, events: then }, { setUp, events: now });
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value;
};

test('on engines that share no code with it, the ranges hold what is true', () => {
  let [within, all, effectsWithin, effects] = [0, 0, 0, 0];
  for (let seed = 1; seed <= 80; seed++) {
    const random = randomFrom(seed);
    const engine = inventedEngine({ linkage: setUp.screws.map(({ moves }) => moves) }, random);
    const deviations = (): number[] => {
      const depressions = engine.depressionsPa;
      const middle = depressions.reduce((sum, value) => sum + value, 0) / depressions.length;
      return depressions.map((value) => value - middle);
    };
    const then = runSession(setUp, engine);
    const leftThen = deviations();
    engine.turn(random.integer(1, 4), random.uniform(-0.3, 0.3)); // a year on the road
    const foundNow = deviations();
    const now = runSession(setUp, engine);
    const { carburettors, effect } = compared(then.events, now.events);
    for (const [i, { moved }] of carburettors.entries()) {
      all++;
      if (Math.abs(foundNow[i]! - leftThen[i]! - moved!.pa) <= moved!.widthPa) within++;
    }
    if (!effect) continue;
    effects++;
    if (!effect.changed) effectsWithin++;
  }
  expect(all).toBe(320);
  expect(effects).toBeGreaterThan(60);
  expect(within / all).toBeGreaterThanOrEqual(tolerances.comparedRanges.share);
  expect(effectsWithin / effects).toBeGreaterThanOrEqual(tolerances.comparedRanges.share);
});
