import { describe, expect, test } from 'vitest';
import {
  act,
  advance,
  bringSpeedBack,
  engineAirFlowKgPerS,
  firingFrequencyHz,
  firstState,
  inventEngine,
  look,
  motoringFrictionPa,
  practiceEngineExample,
  practiceFaults,
  readCylinder,
  startRun,
  throttleMassFlowKgPerS,
  trueDepressionsPa,
  trueSpreadPa,
  turnScrew,
  warmUp,
  writeReading,
} from '../../src/calculators/index.ts';
import type {
  EngineState,
  Exercise,
  PracticeAction,
  PracticeEngine,
  PracticeFault,
} from '../../src/calculators/index.ts';
import { airInKgPerS, airOutKgPerS, ripplePa, runnerPa } from '../../src/calculators/practice/breathing.ts';
import { intakeK, warmK } from '../../src/calculators/practice/constants.ts';
import { frictionPa } from '../../src/calculators/practice/friction.ts';
import { holdingReach, leftAlone } from '../../src/calculators/practice/steady.ts';
import { agrees, readDataRows, toNumber } from '../../truth/data-rows.ts';
import { mmHg } from '../engine/invented.ts';
import { does, engineOf, rpm, valueOf } from '../engine/practice.ts';
import { tolerances } from '../tolerances.ts';

const exercise = (changes: Partial<Exercise> = {}): Exercise => ({ ...practiceEngineExample, ...changes });
const depressionsNow = (engine: PracticeEngine, state: EngineState): number[] =>
  engine.cylinders.map((cylinder, i) => engine.ambientPa - runnerPa(cylinder, state.runnerKg[i]!));
const atWork = (engine: PracticeEngine): EngineState => bringSpeedBack(engine, firstState(engine, 1));

describe('the invented engine', () => {
  test('the same exercise gives the same engine, another seed another', () => {
    expect(engineOf({ seed: 7 })).toEqual(engineOf({ seed: 7 }));
    expect(engineOf({ seed: 8 })).not.toEqual(engineOf({ seed: 7 }));
  });

  test.each([
    ['generation', 'none'],
    ['grade', 5],
    ['fault', 'rust'],
  ] as const)('%s %s is refused', (field, value) => {
    expect(inventEngine(exercise({ [field]: value }))).toMatchObject({
      problem: { kind: 'unknown-choice', field },
    });
  });
  test.each([
    [{ carburettors: 7 }, 'carburettor-count'],
    [{ carburettors: 2.5 }, 'carburettor-count'],
    [{ generation: 'paired-screws', carburettors: 5 }, 'groups-needed'],
    [{ seed: 1e6 }, 'out-of-range'],
    [{ seed: 0.5 }, 'not-finite'],
  ] as const)('%o is refused', (changes, kind) => {
    expect(inventEngine(exercise(changes))).toMatchObject({ problem: { kind } });
  });
});

