import { describe, expect, test } from 'vitest';
import {
  act,
  advance,
  firstState,
  inventEngine,
  isTooHot,
  look,
  practiceEngineExample,
} from '../../src/calculators/index.ts';
import type { EngineState, Happened, PracticeAction, PracticeEngine } from '../../src/calculators/index.ts';
import { stallRpm, tooHotK } from '../../src/calculators/practice/constants.ts';
import { kineticJOf } from '../../src/calculators/practice/state.ts';
import { mmHg } from '../engine/invented.ts';

const invented = inventEngine({ ...practiceEngineExample, carburettors: 2, grade: 3 });
if (!invented.ok) throw new Error(JSON.stringify(invented.problem));
const engine: PracticeEngine = invented.value;
const first = firstState(engine, 1);
const does = (state: EngineState, ...actions: PracticeAction[]): EngineState =>
  actions.reduce((before, action) => act(engine, before, action).state, state);
const happens = (state: EngineState, action: PracticeAction): Happened => act(engine, state, action).happened;

describe('a screw', () => {
  const loose = does(first, { kind: 'loosen', screw: 2 });

  test('turns as far as it is turned, again and again, and only the one that is turned', () => {
    const once = act(engine, loose, { kind: 'turn', screw: 2, turns: 0.25 });
    expect(once.happened).toEqual({ turns: 0.25, boundWhen: null, nutTight: false });
    const twice = act(engine, once.state, { kind: 'turn', screw: 2, turns: -0.125 });
    expect(twice.happened).toEqual({ turns: -0.125, boundWhen: null, nutTight: false });
    expect(twice.state.controls.screwTurns).toEqual([0, 0.125]);
  });

  test('that stands at the end of its thread turns what is left, and no further', () => {
    const { opening, closing } = engine.screws[1]!.thread;
    const near = does(loose, { kind: 'turn', screw: 2, turns: opening - 0.125 });
    const { turns, boundWhen } = happens(near, { kind: 'turn', screw: 2, turns: 0.5 });
    expect(turns).toBeCloseTo(0.125, 9);
    expect(boundWhen).toBe('opening');
    const end = does(near, { kind: 'turn', screw: 2, turns: 0.5 });
    expect(happens(end, { kind: 'turn', screw: 2, turns: 0.5 }).turns).toBe(0);
    expect(happens(end, { kind: 'turn', screw: 2, turns: -opening - closing }).boundWhen).toBeNull();
    expect(happens(end, { kind: 'turn', screw: 2, turns: -99 }).boundWhen).toBe('closing');
  });

  test('is dragged by its nut as far as is told, from where it stood', () => {
    const turned = does(loose, { kind: 'turn', screw: 2, turns: 0.5 });
    const { state, happened } = act(engine, turned, { kind: 'tighten', screw: 2, held: false });
    expect(happened.turns).not.toBe(0);
    expect(Math.abs(happened.turns)).toBeLessThan(0.5);
    expect(state.controls.screwTurns[1]).toBeCloseTo(0.5 + happened.turns, 12);
    expect(state.controls.nutTight).toEqual([true, true]);
    expect(happened).toMatchObject({ boundWhen: null, nutTight: false });
  });

  test('that is not there is a mistake of ours, and is named', () => {
    expect(() => act(engine, loose, { kind: 'turn', screw: 3, turns: 1 })).toThrow('no screw 3');
    expect(() => act(engine, loose, { kind: 'tighten', screw: 3, held: true })).toThrow('no screw 3');
  });
});

