import { describe, expect, test } from 'vitest';
import {
  advance,
  dryAirGasConstant,
  firstState,
  inventEngine,
  practiceEngineExample,
} from '../../src/calculators/index.ts';
import type { Controls, EngineState, PracticeEngine } from '../../src/calculators/index.ts';
import { ripplePa, runnerPa } from '../../src/calculators/practice/breathing.ts';
import { coldK, intakeK, stepSeconds, warmK } from '../../src/calculators/practice/constants.ts';
import { frictionPa } from '../../src/calculators/practice/friction.ts';
import { areaForM2, steadyPa } from '../../src/calculators/practice/steady.ts';
import { mmHg } from '../engine/invented.ts';

const invented = inventEngine({
  ...practiceEngineExample,
  generation: 'separate-cables',
  carburettors: 3,
  grade: 3,
});
if (!invented.ok) throw new Error(JSON.stringify(invented.problem));
const engine: PracticeEngine = invented.value;
const first = firstState(engine, 1);
const { ambientPa, ambientK } = engine;
const displacementM3 = engine.cylinders.reduce((sum, cylinder) => sum + cylinder.displacementM3, 0);

const withControls = (state: EngineState, controls: Partial<Controls>): EngineState => ({
  ...state,
  controls: { ...state.controls, ...controls },
});
/** Stopped, with the intakes full of the air around, and the crank where no intake of the first cylinder is felt. */
const atRest: EngineState = {
  ...first,
  running: false,
  kineticJ: 0,
  crankDegrees: 90,
  runnerKg: engine.cylinders.map(({ runnerM3 }) => (ambientPa * runnerM3) / (dryAirGasConstant * intakeK)),
};
/** What is left of a difference after so long with a time constant. */
const left = (seconds: number, constant: number) => Math.exp(-seconds / constant);
const run = (state: EngineState, seconds: number) => advance(engine, state, seconds);

describe('an engine that has just started', () => {
  test('has its intakes at seven tenths of the pressure around, and a needle that has not moved', () => {
    for (const [i, cylinder] of engine.cylinders.entries())
      expect(runnerPa(cylinder, first.runnerKg[i]!) / ambientPa).toBeCloseTo(0.7, 12);
    expect(first.watched).toEqual(Array.from({ length: 50 }, () => 0));
    expect(first.needlePa).toBe(0);
  });

  test('has nothing touched: hand off, nuts tight, tap open, no fan, the gauge on the first cylinder', () => {
    expect(first.controls).toEqual({
      hand: 0,
      idleTurns: 0,
      screwTurns: [0, 0, 0],
      nutTight: [true, true, true],
      selected: 1,
      tap: 1,
      venting: false,
      fan: false,
    });
  });
});

describe('the gauge against the closed solutions of its equations', () => {
  const held = { ...withControls(atRest, { selected: null }), linePa: ambientPa - 200 * mmHg };

  test('the needle follows a line that keeps its pressure with a time constant of 0.03 s', () => {
    for (const seconds of [0.002, 0.03, 0.1])
      expect(run(held, seconds).needlePa / (200 * mmHg)).toBeCloseTo(1 - left(seconds, 0.03), 6);
  });

  test('the eye keeps the last second of it, fifty looks, whatever the parts in which the time passes', () => {
    const whole = run(held, 1).watched;
    expect(whole).toHaveLength(50);
    for (const [k, pa] of whole.entries())
      expect(pa / (200 * mmHg)).toBeCloseTo(1 - left((k + 1) / 50, 0.03), 6);
    expect(run(run(run(held, 3 * stepSeconds), 0.5), 0.494).watched).toEqual(whole);
    const later = run(held, 1.5).watched;
    expect(later.slice(0, 25)).toEqual(whole.slice(25));
  });

  test('the vent empties the line with a time constant of 0.05 s', () => {
    const vented = run(withControls(held, { venting: true }), 0.1);
    expect((ambientPa - vented.linePa) / (200 * mmHg)).toBeCloseTo(left(0.1, 0.05), 6);
  });

  test.each([
    ['wide open', 1, 1],
    ['half open', 0.5, 4],
    ['open by a tenth', 0.1, 100],
  ])(
    'a tap that is %s fills the line in 0.006 s, times the inverse square of its opening',
    (_, open, times) => {
      const tap = engine.deadTap + open * (1 - engine.deadTap);
      const seconds = 0.012 * times;
      const filled = run({ ...held, controls: { ...held.controls, selected: 1, tap } }, seconds);
      // A step is a third of the fastest time constant, and good to 1e-4 there.
      expect((ambientPa - filled.linePa) / (200 * mmHg)).toBeCloseTo(left(2, 1), 4);
    },
  );

  test('a tap that is shut lets nothing through', () => {
    const shut = withControls(held, { selected: 1, tap: engine.deadTap / 2 });
    expect(run(shut, 1).linePa).toBe(held.linePa);
  });

  test.each([1, 2, 3])('cylinder %i is read when it is selected', (selected) => {
    const state = run({ ...withControls(first, { selected, hand: 0.3, tap: 0.15 }), lift: 0.3 }, 4);
    const depressions = engine.cylinders.map(
      (cylinder, i) => ambientPa - runnerPa(cylinder, state.runnerKg[i]!),
    );
    const off = depressions.map((pa) => Math.abs(pa - state.needlePa));
    expect(off.indexOf(Math.min(...off))).toBe(selected - 1);
    expect(off[selected - 1]).toBeLessThan(engine.gauge.resolutionPa);
    expect(Math.min(...off.filter((_, i) => i !== selected - 1))).toBeGreaterThan(
      2 * engine.gauge.resolutionPa,
    );
  });

  test('the line falls at the end of the intake stroke and rises before it begins', () => {
    for (const [i, cylinder] of engine.cylinders.entries()) {
      const pa = runnerPa(cylinder, first.runnerKg[i]!);
      const moved = (crankDegrees: number) =>
        run({ ...withControls(first, { selected: i + 1 }), linePa: pa, crankDegrees }, stepSeconds).linePa -
        pa;
      expect(moved(cylinder.intakeAtDegrees + 170)).toBeLessThan(0);
      expect(moved((cylinder.intakeAtDegrees + 690) % 720)).toBeGreaterThan(0);
    }
  });
});

