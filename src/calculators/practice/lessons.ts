import { conventionalMercuryDensity, standardGravity } from '../exact-definitions.ts';
import type { PracticeFault } from './engine.ts';
import type { Exercise } from './exercise.ts';
import type { PracticeEntry, PracticeRun } from './run.ts';
import { trueDepressionsPa, trueSpreadPa } from './steady.ts';

const mmHg = (conventionalMercuryDensity * standardGravity) / 1000;

export const lessonIds = [
  'fluttering-needle',
  'see-saw',
  'fixed-reference',
  'short-thread',
  'lock-nut',
  'not-balance',
] as const;
export type LessonId = (typeof lessonIds)[number];

/** One part of a lesson's goal, in words, and whether it is reached. */
export type GoalPart = { readonly words: string; readonly reached: boolean };

export type Lesson = {
  readonly id: LessonId;
  readonly title: string;
  /** What is learned, in two sentences. */
  readonly about: string;
  readonly exercise: Exercise;
  readonly goal: (run: PracticeRun, named: PracticeFault | null) => readonly GoalPart[];
};

type Reading = PracticeEntry & { readonly kind: 'reading' };

/** A reading counts if the speed was back, from common practice within 50 rpm; from memory. */
const closeRpm = 50;
/** A needle swings too wildly to be read beyond this, either way; from memory. */
const wildPa = 15 * mmHg;
/** A reading is good within a step and a half of the gauge; from memory. */
const goodReadingPa = 7.5 * mmHg;

const readingsOf = (run: PracticeRun): readonly Reading[] =>
  run.entries.filter((entry): entry is Reading => entry.kind === 'reading');

const atSpeed = (run: PracticeRun, { look }: Reading): boolean =>
  Math.abs(look.rpm - run.engine.tachometer.errorRpm - run.engine.targetRpm) <= closeRpm;

/** An engine that has grown hotter since shows more; a reading is held against the truth of its own moment. */
const truthWhen = (run: PracticeRun, { cylinder, screwTurns, metalK }: Reading): number =>
  trueDepressionsPa(run.engine, { ...run.state.controls, screwTurns }, run.engine.targetRpm, metalK)[
    cylinder - 1
  ]!;

/** Readings after the last time that a screw was moved or a nut tightened. */
function readSinceLastTurn(run: PracticeRun): readonly Reading[] {
  const last = run.entries.findLastIndex(
    (entry) => entry.kind === 'action' && ['turn', 'tighten'].includes(entry.action.kind),
  );
  return run.entries.slice(last + 1).filter((entry): entry is Reading => entry.kind === 'reading');
}

const balanced = (run: PracticeRun): GoalPart => ({
  words: 'All cylinders lie within the tolerance, whatever the gauge says.',
  reached: trueSpreadPa(run.engine, run.state.controls) <= run.engine.tolerancePa,
});
const nutsTight = (run: PracticeRun): GoalPart => ({
  words: 'Every lock nut is tight.',
  reached: run.state.controls.nutTight.every(Boolean),
});
function readAgain(run: PracticeRun): GoalPart {
  const read = new Set(
    readSinceLastTurn(run)
      .filter((reading) => atSpeed(run, reading))
      .map(({ cylinder }) => cylinder),
  );
  return {
    words: 'Every cylinder was read again after the last nut was tightened, at the speed of the exercise.',
    reached: read.size === run.engine.cylinders.length,
  };
}
const proved = (run: PracticeRun): readonly GoalPart[] => [balanced(run), nutsTight(run), readAgain(run)];

const exercise = (
  generation: Exercise['generation'],
  carburettors: number,
  grade: Exercise['grade'],
  seed: number,
  fault: Exercise['fault'] = null,
): Exercise => ({ generation, carburettors, grade, seed, fault });

/** The six lessons, in order. All engines are invented. */
export const lessons: readonly Lesson[] = [
  {
    id: 'fluttering-needle',
    title: 'Reading a fluttering needle',
    about:
      'With the tap open the needle shakes at every intake stroke. Shut the tap until it just still moves, wait, and read the middle.',
    exercise: exercise('separate-cables', 2, 1, 11),
    goal: (run) => {
      const good = readingsOf(run).filter(
        (reading) =>
          atSpeed(run, reading) &&
          !reading.look.still &&
          reading.look.flutterPa <= wildPa &&
          Math.abs(reading.look.depressionPa - truthWhen(run, reading)) <= goodReadingPa,
      );
      return [
        {
          words:
            'Three readings with a needle that moves a little, at the speed of the exercise, each close to the truth.',
          reached: good.length >= 3,
        },
        {
          words: 'Both cylinders are among them.',
          reached: new Set(good.map(({ cylinder }) => cylinder)).size === 2,
        },
      ];
    },
  },
  {
    id: 'see-saw',
    title: 'The see-saw of two',
    about:
      'Turn one screw and the engine speeds up or slows down, and both readings move. Bring the speed back before you believe either.',
    exercise: exercise('separate-cables', 2, 2, 22),
    goal: proved,
  },
  {
    id: 'fixed-reference',
    title: 'A fixed reference',
    about:
      'One carburettor has no adjuster. The others are matched to it, and it is read again and again, because it moves too.',
    exercise: exercise('fixed-reference', 3, 2, 33),
    goal: proved,
  },
  {
    id: 'short-thread',
    title: 'Four adjusters and short thread',
    about:
      'One adjuster runs out before the set is level. All adjusters may move together, so bring the others to it.',
    exercise: exercise('all-adjustable', 4, 3, 44),
    goal: proved,
  },
  {
    id: 'lock-nut',
    title: 'The lock nut',
    about:
      'A nut that is nipped drags the screw along, far if the screw is let go. Hold the screw, tighten, read again, and expect to do it twice.',
    exercise: exercise('all-adjustable', 2, 4, 55),
    goal: (run) => [
      ...proved(run),
      {
        words: 'Every nut was tightened with its screw held.',
        reached: run.entries.every(
          (entry) => entry.kind !== 'action' || entry.action.kind !== 'tighten' || entry.action.held,
        ),
      },
    ],
  },
  {
    id: 'not-balance',
    title: 'A fault that is not balance',
    about:
      'Something else is wrong with this engine or its gauge, and no screw cures it. Find it before you turn anything.',
    exercise: exercise('fixed-reference', 3, 1, 66, 'trapped-depression'),
    goal: (run, named) => [
      { words: 'The fault is named.', reached: named === run.engine.fault },
      {
        words: 'No screw was turned.',
        reached: run.state.controls.screwTurns.every((turns) => turns === 0),
      },
    ],
  },
];

export const lessonOf = (id: LessonId): Lesson => lessons[lessonIds.indexOf(id)]!;
