import { describe, expect, test } from 'vitest';
import {
  advance,
  doAdvisedStep,
  firstState,
  generations,
  passTime,
  practiceEngineExample,
  startRun,
  trueSpreadPa,
  warmUp,
} from '../../src/calculators/index.ts';
import type { SessionEvent } from '../../src/calculators/index.ts';
import { tooHotK, warmK } from '../../src/calculators/practice/constants.ts';
import { does, engineOf, rpm, valueOf } from '../engine/practice.ts';

test('warming up lowers the friction, so that the speed rises; standing without a fan it gets too hot, with one not', () => {
  const engine = engineOf({ grade: 2 });
  const cold = advance(engine, does(engine, firstState(engine, 1), { kind: 'hand', reach: 0.25 }), 20);
  const warm = advance(engine, cold, 400);
  expect(rpm(engine, warm)).toBeGreaterThan(rpm(engine, cold) + 150);
  const minutes = 60 * 25;
  const alone = passTime({ ...startRun(practiceEngineExample, engine), state: cold }, minutes);
  const fanned = passTime(
    { ...startRun(practiceEngineExample, engine), state: does(engine, cold, { kind: 'fan', on: true }) },
    minutes,
  );
  expect(alone.hottestK).toBeGreaterThan(tooHotK);
  expect(alone.tooHotSeconds).toBeGreaterThan(60);
  expect(fanned.hottestK).toBeLessThan(tooHotK);
  expect(fanned.tooHotSeconds).toBe(0);
});

describe('the advice on this engine', () => {
  test('passes on what is wrong with the events', () => {
    const engine = engineOf();
    const events: SessionEvent[] = [{ kind: 'reading', carburettor: 9, depressionPa: 30_000 }];
    expect(doAdvisedStep(engine, firstState(engine, 1), events)).toMatchObject({
      problem: { kind: 'index', field: 'events.0.carburettor' },
    });
  });

  test.each(generations)(
    '%s: brought within the tolerance, from cold',
    (generation) => {
      const engine = engineOf({ generation, grade: 3, seed: 21 });
      let state = warmUp(engine, firstState(engine, 21), warmK);
      let events: readonly SessionEvent[] = [];
      for (let count = 0; count < 150; count += 1) {
        const { asked, ...after } = valueOf(doAdvisedStep(engine, state, events));
        if (asked.step.kind === 'done') break;
        expect(asked.step.kind).not.toBe('stop');
        ({ state, events } = after);
      }
      expect(trueSpreadPa(engine, state.controls)).toBeLessThanOrEqual(1.5 * engine.tolerancePa);
      const ended = valueOf(doAdvisedStep(engine, state, events));
      expect(ended.asked.step.kind).toBe('done');
      expect(ended.state).toBe(state);
    },
    60_000,
  );
});
