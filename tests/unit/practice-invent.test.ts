import { describe, expect, test } from 'vitest';
import {
  firstState,
  generations,
  inventEngine,
  leftAlone,
  practiceEngineExample,
  practiceGrades,
  screwsOf,
  trueSpreadPa,
} from '../../src/calculators/index.ts';
import type { Exercise, PracticeEngine, PracticeGrade } from '../../src/calculators/index.ts';
import { checkExercise } from '../../src/calculators/practice/check-exercise.ts';
import { drawsFrom, nextNormal, randomState } from '../../src/calculators/practice/random.ts';
import { areaForM2, steadyPa } from '../../src/calculators/practice/steady.ts';
import { mmHg } from '../engine/invented.ts';

type Invented = Exercise & { readonly engine: PracticeEngine };

const exerciseOf = (changes: Partial<Exercise>): Exercise => ({
  ...practiceEngineExample,
  carburettors: 2,
  ...changes,
});
const invented = (changes: Partial<Exercise> = {}): Invented => {
  const exercise = exerciseOf(changes);
  const engine = inventEngine(exercise);
  if (!engine.ok) throw new Error(JSON.stringify(engine.problem));
  return { ...exercise, engine: engine.value };
};
const sum = (values: readonly number[]): number => values.reduce((total, each) => total + each, 0);
const mean = (values: readonly number[]): number => sum(values) / values.length;

const ofEachKind = generations.flatMap((generation, kind) =>
  practiceGrades.map((grade) =>
    invented({ generation, grade, carburettors: 2 + (kind % 2), seed: 10 + grade }),
  ),
);
const hard = [3, 4].flatMap((grade) =>
  [20, 21, 22, 23, 24, 25].map((seed) => invented({ grade: grade as PracticeGrade, seed })),
);
const all = [...ofEachKind, ...hard];
const easy = all.filter(({ grade }) => grade === 1);

/** Less than a throttle needs for the speed of the exercise by so much, before the hand and the screws open it. */
const missingM2 = ({ cylinders, handM2, targetRpm, ambientPa, ambientK }: PracticeEngine) => {
  const levelsAt = (pa: number) =>
    cylinders.map((cylinder) => areaForM2({ ...cylinder, leakM2: 0 }, pa, targetRpm, ambientPa, ambientK));
  const wanted = sum(cylinders.map(({ areaM2 }) => areaM2 + handM2 / 4));
  let [low, high] = [50 * mmHg, 600 * mmHg];
  for (let halving = 0; halving < 50; halving += 1) {
    const middle = (low + high) / 2;
    // The deeper the depression, the less it is open.
    if (sum(levelsAt(middle)) > wanted) low = middle;
    else high = middle;
  }
  return levelsAt(low).map((area, i) => area - handM2 / 4 - cylinders[i]!.areaM2);
};

/** The turns that level a set in which each throttle has a screw of its own, with none in common. */
const turnsToLevel = (engine: PracticeEngine): readonly number[] => {
  const missing = missingM2(engine);
  const perTurn = engine.screws.map(({ areaPerTurnM2 }) => areaPerTurnM2);
  const common = -sum(missing.map((area, i) => area / perTurn[i]!)) / sum(perTurn.map((area) => 1 / area));
  return missing.map((area, i) => (area + common) / perTurn[i]!);
};

describe('an exercise', () => {
  test.each([2, 6])('may have %i carburettors', (carburettors) => {
    expect(checkExercise(exerciseOf({ carburettors }))).toBeUndefined();
  });
  test.each([1, 7, 3.5])('cannot have %d carburettors', (carburettors) => {
    expect(checkExercise(exerciseOf({ carburettors }))).toEqual({
      kind: 'carburettor-count',
      value: carburettors,
      limit: { min: 2, max: 6 },
    });
  });
  test('of five carburettors has no usual pairs, and every other linkage', () => {
    const refused = generations.filter(
      (generation) => checkExercise(exerciseOf({ generation, carburettors: 5 })) !== undefined,
    );
    expect(refused).toEqual(['paired-screws']);
  });
  test('has a seed that is a whole number up to 999,999', () => {
    expect(checkExercise(exerciseOf({ seed: 999_999 }))).toBeUndefined();
    expect(checkExercise(exerciseOf({ seed: 0.5 }))).toMatchObject({ kind: 'not-finite', field: 'seed' });
    expect(checkExercise(exerciseOf({ seed: 1e6 }))).toMatchObject({ kind: 'out-of-range', field: 'seed' });
    expect(checkExercise(exerciseOf({ seed: -1 }))).toMatchObject({ kind: 'out-of-range', field: 'seed' });
  });
});

