import { describe, expect, test } from 'vitest';
import {
  inventEngine,
  lessonIds,
  lessonOf,
  lessons,
  startRun,
  trueDepressionsPa,
} from '../../src/calculators/index.ts';
import type { LessonId, Look, PracticeEntry, PracticeRun } from '../../src/calculators/index.ts';
import { valueOfChecked } from '../../src/calculators/value-of-checked.ts';
import { mmHg } from '../engine/invented.ts';

const begun = (id: LessonId): PracticeRun => {
  const { exercise } = lessonOf(id);
  return startRun(exercise, valueOfChecked(inventEngine(exercise)));
};
const truth = ({ engine, state }: PracticeRun) =>
  trueDepressionsPa(engine, state.controls, engine.targetRpm, state.metalK);

/** A reading of what is true, at the speed of the exercise, with a needle that moves a little; then changed. */
const reading = (run: PracticeRun, cylinder: number, change: (look: Look) => Partial<Look> = () => ({})) => {
  const { targetRpm, tachometer } = run.engine;
  const look: Look = {
    depressionPa: truth(run)[cylinder - 1]!,
    flutterPa: 3 * mmHg,
    rpm: targetRpm + tachometer.errorRpm,
    still: false,
  };
  const { controls, metalK } = run.state;
  return {
    kind: 'reading',
    cylinder,
    look: { ...look, ...change(look) },
    seconds: 60,
    metalK,
    screwTurns: controls.screwTurns,
    nutsTight: true,
  } as const;
};
const action = (run: PracticeRun, given: (PracticeEntry & { kind: 'action' })['action']): PracticeEntry => ({
  kind: 'action',
  action: given,
  happened: { turns: 0, boundWhen: null, nutTight: false },
  seconds: 50,
  screwTurns: run.state.controls.screwTurns,
  nutsTight: true,
});

/** Levelled by knowing the truth: every screw closes the gap of its own cylinder, again and again. */
const levelled = (run: PracticeRun): PracticeRun => {
  let now = run;
  for (let round = 0; round < 40; round += 1) {
    const gaps = truth(now);
    const mean = gaps.reduce((sum, pa) => sum + pa, 0) / gaps.length;
    const screwTurns = now.state.controls.screwTurns.map(
      (turns, j) => turns + (0.4 * (gaps[j]! - mean)) / (140 * mmHg),
    );
    now = { ...now, state: { ...now.state, controls: { ...now.state.controls, screwTurns } } };
  }
  return now;
};
const reached = (
  id: LessonId,
  run: PracticeRun,
  entries: readonly PracticeEntry[],
  named: PracticeRun['engine']['fault'] = null,
) =>
  lessonOf(id)
    .goal({ ...run, entries }, named)
    .map((part) => part.reached);

describe('every lesson', () => {
  test('stands in its place, and its exercise can be drawn', () => {
    expect(lessons.map(({ id }) => id)).toEqual(lessonIds);
    for (const { exercise } of lessons) expect(inventEngine(exercise).ok).toBe(true);
    expect(lessonOf('fixed-reference').exercise.generation).toBe('fixed-reference');
    expect(lessonOf('short-thread').exercise).toMatchObject({
      generation: 'all-adjustable',
      carburettors: 4,
    });
    expect(lessonOf('not-balance').exercise.fault).not.toBeNull();
  });

  const sentence = /^[A-Z][^.]+\.$/u;
  test.each(lessonIds)(
    '%s says what it is about in two sentences, and each part of its goal in one',
    (id) => {
      const { title, about, goal } = lessonOf(id);
      expect(title).toMatch(/^[A-Z][a-z -]+$/u);
      const sentences = about.split(/(?<=\.) /u);
      expect(sentences).toHaveLength(2);
      for (const each of sentences) expect(each).toMatch(sentence);
      const words = goal(begun(id), null).map((part) => part.words);
      for (const each of words) expect(each).toMatch(sentence);
      expect(new Set(words).size).toBe(words.length);
    },
  );

  test('titles are all different', () => {
    expect(new Set(lessons.map(({ title }) => title)).size).toBe(lessons.length);
  });

  test.each(['see-saw', 'fixed-reference', 'short-thread'] as const)(
    '%s is a set that is to be proved',
    (id) => {
      const run = begun(id);
      expect(reached(id, run, [])).toEqual([false, true, false]);
      const all = run.engine.cylinders.map((_, i) => reading(run, i + 1));
      expect(reached(id, run, all)).toEqual([false, true, true]);
      expect(reached(id, run, all.slice(1))).toEqual([false, true, false]);
    },
  );

  test('short thread: one screw of its engine is short', () => {
    const { engine } = begun('short-thread');
    expect(engine.screws.filter(({ thread }) => thread.closing !== thread.opening)).toHaveLength(1);
  });
});