test('the pressure in an intake is highest when its stroke begins and lowest half a turn later', () => {
  for (const cylinder of engine.cylinders) {
    const at = (sinceDegrees: number) =>
      ripplePa(cylinder, 70_000, (cylinder.intakeAtDegrees + sinceDegrees) % 720);
    expect(at(0)).toBeGreaterThan(0);
    expect(at(180)).toBeCloseTo(-at(0), 9);
    expect(at(90)).toBeCloseTo(0, 9);
    expect(at(450)).toBeCloseTo(0, 9);
  }
});

describe('heat', () => {
  test('the walls take three tenths of the heat of the fuel, and all of the friction', () => {
    const { ledger } = run(first, 0.5);
    expect(ledger.frictionJ).toBeGreaterThan(0);
    expect(ledger.wallJ / (0.3 * ledger.fuelJ + ledger.frictionJ)).toBeCloseTo(1, 9);
  });

  test('a standing engine cools as its fins let it, and with the fan in so much less time', () => {
    const hot = { ...atRest, metalK: ambientK + 100 };
    for (const [fan, wPerKM3] of [
      [false, 60e3],
      [true, 110e3],
    ] as const) {
      const { metalK, ledger } = run(withControls(hot, { fan }), 5);
      const expected = left(5, 65e6 / wPerKM3);
      expect((metalK - ambientK) / 100).toBeCloseTo(expected, 9);
      expect(ledger.cooledJ / (65e6 * displacementM3 * 100 * (1 - expected))).toBeCloseTo(1, 6);
    }
  });

  test('friction at 20 °C is 1.6 times that of the warm engine; a factor e of the rest fades in 25 K', () => {
    const warm = frictionPa(2000, 1e6, 1);
    for (const [aboveK, more] of [
      [0, 0.6],
      [25, 0.6 / Math.E],
      [50, 0.6 / Math.E ** 2],
    ] as const)
      expect(frictionPa(2000, coldK + aboveK, 1) / warm).toBeCloseTo(1 + more, 9);
    expect(coldK).toBe(293.15);
    expect(frictionPa(2000, warmK, 1) / warm).toBeLessThan(1.06);
  });
});

test('the area for a depression is that which keeps it, with a leak or without', () => {
  const [cylinder] = engine.cylinders;
  for (const leakM2 of [0, 5e-6])
    for (const depressionPa of [150 * mmHg, 250 * mmHg]) {
      const leaking = { ...cylinder!, leakM2 };
      const areaM2 = areaForM2(leaking, depressionPa, 2100, ambientPa, ambientK);
      expect(areaM2).toBeGreaterThan(0);
      expect((ambientPa - steadyPa(engine, leaking, areaM2, 2100)) / depressionPa).toBeCloseTo(1, 9);
    }
});