describe('its physics against what is published', () => {
  test('friction of the warm engine is the relation behind the published rows', () => {
    const rows = readDataRows('5-compressible-flow.csv', 69).filter(
      ({ quantity }) => quantity === 'motored friction mep, SI engine',
    );
    expect(rows).toHaveLength(6);
    for (const row of rows) {
      const speed = toNumber(row.input, 'rpm');
      // So warm that nothing of the cold is left.
      expect(agrees(frictionPa(speed, 1e6, 1) / 1e5, row), row.input).toBe(true);
      expect(frictionPa(speed, 1e6, 1)).toBe(valueOf(motoringFrictionPa(speed)));
      expect(frictionPa(speed, 293.15, 1)).toBeGreaterThan(1.5 * frictionPa(speed, 1e6, 1));
    }
  });

  test('air in and out are the flows that the rows of compressible flow are held to', () => {
    const engine = engineOf();
    const [cylinder] = engine.cylinders;
    if (cylinder === undefined) throw new Error('no cylinder');
    for (const ratio of [0.2, 0.5, 0.53, 0.7, 0.95]) {
      const pa = ratio * engine.ambientPa;
      const flow = throttleMassFlowKgPerS({
        areaM2: 5e-6,
        dischargeCoefficient: cylinder.dischargeCoefficient,
        upstreamPa: engine.ambientPa,
        upstreamK: engine.ambientK,
        pressureRatio: ratio,
      });
      expect(Math.abs(airInKgPerS(engine, cylinder, 5e-6, pa) / valueOf(flow) - 1)).toBeLessThan(
        tolerances.flow.relative,
      );
      const drawn = engineAirFlowKgPerS({
        displacementM3: cylinder.displacementM3,
        rpm: 2100,
        intakePa: pa,
        intakeK,
        volumetricEfficiency: cylinder.volumetricEfficiency,
      });
      expect(Math.abs(airOutKgPerS(cylinder, pa, 2100) / valueOf(drawn) - 1)).toBeLessThan(
        tolerances.flow.relative,
      );
    }
    expect(airInKgPerS(engine, cylinder, 5e-6, 1.2 * engine.ambientPa)).toBe(0);
  });

  test('the ripple comes as often as one cylinder fires, has no mean, and is as high as the air that is missing', () => {
    const engine = engineOf();
    const [cylinder] = engine.cylinders;
    if (cylinder === undefined) throw new Error('no cylinder');
    const degrees = Array.from({ length: 7200 }, (_, k) => (k + 0.5) / 10);
    const ripple = degrees.map((at) => ripplePa(cylinder, 70_000, at));
    const mean = ripple.reduce((sum, each) => sum + each, 0) / ripple.length;
    const height = Math.max(...ripple) - Math.min(...ripple);
    expect(Math.abs(mean)).toBeLessThan(1e-9 * height);
    const missing =
      0.75 * cylinder.volumetricEfficiency * 70_000 * (cylinder.displacementM3 / cylinder.runnerM3);
    expect(height / missing).toBeGreaterThan(0.998);
    expect(height / missing).toBeLessThanOrEqual(1);
    // Counted on the needle: how often it turns round in ten seconds at a steady speed.
    let state = advance(engine, atWork(engine), 5);
    let last = 0;
    let tops = 0;
    let rising = false;
    const started = state.crankDegrees + 0;
    let turns = 0;
    let before = started;
    for (let step = 0; step < 5000; step += 1) {
      state = advance(engine, state, 0.002);
      if (state.crankDegrees < before) turns += 2;
      before = state.crankDegrees;
      if (rising && state.needlePa < last) tops += 1;
      rising = state.needlePa > last;
      last = state.needlePa;
    }
    const fires = valueOf(firingFrequencyHz((turns / 10) * 60, 1)) * 10;
    expect(Math.abs(tops - fires)).toBeLessThanOrEqual(1);
  });

  test('mass and energy balance to the last digits, hands busy all the time', () => {
    const engine = engineOf({ grade: 4, seed: 3 });
    const first = firstState(engine, 1);
    let state = warmUp(engine, first, 320);
    for (const cylinder of [1, 2, 3, 4]) {
      state = readCylinder(engine, state, cylinder).state;
      state = turnScrew(engine, state, cylinder, cylinder % 2 === 0 ? 0.25 : -0.25).state;
    }
    const { ledger } = state;
    const airOf = ({ runnerKg }: EngineState) => runnerKg.reduce((sum, kg) => sum + kg, 0);
    const massError = airOf(state) - airOf(first) - (ledger.airInKg - ledger.airOutKg);
    expect(Math.abs(massError) / ledger.airInKg).toBeLessThan(tolerances.ledger.relative);
    const crankError =
      ledger.starterJ + ledger.indicatedJ - ledger.pumpingJ - ledger.frictionJ - state.kineticJ;
    expect(Math.abs(crankError) / ledger.indicatedJ).toBeLessThan(tolerances.ledger.relative);
    const displacementM3 = engine.cylinders.reduce((sum, each) => sum + each.displacementM3, 0);
    const warmed = (state.metalK - engine.startK) * 65e6 * displacementM3;
    expect(Math.abs(ledger.wallJ - ledger.cooledJ - warmed) / ledger.wallJ).toBeLessThan(
      tolerances.ledger.relative,
    );
    expect(ledger.indicatedJ / ledger.fuelJ).toBeCloseTo(engine.indicatedEfficiency, 12);
    expect(ledger.airInKg).toBeGreaterThan(0.1);
  });

  test('left alone at the reach that holds the speed, it comes to rest at that speed', () => {
    const engine = engineOf({ seed: 9 });
    const { controls } = firstState(engine, 0);
    const held = holdingReach(engine, controls, engine.targetRpm, warmK);
    const rest = leftAlone(engine, controls, held);
    expect(rest.rpm / engine.targetRpm).toBeCloseTo(1, 6);
    for (const [i, pa] of trueDepressionsPa(engine, controls).entries())
      expect(rest.depressionsPa[i]! / pa).toBeCloseTo(1, 6);
    expect(leftAlone(engine, controls, held + 0.05).rpm).toBeGreaterThan(rest.rpm + 50);
  });

  test('run long enough, it settles where the balance of torque says', () => {
    const engine = engineOf({ seed: 9 });
    let state = { ...firstState(engine, 1), metalK: warmK };
    state = { ...bringSpeedBack(engine, state), metalK: warmK };
    const settled = advance(engine, state, 8);
    const expected = trueDepressionsPa(engine, settled.controls, rpm(engine, settled));
    // The metal warms a little in those seconds, and the needle's second is not a steady state.
    for (const [i, pa] of depressionsNow(engine, settled).entries())
      expect(Math.abs(pa - expected[i]!)).toBeLessThan(3 * mmHg);
  });
});

