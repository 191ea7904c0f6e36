import { describe, expect, test } from 'vitest';
import {
  act,
  bringSpeedBack,
  doAdvisedStep,
  firstState,
  look,
  readCylinder,
  turnScrew,
  warmUp,
} from '../../src/calculators/index.ts';
import type { EngineState, Exercise, PracticeEngine, SessionEvent } from '../../src/calculators/index.ts';
import { warmK } from '../../src/calculators/practice/constants.ts';
import { mmHg } from '../engine/invented.ts';
import { engineOf } from '../engine/practice.ts';

const separate = (changes: Partial<Exercise> = {}): PracticeEngine =>
  engineOf({ generation: 'separate-cables', carburettors: 2, ...changes });
const engine = separate();
const first = firstState(engine, 1);
const atSpeed = bringSpeedBack(engine, first);

describe('bringing the speed back', () => {
  test('ends within 20 rpm on the tachometer, and takes seconds', () => {
    expect(Math.abs(look(engine, atSpeed).rpm - engine.targetRpm)).toBeLessThanOrEqual(20);
    expect(atSpeed.seconds).toBeGreaterThan(1);
    expect(atSpeed.seconds).toBeLessThan(15);
  });

  test('of an engine that holds it takes one look, 1.2 s', () => {
    const again = bringSpeedBack(engine, bringSpeedBack(engine, atSpeed));
    expect(bringSpeedBack(engine, again).seconds - again.seconds).toBeCloseTo(1.2, 9);
  });
});

describe('warming up', () => {
  const cold = separate({ grade: 2 });

  test('goes on by half minutes until it is as warm as is wanted, and puts a fan before it', () => {
    const nearly = { ...firstState(cold, 1), metalK: warmK - 1 };
    const warm = warmUp(cold, nearly, warmK);
    expect(warm.metalK).toBeGreaterThanOrEqual(warmK);
    expect(warm.controls.fan).toBe(true);
    const runUp = bringSpeedBack(cold, nearly).seconds;
    expect(warm.seconds - runUp).toBeGreaterThanOrEqual(30);
    expect(warm.seconds - runUp).toBeLessThan(60);
  });

  test('of an engine that is warm already is no more than bringing its speed back', () => {
    const warmed = warmUp(engine, first, engine.startK - 1);
    expect(engine.startK).toBeGreaterThan(warmK);
    expect(warmed.seconds).toBe(atSpeed.seconds);
    expect(warmed.controls.fan).toBe(true);
  });
});

describe('reading a cylinder', () => {
  test('is written down as what the gauge shows of it, with its minute, and takes 6 s more', () => {
    const { state, event } = readCylinder(engine, atSpeed, 2);
    if (event.kind !== 'reading') throw new Error('no reading');
    expect(event.carburettor).toBe(2);
    expect(event.minute! * 60).toBeCloseTo(state.seconds - 6, 6);
    expect(Math.abs(event.depressionPa - look(engine, state).depressionPa)).toBeLessThanOrEqual(
      1.01 * engine.gauge.resolutionPa,
    );
    expect(Math.abs(event.rpm! - engine.targetRpm)).toBeLessThanOrEqual(20);
    expect(state.controls).toMatchObject({ selected: 2, venting: false });
  });

  test('empties the line first: behind a tap that is shut nothing of the last reading is left', () => {
    const stuck = separate({ fault: 'shut-tap' });
    const before: EngineState = {
      ...bringSpeedBack(stuck, firstState(stuck, 1)),
      linePa: stuck.ambientPa - 250 * mmHg,
    };
    const { event } = readCylinder(stuck, before, 1);
    expect(event).toMatchObject({ kind: 'reading', carburettor: 1, depressionPa: 0 });
  });
});

describe('turning a screw', () => {
  test('holds it while its nut is nipped, and takes 15 s', () => {
    const loose = act(engine, atSpeed, { kind: 'loosen', screw: 1 }).state;
    const turned = act(engine, loose, { kind: 'turn', screw: 1, turns: 0.25 }).state;
    const held = act(engine, turned, { kind: 'tighten', screw: 1, held: true }).state;
    const { state, event } = turnScrew(engine, atSpeed, 1, 0.25);
    expect(state.controls.screwTurns).toEqual(held.controls.screwTurns);
    expect(state.controls.nutTight).toEqual([true, true]);
    expect(state.seconds - atSpeed.seconds).toBeCloseTo(15, 9);
    expect(event).toMatchObject({ kind: 'turn', screw: 1, turns: 0.25 });
    expect(event.minute! * 60).toBeCloseTo(state.seconds, 6);
  });
});

test('once the advice says stop nothing is done any more', () => {
  // Neither so coarse a gauge nor twelve readings of each settle whether they lie so close.
  const one = separate({ generation: 'fixed-reference' });
  const coarse: PracticeEngine = {
    ...one,
    tolerancePa: 0.5 * mmHg,
    gauge: { ...one.gauge, resolutionPa: 20 * mmHg, flutterPa: 20 * mmHg },
  };
  const events = Array.from({ length: 24 }, (_, k): SessionEvent => ({
    kind: 'reading',
    carburettor: 1 + (k % 2),
    depressionPa: (k % 4 < 2 ? 240 : 245) * mmHg,
  }));
  const done = doAdvisedStep(coarse, atSpeed, events);
  if (!done.ok) throw new Error(JSON.stringify(done.problem));
  expect(done.value.asked.step).toEqual({ kind: 'stop', reason: 'visits' });
  expect(done.value.state).toBe(atSpeed);
  expect(done.value.events).toBe(events);
});
