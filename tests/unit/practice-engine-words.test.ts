import { describe, expect, test } from 'vitest';
import {
  answerPracticeEngine,
  describeCounted,
  describeEntry,
  describeEntryAloud,
  describeExercise,
  describeLesson,
  describeNaming,
  describeNeedle,
  describeOffSpeed,
  describeReplay,
  describeReplayStep,
  describeReview,
  describeShare,
  describeTachometer,
  describeTask,
  describeThread,
  describeWarmth,
  faultWords,
  initialForm,
  inventEngine,
  lastReadings,
  lessonIds,
  passTime,
  perform,
  practiceEngineExample,
  practiceEngineFields,
  practiceFaults,
  reviewRun,
  startReplay,
  startRun,
  writeReading,
} from '../../src/calculators/index.ts';
import type { PracticeAction, PracticeEngineField, PracticeRun } from '../../src/calculators/index.ts';
import { valueOfChecked } from '../../src/calculators/result.ts';
import { mmHg } from '../engine/invented.ts';

const figures = { unit: 'mmHg', mark: 'point' } as const;
const form = initialForm<PracticeEngineField>(practiceEngineFields);
const engine = valueOfChecked(inventEngine(practiceEngineExample));
const begun: PracticeRun = startRun(practiceEngineExample, engine);
const doing = (run: PracticeRun, ...actions: PracticeAction[]): PracticeRun =>
  actions.reduce((before, action) => perform(before, action).run, run);
/** The run with a needle that has swung so far in the last second, in mmHg. */
const watching = (lowest: number, highest: number): PracticeRun => ({
  ...begun,
  state: {
    ...begun.state,
    watched: begun.state.watched.map((_, k) => (k % 2 === 0 ? lowest : highest) * mmHg),
  },
});
const spaced = (text: string | null) => text?.replaceAll('\u00a0', ' ');

describe('an exercise', () => {
  test('is told in a sentence', () => {
    expect(describeExercise(practiceEngineExample)).toBe(
      'Four carburettors, ganged, an adjuster on each; grade 1, engine number 1',
    );
    expect(describeExercise({ ...practiceEngineExample, generation: 'bypass-screws', carburettors: 2 })).toBe(
      'Two throttle bodies, an air screw each but one; grade 1, engine number 1',
    );
    expect(spaced(describeTask(engine, null, figures))).toBe(
      `Hold ${engine.targetRpm} rpm for every reading, and bring all four within 20 mmHg.`,
    );
    const two = valueOfChecked(inventEngine({ ...practiceEngineExample, carburettors: 2 }));
    expect(spaced(describeTask(two, null, figures))).toContain('bring both within 20 mmHg');
    expect(describeTask(engine, 'see-saw', figures)).toMatch(
      /^Turn one screw .*before you believe either\. Hold /,
    );
  });

  test('is answered with its title, or with what is wrong with the number', () => {
    expect(answerPracticeEngine(form)).toMatchObject({
      ok: true,
      answer: { lesson: null, faultToFind: false, exercise: practiceEngineExample },
    });
    expect(answerPracticeEngine({ ...form, fault: 'hidden' })).toMatchObject({
      answer: { faultToFind: true },
    });
    expect(answerPracticeEngine({ ...form, lesson: 'not-balance' })).toMatchObject({
      answer: {
        lesson: 'not-balance',
        title: 'Lesson six: A fault that is not balance.',
        faultToFind: true,
        exercise: { fault: 'trapped-depression' },
      },
    });
    expect(answerPracticeEngine({ ...form, seed: 'x' })).toMatchObject({
      ok: false,
      problems: [{ field: 'seed', sentence: 'Give one number, such as 212, 12.5 or 9 1/2; you wrote “x”.' }],
    });
    expect(lessonIds.map(describeLesson)[1]).toBe('Lesson two: The see-saw of two');
  });
});

describe('the needle in words', () => {
  test.each([
    [202, 218, 'About 210 mmHg, swinging 8 either way.'],
    [212, 212, 'About 210 mmHg, standing quite still.'],
    [209.8, 210.6, 'About 210 mmHg, hardly moving.'],
    [0, 0, 'About 0 mmHg, standing quite still.'],
    [695, 720, 'At the end of the scale.'],
  ])('between %d and %d mmHg: %s', (lowest, highest, words) => {
    expect(spaced(describeNeedle(watching(lowest, highest), figures))).toBe(words);
  });

  test('in the unit of the reader, with the reader’s mark', () => {
    expect(spaced(describeNeedle(watching(202, 218), { unit: 'kPa', mark: 'comma' }))).toBe(
      'About 28,0 kPa, swinging 1,1 either way.',
    );
  });
});

test('the tachometer', () => expect(spaced(describeTachometer(begun))).toBe('1100 rpm'));