describe('what the hands do', () => {
  test('opening one throttle lowers its depression, raises the speed, and moves the others', () => {
    const engine = engineOf({ generation: 'separate-cables', carburettors: 3, seed: 4 });
    const before = advance(engine, atWork(engine), 10);
    const after = advance(
      engine,
      does(engine, before, { kind: 'loosen', screw: 1 }, { kind: 'turn', screw: 1, turns: 0.5 }),
      10,
    );
    const [was, is] = [depressionsNow(engine, before), depressionsNow(engine, after)];
    expect(is[0]!).toBeLessThan(was[0]! - 10 * mmHg);
    expect(is[1]!).toBeGreaterThan(was[1]! + 2 * mmHg);
    expect(is[2]!).toBeGreaterThan(was[2]! + 2 * mmHg);
    expect(rpm(engine, after)).toBeGreaterThan(rpm(engine, before) + 50);
  });

  test('a screw of a pair moves its group; the idle-speed screw and the hand move all', () => {
    const engine = engineOf({ generation: 'paired-screws', seed: 4 });
    const before = advance(engine, atWork(engine), 10);
    const open = (action: PracticeAction) =>
      depressionsNow(
        engine,
        advance(engine, does(engine, before, { kind: 'loosen', screw: 3 }, action), 0.15),
      ).map((pa, i) => pa < depressionsNow(engine, advance(engine, before, 0.15))[i]! - mmHg);
    expect(open({ kind: 'turn', screw: 3, turns: 0.5 })).toEqual([false, false, true, true]);
    expect(open({ kind: 'idle-screw', turns: 2 })).toEqual([true, true, true, true]);
    expect(open({ kind: 'hand', reach: before.controls.hand + 0.1 })).toEqual([true, true, true, true]);
  });

  test('a tight nut forbids the turn, and a thread ends on both sides', () => {
    const engine = engineOf();
    const state = firstState(engine, 1);
    const tight = act(engine, state, { kind: 'turn', screw: 1, turns: 1 });
    expect(tight.happened).toEqual({ turns: 0, boundWhen: null, nutTight: true });
    expect(tight.state).toBe(state);
    const loose = does(engine, state, { kind: 'loosen', screw: 1 });
    const { closing, opening } = engine.screws[0]!.thread;
    const opened = act(engine, loose, { kind: 'turn', screw: 1, turns: 99 });
    expect(opened.happened).toEqual({ turns: opening, boundWhen: 'opening', nutTight: false });
    const closed = act(engine, loose, { kind: 'turn', screw: 1, turns: -99 });
    expect(closed.happened).toEqual({ turns: -closing, boundWhen: 'closing', nutTight: false });
    expect(act(engine, loose, { kind: 'idle-screw', turns: 99 }).happened.boundWhen).toBe('opening');
    expect(() => act(engine, loose, { kind: 'turn', screw: 9, turns: 1 })).toThrow(RangeError);
    expect(() => act(engine, loose, { kind: 'tighten', screw: 9, held: true })).toThrow(RangeError);
    expect(act(engine, state, { kind: 'tighten', screw: 1, held: true }).happened.nutTight).toBe(true);
  });

  test('a nut drags the screw: little if it is held, far if it is let go', () => {
    const engine = engineOf({ grade: 4 });
    const shifts = (held: boolean): number => {
      const all = Array.from({ length: 400 }, (_, seed) => {
        const loose = does(engine, firstState(engine, seed), { kind: 'loosen', screw: 1 });
        return act(engine, loose, { kind: 'tighten', screw: 1, held }).happened.turns;
      });
      return Math.sqrt(all.reduce((sum, shift) => sum + shift ** 2, 0) / all.length);
    };
    const own = engine.screws[0]!.lockShiftTurns;
    expect(shifts(true) / own).toBeGreaterThan(0.9);
    expect(shifts(true) / own).toBeLessThan(1.1);
    expect(shifts(false) / shifts(true)).toBeCloseTo(4, 9);
  });

  test('an open tap lets the needle shake, a nearly shut one stills it, and both show the same middle', () => {
    const engine = engineOf({ seed: 2 });
    const seen = [1, 0.3, 0.12].map((opening) =>
      look(engine, advance(engine, does(engine, atWork(engine), { kind: 'tap', opening }), 6)),
    );
    expect(seen[0]!.flutterPa).toBeGreaterThan(8 * mmHg);
    expect(seen[1]!.flutterPa).toBeLessThan(seen[0]!.flutterPa / 4);
    expect(seen[2]!.flutterPa).toBeLessThan(seen[1]!.flutterPa);
    expect(Math.abs(seen[2]!.depressionPa - seen[1]!.depressionPa)).toBeLessThanOrEqual(5.01 * mmHg);
  });

  test('a line that is not vented keeps the old depression; the vent lets it go', () => {
    const engine = engineOf({ seed: 2 });
    const read = advance(engine, does(engine, atWork(engine), { kind: 'tap', opening: 0.3 }), 4);
    const trapped = advance(engine, does(engine, read, { kind: 'select', cylinder: null }), 4);
    expect(look(engine, trapped)).toMatchObject({ still: true });
    expect(Math.abs(trapped.needlePa - read.needlePa)).toBeLessThan(15 * mmHg);
    const vented = advance(engine, does(engine, trapped, { kind: 'vent', open: true }), 2);
    expect(look(engine, vented).depressionPa).toBe(0);
    expect(writeReading({ ...startRun(exercise(), engine), state: trapped })).toBeNull();
  });

  test('with the throttles shut it stops, and starts again', () => {
    const engine = engineOf({ grade: 2 });
    const shut = does(engine, firstState(engine, 1), { kind: 'idle-screw', turns: -9 });
    const stopped = advance(engine, shut, 20);
    expect(stopped.running).toBe(false);
    expect(rpm(engine, stopped)).toBeLessThan(1);
    const started = does(engine, stopped, { kind: 'start' });
    expect(started.running).toBe(true);
    expect(rpm(engine, started)).toBeCloseTo(1100, 6);
    expect(act(engine, started, { kind: 'start' }).state).toBe(started);
  });

  test('stopped by hand it runs down; bringing the speed back starts it first', () => {
    const engine = engineOf();
    const stopped = advance(engine, does(engine, atWork(engine), { kind: 'stop' }), 5);
    expect(stopped.running).toBe(false);
    expect(rpm(engine, stopped)).toBeLessThan(350);
    const back = bringSpeedBack(engine, stopped);
    expect(back.running).toBe(true);
    expect(Math.abs(look(engine, back).rpm - engine.targetRpm)).toBeLessThanOrEqual(50);
  });
});