describe('draws', () => {
  test('an index is each of the places about as often', () => {
    const { index } = drawsFrom(3, 1);
    const drawn = Array.from({ length: 7000 }, () => index(7));
    // Five standard deviations of a count of 7,000 draws at one in seven.
    const fiveDeviations = 5 * Math.sqrt(7000 * (1 / 7) * (6 / 7));
    for (const place of [0, 1, 2, 3, 4, 5, 6])
      expect(Math.abs(drawn.filter((each) => each === place).length - 1000)).toBeLessThan(fiveDeviations);
    expect(new Set(drawn).size).toBe(7);
  });

  test('normal numbers have a mean of 0, a variance of 1, and as many on either side', () => {
    const drawn: number[] = [];
    let state = randomState(5);
    for (let k = 0; k < 20_000; k += 1) {
      const [value, next] = nextNormal(state);
      drawn.push(value);
      state = next;
    }
    // Five standard errors of a mean, of a variance and of a share of 20,000.
    expect(Math.abs(mean(drawn))).toBeLessThan(5 / Math.sqrt(20_000));
    expect(Math.abs(mean(drawn.map((each) => each ** 2)) - 1)).toBeLessThan(5 * Math.sqrt(2 / 20_000));
    expect(Math.abs(drawn.filter((each) => each > 0).length / 20_000 - 0.5)).toBeLessThan(
      2.5 / Math.sqrt(20_000),
    );
  });

  test('another linkage, number, grade or seed draws another engine', () => {
    const engines = [
      invented({ generation: 'separate-cables' }),
      invented({ generation: 'separate-cables', carburettors: 3 }),
      invented({ generation: 'separate-cables', grade: 2 }),
      invented({ generation: 'separate-cables', seed: 2 }),
      invented({ generation: 'all-adjustable' }),
    ];
    const displacements = engines.map(({ engine }) => engine.cylinders[0]!.displacementM3);
    expect(new Set(displacements).size).toBe(engines.length);
  });
});