test.each([
  [0, ''],
  [10, ''],
  [-20, '20 rpm too slow'],
  [60, '60 rpm too fast'],
])('%d rpm off the speed: “%s”', (off, words) => expect(spaced(describeOffSpeed(off))).toBe(words));

test.each([
  [60, 'cold', 'Still cold: readings drift until it is 80 °C warm.'],
  [80, 'warm', 'Warm enough to be set.'],
  [160, 'warm', 'Warm enough to be set.'],
  [161, 'hot', 'Too hot, over 160 °C: fan on, or stop it.'],
])('at %d °C it is %s', (celsius, state, words) => {
  const warmth = describeWarmth({ ...begun.state, metalK: celsius + 273.15 });
  expect(warmth).toMatchObject({ state });
  expect(spaced(warmth.words)).toBe(words);
  expect(spaced(warmth.degrees)).toBe(`${celsius} °C`);
});

test('turns, thread and shares', () => {
  expect(describeCounted(0)).toBe('as found');
  expect(describeCounted(-0.25)).toBe('1/4 closed');
  expect(describeCounted(1 / 60)).toBe('1/60 opened');
  expect(describeThread({ closing: 0.2, opening: 3.456 }, figures)).toEqual({
    closing: '0.20',
    opening: '3.46',
    short: true,
  });
  expect(spaced(describeShare(0.2375, 1))).toBe('23.8 %');
});

describe('the log', () => {
  const logged = (run: PracticeRun) => spaced(describeEntry(engine, run.entries.at(-1)!, figures));
  test.each<[PracticeAction, string | undefined]>([
    [{ kind: 'hand', reach: 0.24 }, 'Throttle to 24.0 %'],
    [{ kind: 'tap', opening: 0.15 }, 'Damping tap to 15 %'],
    [{ kind: 'select', cylinder: 3 }, 'Selector to 3'],
    [{ kind: 'select', cylinder: null }, 'Selector shut'],
    [{ kind: 'vent', open: true }, 'Vented the line'],
    [{ kind: 'vent', open: false }, undefined],
    [{ kind: 'fan', on: true }, 'Fan on'],
    [{ kind: 'fan', on: false }, 'Fan off'],
    [{ kind: 'loosen', screw: 2 }, 'Loosened the nut of the screw of carburettor 2'],
    [
      { kind: 'turn', screw: 2, turns: 0.25 },
      'The nut of the screw of carburettor 2 is tight: loosen it first',
    ],
    [{ kind: 'idle-screw', turns: -0.125 }, 'Closed the idle-speed screw by 1/8 turn'],
    [{ kind: 'idle-screw', turns: 7 }, 'Opened the idle-speed screw by 6 turns; there its thread ends'],
    [{ kind: 'stop' }, 'Stopped the engine'],
    [{ kind: 'start' }, 'Started the engine'],
  ])('%j: %s', (action, words) => expect(logged(doing(begun, action))).toBe(words));

  test('a turn, the end of a thread, and the nut', () => {
    const loose = doing(begun, { kind: 'loosen', screw: 1 });
    expect(logged(doing(loose, { kind: 'turn', screw: 1, turns: -0.25 }))).toBe(
      'Closed the screw of carburettor 1 by 1/4 turn',
    );
    const atEnd = doing(loose, { kind: 'turn', screw: 1, turns: 50 });
    expect(logged(atEnd)).toMatch(/^Opened .*; there its thread ends$/);
    expect(logged(doing(atEnd, { kind: 'turn', screw: 1, turns: 1 }))).toBe(
      'The screw of carburettor 1 is at the end of its thread',
    );
    const nut = (held: boolean) => logged(doing(loose, { kind: 'tighten', screw: 1, held }));
    expect(nut(true)).toBe('Tightened the nut of the screw of carburettor 1, holding the screw');
    expect(nut(false)).toBe('Tightened the nut of the screw of carburettor 1, the screw let go');
  });

  test('a reading, the last of each carburettor, and what is said aloud', () => {
    const read = writeReading(watching(202, 218))!;
    expect(logged(read)).toBe('Read 1: 210 mmHg at 1100 rpm');
    expect(lastReadings(read, figures)).toEqual(['210', null, null, null]);
    expect(spaced(describeEntryAloud(engine, read.entries.at(-1), figures))).toBe(
      'Read 1: 210 mmHg at 1100 rpm.',
    );
    const loose = writeReading(doing(watching(212, 212), { kind: 'loosen', screw: 1 }))!;
    expect(spaced(describeEntryAloud(engine, loose.entries.at(-1), figures))).toBe(
      'Read 1: 210 mmHg at 1100 rpm, needle still, a nut loose. The bench session takes none of these.',
    );
    expect(describeEntryAloud(engine, undefined, figures)).toBe('');
    const quiet = doing(begun, { kind: 'hand', reach: 0.2 });
    expect(describeEntryAloud(engine, quiet.entries.at(-1), figures)).toBe('');
  });
});