describe('faults', () => {
  const faulty = (fault: PracticeFault, changes: Partial<Exercise> = {}) =>
    engineOf({ fault, seed: 6, ...changes });

  test('an air leak: even at work, uneven at idle', () => {
    const engine = faulty('air-leak', { generation: 'separate-cables' });
    let state = { ...atWork(engine), metalK: warmK };
    // Levelled at work by knowing the truth.
    const screwTurns = [...state.controls.screwTurns];
    for (let round = 0; round < 60; round += 1) {
      const now = trueDepressionsPa(engine, { ...state.controls, screwTurns });
      const mean = now.reduce((sum, pa) => sum + pa, 0) / now.length;
      for (const [i, pa] of now.entries())
        screwTurns[i] = screwTurns[i]! + (0.3 * (pa - mean)) / (140 * mmHg);
    }
    state = { ...state, controls: { ...state.controls, screwTurns } };
    expect(trueSpreadPa(engine, state.controls)).toBeLessThan(mmHg);
    const idle = depressionsNow(engine, advance(engine, does(engine, state, { kind: 'hand', reach: 0 }), 15));
    expect(Math.max(...idle) - Math.min(...idle)).toBeGreaterThan(20 * mmHg);
  });

  test('a trapped depression: the vent does nothing', () => {
    const engine = faulty('trapped-depression');
    const read = advance(engine, does(engine, atWork(engine), { kind: 'tap', opening: 0.3 }), 4);
    const vented = does(engine, read, { kind: 'select', cylinder: null }, { kind: 'vent', open: true });
    expect(look(engine, advance(engine, vented, 5)).depressionPa).toBeGreaterThan(100 * mmHg);
  });

  test('a shut tap: the needle stands still where it should move', () => {
    const engine = faulty('shut-tap');
    const state = does(engine, atWork(engine), { kind: 'tap', opening: 0.3 });
    expect(look(engine, advance(engine, state, 3))).toMatchObject({ still: true });
  });

  test('a slipped nut: one screw moves far even if it is held', () => {
    const shifts = faulty('slipped-nut').screws.map(({ lockShiftTurns }) => lockShiftTurns);
    expect(shifts.filter((shift) => shift > 0.1)).toHaveLength(1);
  });

  test('the end of a thread: one screw has a tenth of a turn left on the side on which it is needed', () => {
    const threads = faulty('end-of-thread').screws.map(({ thread }) =>
      Math.min(thread.closing, thread.opening),
    );
    expect(threads.filter((left) => left < 0.11)).toHaveLength(1);
  });

  test('a sticking cable: the throttles stay behind the hand, each way', () => {
    const engine = faulty('sticking-cable');
    const up = does(engine, atWork(engine), { kind: 'hand', reach: 0.5 }, { kind: 'hand', reach: 0.3 });
    const down = does(engine, atWork(engine), { kind: 'hand', reach: 0.1 }, { kind: 'hand', reach: 0.3 });
    expect(up.lift - down.lift).toBeCloseTo(0.12, 9);
    expect(practiceFaults).toHaveLength(6);
  });
});
