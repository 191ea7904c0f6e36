import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  act,
  advance,
  firstState,
  generations,
  inventEngine,
  parsePracticeEngine,
  practiceEngineFields,
  practiceGrades,
  parseCalculatorLink,
  trueDepressionsPa,
  trueSpreadPa,
  writeCalculatorLink,
} from '../../src/calculators/index.ts';
import type { EngineState, Exercise, PracticeAction, PracticeEngine } from '../../src/calculators/index.ts';
import { practiceFaults } from '../../src/calculators/practice/engine.ts';
import { mmHg } from '../engine/invented.ts';
import { tries } from '../property-runs.ts';
import { tolerances } from '../tolerances.ts';

const exercises: fc.Arbitrary<Exercise> = fc
  .record({
    generation: fc.constantFrom(...generations),
    carburettors: fc.integer({ min: 2, max: 6 }),
    grade: fc.constantFrom(...practiceGrades),
    seed: fc.integer({ min: 0, max: 999_999 }),
    fault: fc.constant(null),
  })
  .filter(({ generation, carburettors }) => generation !== 'paired-screws' || carburettors !== 5);

const engineOf = (exercise: Exercise): PracticeEngine => {
  const engine = inventEngine(exercise);
  if (!engine.ok) throw new Error(JSON.stringify(engine.problem));
  return engine.value;
};

const actions = (engine: PracticeEngine): fc.Arbitrary<PracticeAction> => {
  const screw = fc.integer({ min: 1, max: engine.screws.length });
  const turns = fc.double({ min: -3, max: 3, noNaN: true });
  return fc.oneof(
    fc.record({ kind: fc.constant('hand' as const), reach: fc.double({ min: -1, max: 2, noNaN: true }) }),
    fc.record({ kind: fc.constant('idle-screw' as const), turns }),
    fc.record({
      kind: fc.constant('select' as const),
      cylinder: fc.option(fc.integer({ min: 1, max: engine.cylinders.length })),
    }),
    fc.record({ kind: fc.constant('tap' as const), opening: fc.double({ min: -1, max: 2, noNaN: true }) }),
    fc.record({ kind: fc.constant('vent' as const), open: fc.boolean() }),
    fc.record({ kind: fc.constant('fan' as const), on: fc.boolean() }),
    fc.record({ kind: fc.constant('loosen' as const), screw }),
    fc.record({ kind: fc.constant('turn' as const), screw, turns }),
    fc.record({ kind: fc.constant('tighten' as const), screw, held: fc.boolean() }),
    fc.constant({ kind: 'start' as const }),
  );
};

describe('every exercise', () => {
  test('is as far apart at first as its grade says, and no further than it can be levelled', () => {
    const wanted = { 1: 60, 2: 120, 3: 200, 4: 260 } as const;
    fc.assert(
      fc.property(exercises, (exercise) => {
        const engine = engineOf(exercise);
        const spread = trueSpreadPa(engine, firstState(engine, 0).controls) / mmHg;
        expect(Math.abs(spread / wanted[exercise.grade] - 1)).toBeLessThan(0.02);
      }),
      tries(60),
    );
  }, 60_000);

  test('opening any one throttle lowers its own depression and raises the mean of the others', () => {
    fc.assert(
      fc.property(exercises, fc.nat(), (exercise, which) => {
        const engine = engineOf({ ...exercise, generation: 'separate-cables' });
        const { controls } = firstState(engine, 0);
        const own = which % engine.cylinders.length;
        const before = trueDepressionsPa(engine, controls);
        const screwTurns = controls.screwTurns.map((turns, i) => (i === own ? turns + 0.2 : turns));
        const after = trueDepressionsPa(engine, { ...controls, screwTurns });
        expect(after[own]!).toBeLessThan(before[own]!);
        for (const [i, pa] of after.entries()) if (i !== own) expect(pa).toBeGreaterThan(before[i]!);
      }),
      tries(40),
    );
  }, 60_000);
});

describe('whatever the hands do', () => {
  test('the engine stays finite, nothing passes the end of a thread, mass and energy balance, and it happens again alike', () => {
    const work = exercises.chain((exercise) => {
      const engine = engineOf(exercise);
      return fc.tuple(fc.constant(engine), fc.array(actions(engine), { maxLength: 25 }), fc.nat(1000));
    });
    fc.assert(
      fc.property(work, ([engine, done, seed]) => {
        const follow = (): EngineState =>
          done.reduce(
            (state, action) => advance(engine, act(engine, state, action).state, 0.5),
            firstState(engine, seed),
          );
        const state = follow();
        expect(follow()).toEqual(state);
        const numbers = [state.kineticJ, state.metalK, state.linePa, state.needlePa, ...state.runnerKg];
        expect(numbers.every(Number.isFinite)).toBe(true);
        expect(state.runnerKg.every((kg) => kg > 0)).toBe(true);
        for (const [j, { thread }] of engine.screws.entries()) {
          expect(state.controls.screwTurns[j]!).toBeGreaterThanOrEqual(-thread.closing);
          expect(state.controls.screwTurns[j]!).toBeLessThanOrEqual(thread.opening);
        }
        const { ledger } = state;
        const air = ({ runnerKg }: EngineState) => runnerKg.reduce((sum, kg) => sum + kg, 0);
        const missing = air(state) - air(firstState(engine, seed)) - ledger.airInKg + ledger.airOutKg;
        expect(Math.abs(missing)).toBeLessThanOrEqual(tolerances.ledger.relative * (ledger.airInKg + 1e-6));
        const lost =
          ledger.starterJ + ledger.indicatedJ - ledger.pumpingJ - ledger.frictionJ - state.kineticJ;
        expect(Math.abs(lost)).toBeLessThanOrEqual(tolerances.ledger.relative * ledger.starterJ);
      }),
      tries(60),
    );
  }, 120_000);
});

describe('the link of an exercise', () => {
  const forms = fc.record({
    lesson: fc.constant('none'),
    generation: fc.constantFrom(...generations),
    carburettors: fc.constantFrom('2', '3', '4', '5', '6'),
    grade: fc.constantFrom('1', '2', '3', '4'),
    seed: fc.integer({ min: 0, max: 999_999 }).map(String),
    fault: fc.constantFrom('none', 'hidden', ...practiceFaults),
  });
  test('written and read, it gives the same exercise', () => {
    fc.assert(
      fc.property(forms, (form) => {
        const link = parseCalculatorLink(
          practiceEngineFields,
          writeCalculatorLink(practiceEngineFields, form),
        );
        if (!link.ok) throw new Error('refused');
        expect(parsePracticeEngine(link.value.form)).toEqual(parsePracticeEngine(form));
      }),
    );
  });

  test('any text in any field is read or answered beside its field', () => {
    fc.assert(
      fc.property(
        fc.record({
          lesson: fc.string(),
          generation: fc.string(),
          carburettors: fc.string(),
          grade: fc.string(),
          seed: fc.oneof(fc.string(), fc.constantFrom('-1', '1e9', '0,5', 'NaN', '')),
          fault: fc.string(),
        }),
        (form) => {
          const parsed = parsePracticeEngine(form);
          if (parsed.ok) return;
          expect(parsed.problems.length).toBeGreaterThan(0);
          for (const { field } of parsed.problems) expect(Object.keys(form)).toContain(field);
        },
      ),
    );
  });
});