describe('what an engine is drawn from', () => {
  test('one carburettor stands fixed where the linkage has one without a screw, and nowhere else', () => {
    for (const { generation, carburettors, engine } of all) {
      const hasFixed = generation === 'fixed-reference' || generation === 'bypass-screws';
      expect(engine.fixed !== null, generation).toBe(hasFixed);
      const screws = screwsOf(generation, carburettors, engine.fixed === null ? {} : { fixed: engine.fixed });
      expect(engine.screws.map(({ moves }) => moves)).toEqual(
        screws.ok ? screws.value.map(({ moves }) => moves) : [],
      );
    }
  });

  test('the easy grades stand at standard pressure, the hard ones 4 % below it to 1 % above', () => {
    const shares = (grades: readonly number[]) =>
      all.filter(({ grade }) => grades.includes(grade)).map(({ engine }) => engine.ambientPa / 101_325);
    expect(new Set(shares([1, 2]))).toEqual(new Set([1]));
    const away = shares([3, 4]);
    expect(Math.min(...away)).toBeGreaterThanOrEqual(0.96);
    expect(Math.max(...away)).toBeLessThanOrEqual(1.01);
    expect(Math.min(...away)).toBeLessThan(0.98);
    expect(new Set(away).size).toBe(away.length);
  });

  test('the speed is a multiple of 50 rpm from 2,000 to 2,300', () => {
    for (const { engine } of all)
      expect([2000, 2050, 2100, 2150, 2200, 2250, 2300]).toContain(engine.targetRpm);
    expect(new Set(all.map(({ engine }) => engine.targetRpm)).size).toBeGreaterThan(4);
  });

  test('all cylinders have one displacement, 90 to 190 cm³, and an intake 1.1 to 1.6 times as large', () => {
    for (const { engine } of all)
      for (const { displacementM3, runnerM3 } of engine.cylinders) {
        expect(displacementM3).toBe(engine.cylinders[0]!.displacementM3);
        expect(displacementM3).toBeGreaterThanOrEqual(90e-6);
        expect(displacementM3).toBeLessThanOrEqual(190e-6);
        expect(runnerM3 / displacementM3).toBeGreaterThanOrEqual(1.1);
        expect(runnerM3 / displacementM3).toBeLessThanOrEqual(1.6);
      }
  });

  test('cylinders fill and let pass alike at first, and are scattered up to 1.5 % each way when it is hard', () => {
    const most = { 1: 0, 2: 0.005, 3: 0.01, 4: 0.015 } as const;
    for (const of of ['volumetricEfficiency', 'dischargeCoefficient'] as const) {
      const offs = all.map(({ grade, engine }) =>
        engine.cylinders.map((cylinder) => {
          const off = cylinder[of] / 0.75 - 1;
          expect(Math.abs(off)).toBeLessThanOrEqual(most[grade] + 1e-12);
          return grade === 1 ? 0 : off / most[grade];
        }),
      );
      // Drawn evenly, so that some are near either end.
      expect(Math.min(...offs.flat())).toBeLessThan(-0.8);
      expect(Math.max(...offs.flat())).toBeGreaterThan(0.8);
    }
  });

  test('the intake strokes follow one another evenly in two turns of the crank', () => {
    for (const { carburettors, engine } of all)
      expect(engine.cylinders.map(({ intakeAtDegrees }) => intakeAtDegrees)).toEqual(
        Array.from({ length: carburettors }, (_, i) => (i * 720) / carburettors),
      );
  });

  test('the crank has 0.01 kg m², and 0.008 more for each cylinder', () => {
    for (const { carburettors, engine } of all)
      expect(engine.inertiaKgM2 - 0.01).toBeCloseTo(0.008 * carburettors, 12);
  });

  test('the dial has steps of 5 mmHg, the needle shakes by 3, it ends at 700, and 20 apart is well', () => {
    for (const { engine } of all) {
      expect(engine.gauge.resolutionPa / mmHg).toBeCloseTo(5, 9);
      expect(engine.gauge.flutterPa / mmHg).toBeCloseTo(3, 9);
      expect(engine.gauge.fullScalePa / mmHg).toBeCloseTo(700, 9);
      expect(engine.tolerancePa / mmHg).toBeCloseTo(20, 9);
    }
  });

  test('the tachometer is off by what the grade says, some low and some high', () => {
    const off = { 1: 0, 2: 10, 3: 25, 4: 40 } as const;
    for (const { grade, engine } of all) expect(Math.abs(engine.tachometer.errorRpm)).toBe(off[grade]);
    const signs = hard.map(({ engine }) => Math.sign(engine.tachometer.errorRpm));
    expect(new Set(signs)).toEqual(new Set([-1, 1]));
  });

  test('without a fault every nut drags its screw as far as the grade says', () => {
    const shift = { 1: 0.004, 2: 0.01, 3: 0.02, 4: 0.03 } as const;
    for (const { grade, engine } of all)
      for (const { lockShiftTurns } of engine.screws) expect(lockShiftTurns).toBe(shift[grade]);
  });
});