test('naming a fault: right only for the one that is there, and it is not given away', () => {
  for (const fault of [null, ...practiceFaults])
    for (const named of ['none', ...practiceFaults] as const) {
      const { right, sentence } = describeNaming(named, fault);
      expect(right).toBe(named === (fault ?? 'none'));
      if (!right) expect(sentence).not.toContain(faultWords[fault ?? 'none'].shows);
    }
});

describe('the truth', () => {
  const read = writeReading(passTime(begun, 2))!;
  const turned = doing(
    read,
    { kind: 'loosen', screw: 1 },
    { kind: 'turn', screw: 1, turns: -0.25 },
    { kind: 'tighten', screw: 1, held: true },
  );

  test('as found, and after a turn', () => {
    const found = describeReview(begun, reviewRun(begun), figures);
    expect(spaced(found.lead)).toBe(
      'Not within the tolerance: highest and lowest truly lie 60 mmHg apart, and 20 mmHg is allowed.',
    );
    expect(found.rows).toHaveLength(4);
    for (const { figures: row } of found.rows) expect(row.slice(0, 1)).toEqual(row.slice(1, 2));
    expect(found.rows.map(({ figures: row }) => row[3])).toEqual(
      found.rows.map(({ figures: row }) => row[2]),
    );
    expect(found.course).toEqual([]);
    const review = reviewRun(turned);
    const words = describeReview(turned, review, figures);
    const line = (id: string) => spaced(words.lines.find((each) => each.id === id)!.text);
    expect(line('readings')).toBe('1');
    expect(line('turns')).toBe('1/4 turn in 1 movement');
    expect(line('time')).toBe('0:02');
    expect(line('too-hot')).toBe('none');
    expect(words.course.map(({ clock }) => clock)).toEqual(['0:02', '0:02', '0:02']);
    expect(words.course[0]!.spread).toBe('60');
    expect(words.course[2]!.spread).not.toBe('60');
    expect(words.stripWords).toMatch(/^True depressions: carburettor 1, \d+; .* mmHg\.$/);
    expect(words.fault).toBe('Nothing but the balance was wrong.');
    const loose = doing(begun, { kind: 'loosen', screw: 1 });
    expect(describeReview(loose, reviewRun(loose), figures).lead).toMatch(/A nut is still loose\.$/);
  });

  test('within, too hot, and a fault', () => {
    const review = { ...reviewRun(begun), within: true, tooHotSeconds: 65, fault: 'air-leak' } as const;
    const words = describeReview(begun, review, figures);
    expect(words.lead).toMatch(/^Within the tolerance: /);
    expect(words.lines.find(({ id }) => id === 'too-hot')?.text).toBe('1:05');
    expect(words.fault).toBe(`${faultWords['air-leak'].name}. ${faultWords['air-leak'].shows}`);
  });

  test('what the advice would have done', () => {
    const replay = startReplay(begun);
    expect(spaced(describeReplay(engine, replay, figures))).toBe(
      'Working it out: the engine warms up, 85 °C.',
    );
    const depressionsPa = [210, 220, 215, 212].map((each) => each * mmHg);
    const reading = {
      event: { kind: 'reading', carburettor: 2, depressionPa: 210 * mmHg, rpm: 2200 },
      depressionsPa,
      spreadPa: 10 * mmHg,
    } as const;
    const turn = { ...reading, event: { kind: 'turn', screw: 1, turns: -1 / 8 } } as const;
    expect(spaced(describeReplayStep(engine, reading, figures).words)).toBe('Read 2: 210 mmHg at 2200 rpm');
    expect(spaced(describeReplayStep(engine, turn, figures).words)).toBe(
      'Close the screw of carburettor 1 by 1/8 turn, and lock it',
    );
    const open = { ...turn, event: { ...turn.event, turns: 1 / 4 } };
    expect(spaced(describeReplayStep(engine, open, figures).words)).toBe(
      'Open the screw of carburettor 1 by 1/4 turn, and lock it',
    );
    const { rpm: _, ...withoutSpeed } = reading.event;
    expect(spaced(describeReplayStep(engine, { ...reading, event: withoutSpeed }, figures).words)).toBe(
      `Read 2: 210 mmHg at ${engine.targetRpm} rpm`,
    );
    const steps = [reading, turn];
    expect(describeReplay(engine, { ...replay, phase: 'working', steps }, figures)).toContain(
      '2 steps so far',
    );
    expect(spaced(describeReplay(engine, { ...replay, phase: 'done', steps }, figures))).toBe(
      'The advice called it done after 1 reading and 1 turn, 0:00 of the engine’s time, 85 °C at most. Highest and lowest then truly lay 10 mmHg apart.',
    );
    expect(describeReplay(engine, { ...replay, phase: 'stop', steps }, figures)).toContain(
      'because it could not go on',
    );
  });
});
