import { conventionalMercuryDensity, standardAtmospherePa, standardGravity } from '../exact-definitions.ts';
import { generations, hasFreeCommonMove, screwsOf } from '../linkage.ts';
import type { Screw } from '../protocol.ts';
import { fail, succeed } from '../result.ts';
import type { Result } from '../result.ts';
import { valueOfChecked } from '../value-of-checked.ts';
import { checkExercise } from './check-exercise.ts';
import { startRpm, warmK } from './constants.ts';
import type { PracticeCylinder, PracticeEngine, PracticeScrew } from './engine.ts';
import type { Exercise } from './exercise.ts';
import { frictionPa } from './friction.ts';
import { drawsFrom } from './random.ts';
import { firstState } from './state.ts';
import { areaForM2, givenPerPa, indicatedEfficiencyOf, trueSpreadPa } from './steady.ts';

const mmHg = (conventionalMercuryDensity * standardGravity) / 1000;

/** What makes a grade hard. Every figure is an invented engine's, from memory. */
const grades = {
  1: {
    spreadMmHg: 60,
    scatter: 0,
    lockShiftTurns: 0.004,
    rpmError: 0,
    startK: 358.15,
    stick: 0,
    shortScrews: 0,
  },
  2: {
    spreadMmHg: 120,
    scatter: 0.005,
    lockShiftTurns: 0.01,
    rpmError: 10,
    startK: 293.15,
    stick: 0,
    shortScrews: 0,
  },
  3: {
    spreadMmHg: 200,
    scatter: 0.01,
    lockShiftTurns: 0.02,
    rpmError: 25,
    startK: 293.15,
    stick: 0,
    shortScrews: 1,
  },
  4: {
    spreadMmHg: 260,
    scatter: 0.015,
    lockShiftTurns: 0.03,
    rpmError: 40,
    startK: 293.15,
    stick: 0.004,
    shortScrews: 1,
  },
} as const;

const airToFuel = 13;
const ambientK = 293.15;
/** Share of the hand's reach that holds the speed at which the set is adjusted. */
const workingReach = 0.25;

/**
 * The engine of an exercise: the same for the same exercise, everywhere. It is drawn so that a levelled set shows a
 * depression of 200 to 300 mmHg at the speed of the exercise and idles near 1,100 rpm (common practice).
 * Problems: those of `checkExercise`.
 */
