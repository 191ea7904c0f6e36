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
  gradeWords,
  initialForm,
  inventEngine,
  lastReadings,
  lessonIds,
  lessonOf,
  passTime,
  perform,
  practiceEngineExample,
  practiceEngineFields,
  practiceFaults,
  practiceGrades,
  reviewRun,
  sayProblem,
  startReplay,
  startRun,
  writeReading,
} from '../../src/calculators/index.ts';
import type { PracticeAction, PracticeEngineField, PracticeRun } from '../../src/calculators/index.ts';
import { valueOfChecked } from '../../src/calculators/value-of-checked.ts';
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

  test.each([
    ['separate-cables', 'Four carburettors, a cable and a stop screw each;'],
    ['all-adjustable', 'Four carburettors, ganged, an adjuster on each;'],
    ['fixed-reference', 'Four carburettors, ganged, one without an adjuster;'],
    ['paired-screws', 'Four carburettors, ganged, screws between neighbours;'],
    ['bypass-screws', 'Four throttle bodies, an air screw each but one;'],
  ] as const)('%s: %s', (generation, words) => {
    const told = describeExercise({ ...practiceEngineExample, generation, grade: 3, seed: 28 });
    expect(told).toBe(`${words} grade 3, engine number 28`);
  });

  test('of each grade is told in words of its own', () => {
    const words = practiceGrades.map((grade) => gradeWords[grade]);
    for (const each of words) expect(each).toMatch(/^[A-Z][a-z,: ]+[a-z]$/u);
    expect(new Set(words).size).toBe(practiceGrades.length);
  });

  test('of one’s own is called what it is; a lesson says what it is about, and then what its engine is', () => {
    const own = answerPracticeEngine(form);
    const sentence = 'Four carburettors, ganged, an adjuster on each; grade 1, engine number 1.';
    expect(own).toMatchObject({ answer: { title: sentence, announcement: sentence, about: '' } });
    for (const id of lessonIds) {
      const { about, exercise } = lessonOf(id);
      expect(answerPracticeEngine({ ...form, lesson: id })).toMatchObject({
        answer: {
          title: `${describeLesson(id)}.`,
          announcement: `${describeLesson(id)}.`,
          about: `${about} ${describeExercise(exercise)}.`,
          faultToFind: exercise.fault !== null,
        },
      });
    }
  });

  test('that is refused is answered with what was typed', () => {
    const answer = answerPracticeEngine({ ...form, seed: '1e6' });
    expect(answer.ok ? [] : answer.problems.map(sayProblem).map(({ sentence }) => sentence)).toEqual([
      expect.stringMatching(/you wrote “1e6”\.$/u),
    ]);
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
    const refused = answerPracticeEngine({ ...form, seed: 'x' });
    expect(refused.ok ? [] : refused.problems.map(sayProblem)).toMatchObject([
      { field: 'seed', sentence: 'Give one number, such as 212, 12.5 or 9 1/2; you wrote “x”.' },
    ]);
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
  expect(describeThread({ closing: 2.5, opening: 3 }, { unit: 'mmHg', mark: 'comma' })).toEqual({
    closing: '2,50',
    opening: '3,00',
    short: false,
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
  });

  test('aloud, a control that tells its own state is left out, and nothing but a reading says that it is not taken', () => {
    const aloud = (action: PracticeAction) =>
      spaced(describeEntryAloud(engine, doing(begun, action).entries.at(-1), figures));
    expect(aloud({ kind: 'hand', reach: 0.2 })).toBe('');
    expect(aloud({ kind: 'tap', opening: 0.2 })).toBe('');
    expect(aloud({ kind: 'select', cylinder: 2 })).toBe('');
    expect(aloud({ kind: 'fan', on: true })).toBe('');
    expect(aloud({ kind: 'vent', open: true })).toBe('Vented the line.');
    expect(aloud({ kind: 'loosen', screw: 2 })).toBe('Loosened the nut of the screw of carburettor 2.');
  });

  test('the last reading of a carburettor is what its key shows, whatever was done since', () => {
    const first = writeReading(watching(202, 218))!;
    const later = { ...first, state: watching(240, 240).state };
    const again = doing(writeReading(later)!, { kind: 'select', cylinder: 1 }, { kind: 'fan', on: true });
    expect(lastReadings(again, figures)).toEqual(['240', null, null, null]);
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

test('a fault is told by a name, and once it is named by how it shows', () => {
  const all = ['none', ...practiceFaults] as const;
  for (const fault of all) {
    const { name, shows } = faultWords[fault];
    expect(name).toMatch(/^[A-Z][a-z: ]+[a-z]$/u);
    expect(shows).toMatch(/^[A-Z].*\.$/u);
    expect(describeNaming(fault, fault === 'none' ? null : fault).sentence).toBe(`Right. ${shows}`);
    expect(
      describeNaming(fault === 'none' ? 'air-leak' : 'none', fault === 'none' ? null : fault).sentence,
    ).toBe('No, that is not it. Try the controls one by one.');
  }
  expect(new Set(all.map((fault) => faultWords[fault].name)).size).toBe(all.length);
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

  test('openings stand beside the mean of all, with their sign, and depressions to the millimetre', () => {
    const at = (openings: readonly number[], mmHgs: readonly number[]) => ({
      openings,
      depressionsPa: mmHgs.map((each) => each * mmHg),
      spreadPa: (Math.max(...mmHgs) - Math.min(...mmHgs)) * mmHg,
    });
    const review = {
      ...reviewRun(begun),
      first: at([1.03, 0.88, 1.004, 1.086], [210, 240, 222, 205]),
      now: at([1, 0.996, 1.01, 0.994], [218, 221, 219, 222]),
    };
    const { rows, lines } = describeReview(begun, review, figures);
    expect(rows.map(({ carburettor }) => carburettor)).toEqual([1, 2, 3, 4]);
    expect(rows.map(({ figures: row }) => row.map(spaced))).toEqual([
      ['+3 %', '0 %', '210', '218'],
      ['−12 %', '0 %', '240', '221'],
      ['0 %', '+1 %', '222', '219'],
      ['+9 %', '−1 %', '205', '222'],
    ]);
    const line = (id: string) => spaced(lines.find((each) => each.id === id)!.text);
    expect(line('spread-first')).toBe('35 mmHg');
    expect(line('spread-now')).toBe('4 mmHg');
  });

  test('each figure has a label of its own; a temperature, a count and “none” are what they say', () => {
    const review = { ...reviewRun(begun), readings: 12, moves: 3, turns: 0.75, hottestK: 273.15 + 91 };
    const { lines } = describeReview(begun, review, figures);
    const labels = lines.map(({ label }) => label);
    for (const label of labels) expect(label).toMatch(/^[A-Z][a-z’ ]+$/u);
    expect(new Set(labels).size).toBe(lines.length);
    const of = (told: typeof lines, id: string) => spaced(told.find((each) => each.id === id)!.text);
    expect(of(lines, 'readings')).toBe('12');
    expect(of(lines, 'turns')).toBe('3/4 turn in 3 movements');
    expect(of(lines, 'hottest')).toBe('91 °C');
    const idle = describeReview(begun, reviewRun(begun), figures).lines;
    expect(of(idle, 'turns')).toBe('none');
    expect(of(idle, 'readings')).toBe('0');
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
    expect(describeReplay(engine, { ...replay, phase: 'working', steps: [reading] }, figures)).toBe(
      'Working it out: 1 step so far.',
    );
    const more = [reading, turn, reading, turn, { ...reading, spreadPa: 15 * mmHg }];
    const ended = spaced(describeReplay(engine, { ...replay, phase: 'done', steps: more }, figures));
    expect(ended).toContain('done after 3 readings and 2 turns,');
    expect(ended).toContain('truly lay 15 mmHg apart.');
  });
});