describe('the other handles', () => {
  test('the idle-speed screw turns from where it stands, 6 turns each way', () => {
    const opened = act(engine, first, { kind: 'idle-screw', turns: 2 });
    expect(opened.happened).toEqual({ turns: 2, boundWhen: null, nutTight: false });
    const back = act(engine, opened.state, { kind: 'idle-screw', turns: -0.5 });
    expect(back.happened).toEqual({ turns: -0.5, boundWhen: null, nutTight: false });
    expect(back.state.controls.idleTurns).toBe(1.5);
    expect(happens(back.state, { kind: 'idle-screw', turns: 9 })).toMatchObject({
      turns: 4.5,
      boundWhen: 'opening',
    });
    expect(happens(back.state, { kind: 'idle-screw', turns: -9 })).toMatchObject({
      turns: -7.5,
      boundWhen: 'closing',
    });
  });

  test.each([
    [{ kind: 'hand', reach: 0.3 }, { hand: 0.3 }],
    [{ kind: 'select', cylinder: 2 }, { selected: 2 }],
    [{ kind: 'tap', opening: 0.4 }, { tap: 0.4 }],
    [{ kind: 'vent', open: true }, { venting: true }],
    [{ kind: 'fan', on: true }, { fan: true }],
  ] as const)('%o moves its own handle alone, and no screw', (action, moved) => {
    const { state, happened } = act(engine, first, action);
    expect(state.controls).toEqual({ ...first.controls, ...moved });
    expect(happened).toEqual({ turns: 0, boundWhen: null, nutTight: false });
  });

  test('the fan is put away again', () => {
    const cooled = does(first, { kind: 'fan', on: true }, { kind: 'fan', on: false });
    expect(cooled.controls.fan).toBe(false);
  });
});

describe('starter and heat', () => {
  test('the starter gives the crank what it lacks of 1,100 rpm, and its work is added up', () => {
    const running = advance(engine, first, 1);
    const slow = { ...does(running, { kind: 'stop' }), kineticJ: kineticJOf(engine, stallRpm) };
    const started = does(slow, { kind: 'start' });
    const lacked = kineticJOf(engine, 1100) - kineticJOf(engine, stallRpm);
    expect(started.ledger.starterJ - slow.ledger.starterJ).toBeCloseTo(lacked, 9);
    expect({ ...started.ledger, starterJ: 0 }).toEqual({ ...slow.ledger, starterJ: 0 });
  });

  test('too hot to go on is above 160 °C of the metal', () => {
    expect(tooHotK - 273.15).toBeCloseTo(160, 9);
    expect(isTooHot({ ...first, metalK: tooHotK - 1 })).toBe(false);
    expect(isTooHot({ ...first, metalK: tooHotK + 1 })).toBe(true);
  });
});

describe('what the eye reads', () => {
  const seen = (lowMmHg: number, highMmHg: number) =>
    look(engine, { ...first, watched: [lowMmHg, highMmHg].map((each) => each * mmHg) });

  test.each([
    [231, 231, 230],
    [220, 246, 235],
    [221, 223, 220],
    [222, 226, 225],
  ])('of a needle between %i and %i the nearest step of 5 to the middle, %i mmHg', (low, high, shown) => {
    expect(seen(low, high).depressionPa / mmHg).toBeCloseTo(shown, 9);
  });

  test('half of the swing is the flutter', () => {
    expect(seen(220, 246).flutterPa / mmHg).toBeCloseTo(13, 9);
  });

  test('the dial ends at 0 and at full scale', () => {
    expect(seen(-30, -10).depressionPa).toBe(0);
    expect(seen(720, 790).depressionPa).toBe(engine.gauge.fullScalePa);
  });

  test('a swing below a tenth of a step is not seen', () => {
    expect(seen(230, 230.4).still).toBe(true);
    expect(seen(230, 230.6).still).toBe(false);
    expect(seen(230, 240).still).toBe(false);
  });

  test('the tachometer adds its own error and shows the nearest mark of 10 rpm', () => {
    expect(engine.tachometer.stepRpm).toBe(10);
    for (const errorRpm of [-40, 0, 25]) {
      const own: PracticeEngine = { ...engine, tachometer: { ...engine.tachometer, errorRpm } };
      for (const rpm of [900, 2003, 2146.9]) {
        const shown = look(own, { ...first, tachometerRpm: rpm }).rpm;
        expect(shown % 10).toBe(0);
        expect(Math.abs(shown - rpm - errorRpm)).toBeLessThanOrEqual(5);
      }
    }
    expect(look(engine, { ...first, tachometerRpm: -engine.tachometer.errorRpm - 90 }).rpm).toBe(0);
  });
});