describe('how an engine is set up', () => {
  test('levelled it shows 200 to 300 mmHg at its speed with a quarter of the reach, and idles at 1,100 rpm', () => {
    for (const { engine } of easy) {
      const missing = missingM2(engine);
      const level = {
        ...engine,
        cylinders: engine.cylinders.map((cylinder, i) => ({
          ...cylinder,
          areaM2: cylinder.areaM2 + missing[i]!,
        })),
      };
      const { controls } = firstState(level, 0);
      const atWork = leftAlone(level, controls, 0.25);
      expect(atWork.rpm / level.targetRpm).toBeCloseTo(1, 6);
      for (const pa of atWork.depressionsPa) {
        expect(pa / mmHg).toBeGreaterThanOrEqual(200);
        expect(pa / mmHg).toBeLessThanOrEqual(300);
      }
      expect(leftAlone(level, controls, 0).rpm / 1100).toBeCloseTo(1, 6);
    }
  });

  test('the idle-speed screw opens 0.3 of what balance screws do a turn, and those are within a tenth', () => {
    const shares = all.flatMap(({ engine }) =>
      engine.screws.map(({ areaPerTurnM2 }) => (0.3 * areaPerTurnM2) / engine.idleScrew.areaPerTurnM2),
    );
    expect(Math.min(...shares)).toBeGreaterThanOrEqual(0.9);
    expect(Math.max(...shares)).toBeLessThanOrEqual(1.1);
    expect(Math.min(...shares)).toBeLessThan(0.92);
    expect(Math.max(...shares)).toBeGreaterThan(1.08);
  });

  test('a turn of a balance screw is worth 140 mmHg times 0.6 to 1.6 at the speed of the exercise', () => {
    // The weakest and the strongest screws of the first 150 seeds beside the others.
    for (const { engine } of [...easy, invented({ seed: 98 }), invented({ seed: 139 })]) {
      const { handM2, targetRpm, idleScrew } = engine;
      const [cylinder] = engine.cylinders;
      const level = mean(engine.cylinders.map(({ areaM2 }) => areaM2 + handM2 / 4));
      const paAt = (turns: number) =>
        steadyPa(engine, cylinder!, level + (turns * idleScrew.areaPerTurnM2) / 0.3, targetRpm);
      const perTurn = (paAt(0.005) - paAt(-0.005)) / 0.01 / mmHg;
      expect(perTurn).toBeGreaterThan(0.6 * 140 * 0.999);
      expect(perTurn).toBeLessThan(1.6 * 140 * 1.001);
    }
  });

  test('it is as far apart at first as its grade says, and on the far side by no more than the halving leaves', () => {
    const wanted = { 1: 60, 2: 120, 3: 200, 4: 260 } as const;
    for (const { grade, engine } of all) {
      const apart = trueSpreadPa(engine, firstState(engine, 0).controls) / mmHg / wanted[grade];
      expect(apart).toBeGreaterThan(1 - 1e-6);
      // Sixteen halvings of at most twice the way: 2^-15 of it.
      expect(apart).toBeLessThan(1 + 1e-4);
    }
  });

  test('where all may move together nothing is in common, and the thread reaches 1 to 4 turns further', () => {
    const free = all.filter(({ generation, grade }) => generation === 'separate-cables' && grade < 3);
    for (const { engine } of [...free, invented({ carburettors: 4, seed: 3 })]) {
      const needed = turnsToLevel(engine);
      for (const [j, { thread }] of engine.screws.entries()) {
        expect(thread.closing).toBe(thread.opening);
        expect(thread.opening - Math.abs(needed[j]!)).toBeGreaterThanOrEqual(1);
        expect(thread.opening - Math.abs(needed[j]!)).toBeLessThanOrEqual(4);
      }
    }
  });

  test('when it is hard one screw has seven tenths of the thread that it needs, on the side that it needs', () => {
    const sides = hard.map(({ engine }) => {
      const needed = turnsToLevel(engine);
      const short = engine.screws.filter(({ thread }) => thread.closing !== thread.opening);
      expect(short).toHaveLength(1);
      const j = engine.screws.indexOf(short[0]!);
      const side = needed[j]! < 0 ? 'closing' : 'opening';
      expect(short[0]!.thread[side] / Math.abs(needed[j]!)).toBeCloseTo(0.7, 6);
      const other = short[0]!.thread[side === 'closing' ? 'opening' : 'closing'] - Math.abs(needed[j]!);
      expect(other).toBeGreaterThanOrEqual(1);
      expect(other).toBeLessThanOrEqual(4);
      return side;
    });
    expect(new Set(sides)).toEqual(new Set(['closing', 'opening']));
  });

  test('no screw is short in an easy grade, nor where the set has no free move', () => {
    for (const { generation, grade, engine } of ofEachKind)
      if (grade < 3 || (generation !== 'separate-cables' && generation !== 'all-adjustable'))
        for (const { thread } of engine.screws) expect(thread.closing).toBe(thread.opening);
  });

  test('at the end of a thread a screw has 0.1 turns left on the side on which it is needed', () => {
    const sides = [6, 7, 8, 9].map((seed) => {
      const { engine } = invented({ fault: 'end-of-thread', seed });
      const needed = turnsToLevel(engine);
      const ends = engine.screws.filter(({ thread }) => thread.closing !== thread.opening);
      expect(ends).toHaveLength(1);
      const side = needed[engine.screws.indexOf(ends[0]!)]! < 0 ? 'closing' : 'opening';
      expect(ends[0]!.thread[side]).toBe(0.1);
      return side;
    });
    expect(new Set(sides)).toEqual(new Set(['closing', 'opening']));
  });
});