describe('reading a fluttering needle', () => {
  const run = begun('fluttering-needle');
  const of = (...entries: PracticeEntry[]) => reached('fluttering-needle', run, entries);

  test('needs three good readings, and both cylinders among them', () => {
    expect(of()).toEqual([false, false]);
    expect(of(reading(run, 1), reading(run, 2))).toEqual([false, true]);
    expect(of(reading(run, 1), reading(run, 1), reading(run, 1))).toEqual([true, false]);
    expect(of(reading(run, 1), reading(run, 2), reading(run, 1))).toEqual([true, true]);
  });

  test('what the hands did between the readings does not count', () => {
    const tap = action(run, { kind: 'tap', opening: 0.2 });
    expect(of(tap, reading(run, 1), tap, reading(run, 2), tap)).toEqual([false, true]);
    expect(of(tap, reading(run, 1), tap, reading(run, 2), tap, reading(run, 1))).toEqual([true, true]);
  });

  test.each<[string, (look: Look) => Partial<Look>, boolean]>([
    ['50 rpm off', ({ rpm }) => ({ rpm: rpm + 50 }), true],
    ['51 rpm too fast', ({ rpm }) => ({ rpm: rpm + 51 }), false],
    ['51 rpm too slow', ({ rpm }) => ({ rpm: rpm - 51 }), false],
    ['with a needle that stands still', () => ({ still: true }), false],
    ['with a needle that swings 15 mmHg', () => ({ flutterPa: 15 * mmHg }), true],
    ['with a needle that swings 15.1 mmHg', () => ({ flutterPa: 15.1 * mmHg }), false],
    ['7.4 mmHg above the truth', ({ depressionPa }) => ({ depressionPa: depressionPa + 7.4 * mmHg }), true],
    ['7.6 mmHg above the truth', ({ depressionPa }) => ({ depressionPa: depressionPa + 7.6 * mmHg }), false],
    ['7.6 mmHg below the truth', ({ depressionPa }) => ({ depressionPa: depressionPa - 7.6 * mmHg }), false],
  ])('a third reading %s', (_, change, counts) => {
    expect(of(reading(run, 1), reading(run, 2), reading(run, 1, change))).toEqual([counts, true]);
  });
});

describe('a set that is to be proved', () => {
  const id = 'see-saw';
  const first = begun(id);
  const level = levelled(first);
  const both = [reading(level, 1), reading(level, 2)];

  test('is balanced, tight, and read again', () => {
    expect(reached(id, first, [])).toEqual([false, true, false]);
    expect(reached(id, level, both)).toEqual([true, true, true]);
    const { state } = level;
    const loose = { ...level, state: { ...state, controls: { ...state.controls, nutTight: [true, false] } } };
    expect(reached(id, loose, both)).toEqual([true, false, true]);
  });

  test.each([
    ['a turn', { kind: 'turn', screw: 1, turns: 0.1 }, false],
    ['a nut that was tightened', { kind: 'tighten', screw: 1, held: true }, false],
    ['a tap', { kind: 'tap', opening: 0.2 }, true],
  ] as const)('%s between the readings', (_, between, counts) => {
    const entries = [both[0]!, action(level, between), both[1]!];
    expect(reached(id, level, entries)).toEqual([true, true, counts]);
    expect(reached(id, level, [...entries, ...both])).toEqual([true, true, true]);
  });

  test('a reading at another speed does not count', () => {
    const fast = reading(level, 2, ({ rpm }) => ({ rpm: rpm + 60 }));
    expect(reached(id, level, [both[0]!, fast])).toEqual([true, true, false]);
  });
});

test('the lock nut: every one is tightened with its screw held', () => {
  const run = begun('lock-nut');
  const held = action(run, { kind: 'tighten', screw: 1, held: true });
  const letGo = action(run, { kind: 'tighten', screw: 2, held: false });
  const other = action(run, { kind: 'loosen', screw: 1 });
  expect(reached('lock-nut', run, [reading(run, 1), other, held]).at(-1)).toBe(true);
  expect(reached('lock-nut', run, [held, letGo]).at(-1)).toBe(false);
});

test('a fault that is not balance: it is named, and no screw is turned', () => {
  const run = begun('not-balance');
  expect(reached('not-balance', run, [])).toEqual([false, true]);
  expect(reached('not-balance', run, [], 'air-leak')).toEqual([false, true]);
  expect(reached('not-balance', run, [], 'trapped-depression')).toEqual([true, true]);
  const { state } = run;
  const turned = { ...run, state: { ...state, controls: { ...state.controls, screwTurns: [0, 0.1] } } };
  expect(reached('not-balance', turned, [], 'trapped-depression')).toEqual([true, false]);
});
