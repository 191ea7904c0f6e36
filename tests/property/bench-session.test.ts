import fc from 'fast-check';
import { expect, test } from 'vitest';
import { exampleSessions } from '../../src/calculators/example-sessions.ts';
import { benchDefaults, computeBench, generations, nextStep } from '../../src/calculators/index.ts';
import type { BenchSetUp, OpeningDirection, SessionEvent } from '../../src/calculators/index.ts';
import { mmHg } from '../engine/invented.ts';
import { tries } from '../property-runs.ts';

const directions: readonly OpeningDirection[] = ['clockwise', 'anticlockwise', 'unknown'];

/** Part of an invented session, more events of any kind, a place for the sign-off round, and directions. */
const bench = fc.constantFrom(...generations).chain((generation) => {
  const { setUp, events } = exampleSessions[generation];
  const screw = fc.integer({ min: 1, max: setUp.screws.length });
  const reading = fc.record({
    kind: fc.constant('reading' as const),
    carburettor: fc.integer({ min: 1, max: setUp.carburettors }),
    depressionPa: fc.integer({ min: 200, max: 380 }).map((value) => value * mmHg),
  });
  const turn = fc.record({
    kind: fc.constant('turn' as const),
    screw,
    turns: fc.double({ min: -0.5, max: 0.5, noNaN: true }),
  });
  return fc.record({
    setUp: fc
      .array(fc.constantFrom(...directions), {
        minLength: setUp.screws.length,
        maxLength: setUp.screws.length,
      })
      .map((opens): BenchSetUp => ({ ...setUp, opens })),
    events: fc
      .tuple(
        fc.integer({ min: 0, max: events.length }),
        fc.array(fc.oneof({ weight: 4, arbitrary: reading }, { weight: 1, arbitrary: turn }), {
          maxLength: 8,
        }),
      )
      .map(([count, more]): SessionEvent[] => [...events.slice(0, count), ...more]),
    fromEvent: fc.option(fc.integer({ min: 0, max: 20 })),
  });
});

test('a set is signed off only after every carburettor was read in the round, with no turn since and the spread within', () => {
  fc.assert(
    fc.property(bench, ({ setUp, events, fromEvent }) => {
      const computed = computeBench(setUp, events, fromEvent);
      if (!computed.ok) throw new Error(computed.problem.kind);
      const { step, round } = computed.value;
      const since = events.slice(fromEvent ?? events.length);
      const turned = since.some(({ kind }) => kind === 'turn');
      const readingsOf = (carburettor: number): number[] =>
        since.flatMap((event) =>
          event.kind === 'reading' && event.carburettor === carburettor ? [event.depressionPa] : [],
        );
      const all = Array.from({ length: setUp.carburettors }, (_, i) => readingsOf(i + 1));
      const unread = all.findIndex((readings) => readings.length === 0);
      if (fromEvent === null) expect(round).toBeNull();
      else if (turned) expect(round).toEqual({ kind: 'broken' });
      else if (unread >= 0) expect(round).toEqual({ kind: 'under-way', carburettor: unread + 1 });
      else expect(round?.kind).toBe('complete');

      if (step.kind === 'sign-off') {
        expect(round).toMatchObject({ kind: 'complete', within: true });
        const means = all.map(
          (readings) => readings.reduce((sum, value) => sum + value, 0) / readings.length,
        );
        expect(Math.max(...means) - Math.min(...means)).toBeLessThanOrEqual(setUp.tolerancePa * (1 + 1e-9));
      }
      // While a round is under way or complete, done is never the last word.
      if (round && round.kind !== 'broken') expect(step.kind).not.toBe('done');
    }),
    tries(250),
  );
});

test('but for the round and the first small turn, the step is that of nextStep', () => {
  fc.assert(
    fc.property(bench, ({ setUp, events }) => {
      const computed = computeBench(setUp, events, null);
      const next = nextStep(setUp, events);
      if (!computed.ok || !next.ok) throw new Error('refused');
      const { step } = computed.value;
      const { step: plain } = next.value;
      if (step.kind !== 'turn' || plain.kind !== 'turn') {
        expect(step).toEqual(plain);
        return;
      }
      expect(step.trial).toBe(setUp.opens[step.screw - 1] === 'unknown');
      expect([step.screw, step.read]).toEqual([plain.screw, plain.read]);
      if (step.trial) expect(Math.abs(step.turns)).toBeLessThanOrEqual(benchDefaults.trialTurns);
      else expect(step.turns).toBe(plain.turns);
      expect(Math.sign(step.turns)).toBe(Math.sign(plain.turns));
      expect(Math.abs(step.turns)).toBeLessThanOrEqual(Math.abs(plain.turns));
    }),
    tries(150),
  );
});