export function inventEngine(exercise: Exercise): Result<PracticeEngine> {
  const problem = checkExercise(exercise);
  if (problem !== undefined) return fail(problem);
  const { generation, carburettors, seed, fault } = exercise;
  const grade = grades[exercise.grade];
  const { uniform, index } = drawsFrom(
    seed,
    100 * generations.indexOf(generation) + 10 * carburettors + exercise.grade,
  );
  const hasFixed = generation === 'fixed-reference' || generation === 'bypass-screws';
  const fixed = hasFixed ? 1 + index(carburettors) : null;
  const screws = valueOfChecked(screwsOf(generation, carburettors, fixed === null ? {} : { fixed }));

  const ambientPa = exercise.grade < 3 ? standardAtmospherePa : standardAtmospherePa * uniform(0.96, 1.01);
  const targetRpm = 2000 + 50 * index(7);
  const levelPa = uniform(200, 300) * mmHg;
  const frictionFactor = uniform(0.95, 1.15);
  const displacementM3 = uniform(90e-6, 190e-6);
  const runnerM3 = displacementM3 * uniform(1.1, 1.6);
  const shapes = Array.from({ length: carburettors }, (_, i) => ({
    displacementM3,
    runnerM3,
    volumetricEfficiency: 0.75 * (1 + grade.scatter * uniform(-1, 1)),
    dischargeCoefficient: 0.75 * (1 + grade.scatter * uniform(-1, 1)),
    leakM2: 0,
    intakeAtDegrees: (720 * i) / carburettors,
  }));

  const frictionAtPa = (rpm: number): number => frictionPa(rpm, warmK, frictionFactor);
  const given = givenPerPa(levelPa, ambientPa, frictionAtPa(targetRpm));
  const idlePa = ambientPa - (ambientPa + frictionAtPa(startRpm)) / (1 + given);
  const indicatedEfficiency = indicatedEfficiencyOf(given, 0.75, airToFuel);
  const mean = { ...shapes[0], volumetricEfficiency: 0.75, dischargeCoefficient: 0.75 } as PracticeCylinder;
  const areaOf = (cylinder: Omit<PracticeCylinder, 'areaM2'>, pa: number, rpm: number): number =>
    areaForM2(cylinder, pa, rpm, ambientPa, ambientK);
  const handM2 = (areaOf(mean, levelPa, targetRpm) - areaOf(mean, idlePa, startRpm)) / workingReach;
  const slopeM2PerPa =
    (areaOf(mean, levelPa - mmHg, targetRpm) - areaOf(mean, levelPa + mmHg, targetRpm)) / (2 * mmHg);
  const effectPa = 140 * mmHg * Math.exp(uniform(Math.log(0.6), Math.log(1.6)));
  const areaPerTurnM2 = screws.map(() => effectPa * slopeM2PerPa * uniform(0.9, 1.1));
  const unlevel = unevenTurns(screws, hasFreeCommonMove(generation), () => uniform(-1, 1));
  const stick = fault === 'sticking-cable' ? 0.06 : grade.stick;
  const faulty = index(carburettors);
  const faultyScrew = index(screws.length);

  const engineWith = (scale: number): PracticeEngine => {
    const off = shapes.map((_, i) =>
      screws.reduce((sum, { moves }, j) => sum + moves[i]! * areaPerTurnM2[j]! * scale * unlevel[j]!, 0),
    );
    // Its owner has set the idle-speed screw so that it idles: the mean of the openings is that of a level set.
    const common = off.reduce((sum, each) => sum + each, 0) / carburettors;
    const cylinders = shapes.map((shape, i): PracticeCylinder => {
      const level = areaOf(shape, levelPa, targetRpm);
      const leakM2 = fault === 'air-leak' && i === faulty ? 0.6 * level : 0;
      return { ...shape, leakM2, areaM2: level - workingReach * handM2 - off[i]! + common };
    });
    const needed = unlevel.map((turns) => scale * turns);
    return {
      generation,
      fixed,
      ambientPa,
      ambientK,
      cylinders,
      screws: screws.map((screw, j) => practiceScrew(screw, j, needed[j]!)),
      idleScrew: { areaPerTurnM2: 0.3 * effectPa * slopeM2PerPa, thread: { closing: 6, opening: 6 } },
      handM2,
      cableStick: stick,
      inertiaKgM2: 0.008 * carburettors + 0.01,
      airToFuel,
      indicatedEfficiency,
      frictionFactor,
      startK: grade.startK,
      gauge: { resolutionPa: 5 * mmHg, flutterPa: 3 * mmHg, fullScalePa: 700 * mmHg },
      tachometer: { errorRpm: tachometerError, stepRpm: 10 },
      targetRpm,
      tolerancePa: 20 * mmHg,
      blockedVent: fault === 'trapped-depression' ? 1 : 0,
      deadTap: fault === 'shut-tap' ? 0.55 : 0.02,
      fault,
    };
  };
  const threadDraws = screws.map(() => uniform(1, 4));
  const tachometerError = grade.rpmError * (uniform(-1, 1) < 0 ? -1 : 1);
  const shortScrew = grade.shortScrews > 0 && hasFreeCommonMove(generation) ? index(screws.length) : null;

  function practiceScrew({ moves }: Screw, j: number, neededTurns: number): PracticeScrew {
    const each = threadDraws[j]!;
    const scarce =
      fault === 'end-of-thread' && j === faultyScrew
        ? 0.1
        : j === shortScrew
          ? Math.abs(neededTurns) * 0.7
          : null;
    const room = { closing: each + Math.abs(neededTurns), opening: each + Math.abs(neededTurns) };
    const thread =
      scarce === null ? room : neededTurns < 0 ? { ...room, closing: scarce } : { ...room, opening: scarce };
    const lockShiftTurns = fault === 'slipped-nut' && j === faultyScrew ? 0.2 : grade.lockShiftTurns;
    return { moves, areaPerTurnM2: areaPerTurnM2[j]!, thread, lockShiftTurns };
  }

  return succeed(engineWith(scaleFor(grade.spreadMmHg * mmHg, engineWith)));
}

/**
 * How the screws stand off at first: drawn, with nothing in common where all may move together, and scaled so that
 * the openings of the cylinders lie one turn apart.
 */
function unevenTurns(screws: readonly Screw[], free: boolean, draw: () => number): readonly number[] {
  const drawn = screws.map((_, j) => draw() + (j === 0 ? 0.2 : 0));
  const common = free ? drawn.reduce((sum, turns) => sum + turns, 0) / drawn.length : 0;
  const turns = drawn.map((each) => each - common);
  const cylinders = screws[0]!.moves.length;
  const openings = Array.from({ length: cylinders }, (_, i) =>
    screws.reduce((sum, { moves }, j) => sum + moves[i]! * turns[j]!, 0),
  );
  const apart = Math.max(...openings) - Math.min(...openings);
  return turns.map((each) => each / Math.max(apart, 1e-3));
}

/** How far off the screws stand at first, so that the set is so far apart: found by halving. */
function scaleFor(spreadPa: number, engineWith: (scale: number) => PracticeEngine): number {
  const spreadAt = (scale: number): number => {
    const engine = engineWith(scale);
    return trueSpreadPa(engine, firstState(engine, 0).controls);
  };
  let [low, high] = [0, 0.1];
  while (spreadAt(high) < spreadPa && high < 20) high *= 2;
  for (let halving = 0; halving < 16; halving += 1) {
    const middle = (low + high) / 2;
    if (spreadAt(middle) < spreadPa) low = middle;
    else high = middle;
  }
  return high;
}
