import { describe, expect, test } from 'vitest';
import {
  answerThreadTravelBudget,
  initialForm,
  parseSessionLink,
  parseSetUp,
  parseThreadTravelBudget,
  sayProblem,
  threadTravelBudget,
  threadTravelBudgetFields,
} from '../../src/calculators/index.ts';
import type {
  DescribedThreadTravel,
  Form,
  ThreadTravel,
  ThreadTravelBudget,
  ThreadTravelBudgetField,
} from '../../src/calculators/index.ts';
import { tolerances } from '../tolerances.ts';

const budget = (given: ThreadTravel): ThreadTravelBudget => {
  const result = threadTravelBudget(given);
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value;
};
const problemOf = (given: ThreadTravel) => {
  const result = threadTravelBudget(given);
  return result.ok ? undefined : result.problem;
};
const close = (one: number | undefined, other: number) =>
  Math.abs((one ?? NaN) - other) <= tolerances.turns.absolute;

/** Two adjusters of pitch 1 mm, 3 mm to close and 2 mm to open. */
const two: ThreadTravel = {
  generation: 'all-adjustable',
  pitchMm: 1,
  unscrewsWhen: 'opening',
  adjusters: [{ showing: { closingMm: 3, openingMm: 2 } }, { showing: { closingMm: 3, openingMm: 2 } }],
};

describe('travel and turns left', () => {
  test('travel per turn is pitch times starts', () => {
    expect(budget({ ...two, pitchMm: 0.75 }).travelPerTurnMm).toBe(0.75);
    expect(budget({ ...two, pitchMm: 0.75, starts: 2 }).travelPerTurnMm).toBe(1.5);
  });

  test('an hour of a clock face is a twelfth of a turn', () => {
    expect(close(budget({ ...two, pitchMm: 0.75, starts: 2 }).travelPerClockHourMm, 0.125)).toBe(true);
  });

  test('the thread that shows over the lead, each way', () => {
    expect(budget({ ...two, pitchMm: 0.5 }).adjusters[0]?.turnsLeft).toEqual({ closing: 6, opening: 4 });
  });

  test('engagement above the minimum counts on the way out only', () => {
    const engaged = { ...two, engagementMm: 6, minimumEngagementMm: 4.5 };
    expect(budget(engaged).adjusters[0]?.turnsLeft).toEqual({ closing: 3, opening: 3.5 });
    expect(budget({ ...engaged, unscrewsWhen: 'closing' }).adjusters[0]?.turnsLeft).toEqual({
      closing: 4.5,
      opening: 2,
    });
    expect(budget({ ...two, engagementMm: 6 }).adjusters[0]?.turnsLeft).toEqual({ closing: 3, opening: 2 });
  });

  test('engagement below the minimum is said, and owed', () => {
    const short = budget({ ...two, engagementMm: 4, minimumEngagementMm: 5.5 });
    expect(short.engagementShort).toBe(true);
    expect(short.adjusters[0]?.turnsLeft).toEqual({ closing: 3, opening: 0.5 });
    expect(budget({ ...two, engagementMm: 1, minimumEngagementMm: 9 }).adjusters[0]?.turnsLeft.opening).toBe(
      0,
    );
    expect(budget({ ...two, engagementMm: 5, minimumEngagementMm: 5 }).engagementShort).toBe(false);
  });
});

describe('who runs out first', () => {
  const plan = (...turns: readonly number[]): ThreadTravel => ({
    ...two,
    adjusters: turns.map((plannedTurns) => ({ showing: { closingMm: 3, openingMm: 2 }, plannedTurns })),
  });

  test('the side with the least left after the planned turns', () => {
    expect(budget(plan(0.5, 1.5)).runsOutFirst).toEqual({ adjuster: 2, side: 'opening', turnsLeft: 0.5 });
    expect(budget(plan(-2.75, 1)).runsOutFirst).toEqual({ adjuster: 1, side: 'closing', turnsLeft: 0.25 });
    expect(budget(plan(0, 0)).runsOutFirst).toEqual({ adjuster: 1, side: 'opening', turnsLeft: 2 });
  });

  test('a plan that does not fit says how much is missing', () => {
    const result = budget(plan(2.5, 0));
    expect(result.fits).toBe(false);
    expect(result.runsOutFirst).toEqual({ adjuster: 1, side: 'opening', turnsLeft: -0.5 });
  });

  test('a plan that just fits does', () => {
    const tenths = {
      ...plan(2),
      pitchMm: 0.1,
      adjusters: [{ showing: { closingMm: 0, openingMm: 0.3 }, plannedTurns: 3 }],
    };
    expect(budget(tenths).fits).toBe(true);
  });
});

describe('the common move', () => {
  test('lies in the middle between what is left to open and to close', () => {
    const { commonMove } = budget({
      ...two,
      adjusters: [
        { showing: { closingMm: 3, openingMm: 2 }, plannedTurns: 1.5 },
        { showing: { closingMm: 2, openingMm: 4 }, plannedTurns: -0.5 },
      ],
    });
    // Least left to open 0.5 (first), to close 1.5 (second).
    expect(commonMove?.turns).toBe(-0.5);
    expect(commonMove?.leastLeftTurns).toBe(1);
    expect(commonMove?.adjusters.map(({ turns }) => turns)).toEqual([1, -1]);
    expect(commonMove?.adjusters.map(({ afterwards }) => afterwards)).toEqual([
      { closing: 4, opening: 1 },
      { closing: 1, opening: 5 },
    ]);
    expect(commonMove?.idleScrewTurns).toBe(0.5);
    expect(commonMove?.idleScrewAfterwards).toBeNull();
  });

  test('can make a plan fit that does not fit by itself', () => {
    const tight = budget({
      ...two,
      adjusters: [
        { showing: { closingMm: 3, openingMm: 0.5 }, plannedTurns: 1 },
        { showing: { closingMm: 3, openingMm: 2 } },
      ],
    });
    expect([tight.fits, tight.commonMove?.fits]).toEqual([false, true]);
  });

  test('cannot where too little thread shows altogether', () => {
    const hopeless = budget({
      ...two,
      adjusters: [
        { showing: { closingMm: 0.2, openingMm: 0.2 }, plannedTurns: 1 },
        { showing: { closingMm: 0.2, openingMm: 0.2 }, plannedTurns: -1 },
      ],
    });
    expect([hopeless.fits, hopeless.commonMove?.fits]).toEqual([false, false]);
    expect(close(hopeless.commonMove?.leastLeftTurns, -0.8)).toBe(true);
  });

  test('is undone by the idle-speed screw in the ratio of the leads, or as told', () => {
    const adjusters = [
      { showing: { closingMm: 3, openingMm: 1 } },
      { showing: { closingMm: 3, openingMm: 1 } },
    ];
    const idle = (more: object) =>
      budget({
        ...two,
        adjusters,
        idleScrew: { pitchMm: 0.5, showing: { closingMm: 1, openingMm: 1 }, ...more },
      }).commonMove;
    expect(idle({})).toMatchObject({
      turns: -1,
      idleScrewTurns: 2,
      idleScrewAfterwards: { closing: 4, opening: 0 },
    });
    expect(idle({ turnsPerAdjusterTurn: 1.5 })).toMatchObject({
      idleScrewTurns: 1.5,
      idleScrewAfterwards: { closing: 3.5, opening: 0.5 },
      limitedByIdleScrew: false,
    });
  });

  test('goes no further than the idle-speed screw can undo', () => {
    const idleScrew = { pitchMm: 1, showing: { closingMm: 0.25, openingMm: 0.5 } };
    const shut = { showing: { closingMm: 3, openingMm: 1 } };
    const open = { showing: { closingMm: 1, openingMm: 3 } };
    expect(budget({ ...two, adjusters: [shut], idleScrew }).commonMove).toMatchObject({
      turns: -0.5,
      unlimitedTurns: -1,
      limitedByIdleScrew: true,
      leastLeftTurns: 1.5,
      idleScrewTurns: 0.5,
      idleScrewAfterwards: { closing: 0.75, opening: 0 },
    });
    expect(budget({ ...two, adjusters: [open], idleScrew }).commonMove).toMatchObject({
      turns: 0.25,
      unlimitedTurns: 1,
      leastLeftTurns: 1.25,
      idleScrewTurns: -0.25,
      idleScrewAfterwards: { closing: 0, opening: 0.75 },
    });
    expect(budget({ ...two, adjusters: [shut], idleScrew }).idleScrewLeft).toEqual({
      closing: 0.25,
      opening: 0.5,
    });
  });

  test('is there for separate cables and all-adjustable sets only', () => {
    expect(budget({ ...two, generation: 'separate-cables' }).commonMove).not.toBeNull();
    for (const generation of ['fixed-reference', 'paired-screws', 'bypass-screws'] as const) {
      expect(budget({ ...two, generation }).commonMove).toBeNull();
    }
  });
});

describe('the lock nut', () => {
  const nutted = (side: 'closing' | 'opening', heightMm: number, plannedTurns = 0): ThreadTravel => ({
    ...two,
    lockNut: { side, heightMm },
    adjusters: [{ showing: { closingMm: 3, openingMm: 2 }, plannedTurns }],
  });

  test('keeps its height of the thread on its side', () => {
    expect(budget(nutted('closing', 1)).adjusters[0]?.turnsLeft).toEqual({ closing: 2, opening: 2 });
    expect(budget(nutted('opening', 0.5)).adjusters[0]?.turnsLeft).toEqual({ closing: 3, opening: 1.5 });
    expect(budget(two).adjusters[0]?.nutRoomMm).toBeNull();
    expect(budget(two).leastNutRoom).toBeNull();
  });

  test('has room as long as thread shows beyond it after the plan', () => {
    expect(budget(nutted('closing', 1, -0.5)).adjusters[0]?.nutRoomMm).toBe(1.5);
    expect(budget(nutted('opening', 1, 1.5)).adjusters[0]?.nutRoomMm).toBe(-0.5);
    const both = [3, 2.5, 4].map((closingMm) => ({ showing: { closingMm, openingMm: 2 } }));
    expect(budget({ ...nutted('closing', 1), adjusters: both }).leastNutRoom).toEqual({
      adjuster: 2,
      roomMm: 1.5,
    });
    expect(budget(nutted('closing', 4)).adjusters[0]).toMatchObject({
      nutRoomMm: -1,
      turnsLeft: { closing: 0, opening: 2 },
    });
  });
});

describe('what is wrong is named', () => {
  test.each([0, -1])('pitch %d', (value) => {
    const problem = { kind: 'out-of-range', field: 'pitchMm', value, limit: { above: 0 } };
    expect(problemOf({ ...two, pitchMm: value })).toEqual(problem);
  });

  test('pitch that is no number', () => {
    expect(problemOf({ ...two, pitchMm: NaN })).toEqual({ kind: 'not-finite', field: 'pitchMm' });
    expect(problemOf({ ...two, pitchMm: Infinity })).toEqual({ kind: 'not-finite', field: 'pitchMm' });
  });

  test.each([0, 5, 1.5])('%d starts', (starts) => {
    expect(problemOf({ ...two, starts })).toMatchObject({
      kind: 'out-of-range',
      field: 'starts',
      value: starts,
    });
  });

  test('adjusters: none, nine, a negative thread, turns that are no number', () => {
    const [first] = two.adjusters;
    if (first === undefined) throw new Error('two adjusters are made above');
    expect(problemOf({ ...two, adjusters: [] })).toEqual({ kind: 'no-screws' });
    expect(problemOf({ ...two, adjusters: Array.from({ length: 9 }, () => first) })).toMatchObject({
      field: 'adjusters',
      value: 9,
      limit: { max: 8 },
    });
    expect(problemOf({ ...two, adjusters: [{ showing: { closingMm: 1, openingMm: -1 } }] })).toMatchObject({
      field: 'adjusters.0.showing.openingMm',
      limit: { min: 0 },
    });
    expect(problemOf({ ...two, adjusters: [first, { ...first, plannedTurns: NaN }] })).toEqual({
      kind: 'not-finite',
      field: 'adjusters.1.plannedTurns',
    });
  });

  test('engagement and idle-speed screw', () => {
    const idleScrew = { pitchMm: 1, showing: { closingMm: 1, openingMm: 1 } };
    const cases: readonly (readonly [string, Partial<ThreadTravel>])[] = [
      ['engagementMm', { engagementMm: -1 }],
      ['minimumEngagementMm', { minimumEngagementMm: -1 }],
      ['lockNut.heightMm', { lockNut: { side: 'closing', heightMm: -1 } }],
      ['idleScrew.pitchMm', { idleScrew: { ...idleScrew, pitchMm: 0 } }],
      ['idleScrew.turnsPerAdjusterTurn', { idleScrew: { ...idleScrew, turnsPerAdjusterTurn: 0 } }],
      [
        'idleScrew.showing.closingMm',
        { idleScrew: { ...idleScrew, showing: { closingMm: -1, openingMm: 1 } } },
      ],
    ];
    for (const [field, more] of cases) {
      expect(problemOf({ ...two, ...more })).toMatchObject({ kind: 'out-of-range', field });
    }
  });
});

type Fields = ThreadTravelBudgetField;
const example = initialForm(threadTravelBudgetFields);
const asked = (part: Partial<Form<Fields>>): Form<Fields> => ({ ...example, ...part });
const answered = (part: Partial<Form<Fields>> = {}): DescribedThreadTravel => {
  const result = answerThreadTravelBudget(asked(part));
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.answer;
};
const parsed = (part: Partial<Form<Fields>> = {}) => {
  const result = parseThreadTravelBudget(asked(part));
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};
/** Problems of a form as `field: sentence`. */
const faults = (part: Partial<Form<Fields>>): readonly string[] => {
  const result = answerThreadTravelBudget(asked(part));
  return result.ok
    ? []
    : result.problems.map(sayProblem).map(({ field, sentence }) => `${field}: ${sentence}`);
};
const textOf = (answer: DescribedThreadTravel, id: string): string | undefined =>
  [...answer.lines, ...(answer.shift?.lines ?? [])]
    .find((line) => line.id === id)
    ?.text.replaceAll('\u00a0', ' ');
const plain = (words: string | undefined): string | undefined => words?.replaceAll('\u00a0', ' ');

describe('the worked example, as the page first shows it', () => {
  const answer = answered();

  test('says in words who runs out first, and what common move leaves the most', () => {
    expect(plain(answer.lead)).toBe(
      'The plan fits. After it adjuster 4 has 3/4 turn left to open, the least of all.',
    );
    expect(plain(answer.shift?.lead)).toBe(
      'Close all four adjusters by 5/8 turn, and open the idle-speed screw by 1/2 turn. Then at least 1 3/8 turns are left everywhere.',
    );
    expect(answer.announcement).toBe(`${answer.lead} ${answer.shift?.lead}`);
    expect(answer.warnings).toEqual([]);
    expect(answer.noShift).toBe('');
  });

  test('gives every figure with its unit', () => {
    for (const [id, text] of [
      ['turn', '0.8 mm'],
      ['hour', '0.067 mm'],
      ['engagement', '5 mm'],
      ['nut', '2.7 mm'],
      ['nut-room', '1.6 mm'],
      ['idle-closing', '4 turns'],
      ['all', 'close 5/8 turn'],
      ['idle', 'open 1/2 turn'],
      ['least', '1 3/8 turns'],
      ['idle-after-closing', '4 1/2 turns'],
      ['idle-after-opening', '3 1/2 turns'],
    ])
      expect(textOf(answer, id ?? ''), id).toBe(text);
    expect(answer.lines.find(({ id }) => id === 'nut-room')?.note).toBe('adjuster\u00a02, after the plan');
    expect(answer.lines.find(({ id }) => id === 'turn')).toMatchObject({
      copied: '0.8 mm',
      note: 'M5, 31.75 to the inch',
    });
  });

  test('gives a row for each adjuster', () => {
    const cell = (text: string, short = false) => ({ text, short });
    expect(answer.rows[3]).toEqual({
      adjuster: 4,
      now: { closing: cell('3.50'), opening: cell('1.50') },
      turns: '+3/4',
      afterwards: { closing: cell('4.25'), opening: cell('0.75') },
    });
    expect(answer.shift?.rows[2]).toMatchObject({ turns: '−7/8', afterwards: { opening: cell('3.38') } });
  });

  test('says the plot in words', () => {
    expect(answer.plot).toContain(
      'Adjuster 3: 2.50 to close, 2.50 to open, planned −0.25, with the common move −0.88.',
    );
    expect(answer.plot).toContain(
      'Idle-speed screw: 4.00 to close, 4.00 to open, planned 0.00, with the common move 0.50.',
    );
  });

  test('hands over to the bench session, which reads the thread from the link', () => {
    const link = parseSessionLink(answer.sessionLink ?? {});
    if (!link.ok) throw new Error('the link is of our own version');
    expect(link.value).toMatchObject({ readings: '', unknownKeys: [] });
    const setUp = parseSetUp(link.value.answers);
    if (!setUp.ok) throw new Error(JSON.stringify(setUp.problems));
    expect(setUp.value.generation).toBe('all-adjustable');
    expect(setUp.value.setUp.screws.map(({ turnsLeft }) => turnsLeft)).toEqual([
      { closing: 3, opening: 2 },
      { closing: 2, opening: 3 },
      { closing: 2.5, opening: 2.5 },
      { closing: 3.5, opening: 1.5 },
    ]);
  });
});

describe('the form', () => {
  test('a measured pitch: what ten turns go, over ten; it is already the lead', () => {
    expect(parsed({ threadFrom: 'measured', pitchTravel: '12.5', starts: '3', nut: 'none' })).toMatchObject({
      travel: { pitchMm: 1.25, starts: 1 },
      thread: { thread: null },
      minimumFrom: null,
    });
    const answer = answered({ threadFrom: 'measured', pitchTurns: '20', pitchTravel: '1 in', nut: 'none' });
    expect(textOf(answer, 'turn')).toBe('1.27 mm');
    expect(answer.lines[0]?.note).toBe('as measured');
    expect(textOf(answer, 'engagement')).toBeUndefined();
  });

  test('lengths in any unit, turns in parts of a clock face or degrees', () => {
    const { travel } = parsed({
      closing1: '0.5 cm',
      opening1: '1/16 in',
      planned1: '-90°',
      planned2: '15 min',
      planned3: '3 h',
      planned4: '',
    });
    expect(travel.adjusters[0]?.showing).toEqual({ closingMm: 5, openingMm: 1.5875 });
    expect(travel.adjusters.map(({ plannedTurns }) => plannedTurns)).toEqual([-0.25, 0.25, 0.25, 0]);
  });

  test('counted turns need neither nut nor engagement', () => {
    const { travel, nut, minimumFrom } = parsed({
      showing: 'turns',
      closing1: '2',
      opening1: '1 1/2',
      idleClosing: '3',
    });
    expect(travel.adjusters[0]?.showing).toEqual({ closingMm: 1.6, openingMm: 1.2000000000000002 });
    expect(travel).not.toHaveProperty('lockNut');
    expect(travel).not.toHaveProperty('engagementMm');
    expect([nut, minimumFrom]).toEqual([null, null]);
    expect(travel.idleScrew?.showing.closingMm).toBe(3);
    expect(
      answered({ showing: 'turns', starts: '2', closing1: '2', opening1: '1.5' }).rows[0]?.now,
    ).toMatchObject({
      closing: { text: '2.00' },
      opening: { text: '1.50' },
    });
  });

  test.each([
    ['head', 'opening', 'closing'],
    ['head', 'closing', 'opening'],
    ['tip', 'opening', 'opening'],
    ['tip', 'closing', 'closing'],
  ])('a nut at the %s of a screw that comes out when %s takes thread from %s', (nutAt, comesOut, side) => {
    expect(parsed({ nutAt, comesOut }).travel.lockNut).toEqual({ heightMm: 2.7, side });
  });

  test('nuts: thin, regular, measured, none', () => {
    const height = (part: Partial<Form<Fields>>) => parsed(part).travel.lockNut?.heightMm;
    expect(height({ nut: 'thin', thread: 'M6x0.75' })).toBe(3.2);
    expect(height({ nut: 'regular' })).toBe(4.7);
    expect(height({ nut: 'measured', nutHeight: '3,1', thread: '2BA' })).toBe(3.1);
    expect(height({ nut: 'none' })).toBeUndefined();
    expect(textOf(answered({ nut: 'none' }), 'nut')).toBeUndefined();
  });

  test('the minimum engagement: as typed, else one diameter, else not told', () => {
    expect(parsed({ minimum: '4' })).toMatchObject({
      minimumFrom: 'typed',
      travel: { minimumEngagementMm: 4 },
    });
    expect(parsed()).toMatchObject({ minimumFrom: 'one-diameter', travel: { minimumEngagementMm: 5 } });
    expect(parsed({ engagement: '' })).toMatchObject({ minimumFrom: null });
    expect(answered({ minimum: '4' }).lines.find(({ id }) => id === 'engagement')?.note).toBe('of 6\u00a0mm');
  });

  test('the idle-speed screw: its own thread, a ratio of its own, or not looked at', () => {
    expect(parsed({ idleThread: '1/4 UNF', idleRatio: '1.5' })).toMatchObject({
      idleThread: { thread: { name: '1/4 UNF' } },
      travel: { idleScrew: { turnsPerAdjusterTurn: 1.5 } },
    });
    expect(parsed({ idleThreadFrom: 'measured', idlePitchTravel: '7.5' }).travel.idleScrew?.pitchMm).toBe(
      0.75,
    );
    expect(parsed({ idle: 'unknown', idleThread: 'nonsense' })).toMatchObject({ idleThread: null });
    const unknown = answered({ idle: 'unknown' });
    expect(unknown.shift?.lines.find(({ id }) => id === 'idle')?.note).toBe(
      'if it has the same thread and lever',
    );
    expect(unknown.marks).toHaveLength(4);
  });

  test.each([
    [{ closing1: '' }, 'closing1: Give a number, such as 212 or 9 1/2; nothing is written here.'],
    [{ closing1: '-1' }, 'closing1: Give a number from 0 to 200 mm; you wrote “-1”.'],
    [{ opening2: '201' }, 'opening2: Give a number from 0 to 200 mm; you wrote “201”.'],
    [{ opening2: 'NaN' }, 'opening2: Give one number, such as 212, 12.5 or 9 1/2; you wrote “NaN”.'],
    [
      { opening4: '1,234' },
      'opening4: The comma in “1,234” can be read two ways. Say which is meant: 1234 (one thousand two hundred and thirty-four) or 1.234.',
    ],
    [{ planned3: '51' }, 'planned3: Give a number from −50 to 50; you wrote “51”.'],
    [
      { planned3: '1e309' },
      'planned3: Give a number of a size from 1 × 10⁻³⁰⁰ to 1 × 10³⁰⁰; you wrote “1e309”.',
    ],
    [
      { planned1: '1 mm' },
      'planned1: “mm” is not a unit that is known here. Give one of turns, min, h or °.',
    ],
    [{ showing: 'turns', closing1: '101' }, 'closing1: Give a number from 0 to 100; you wrote “101”.'],
    [
      { engagement: '5 kPa' },
      'engagement: “kPa” is not a unit that is known here. Give one of µm, mm, cm, m, km, thou, in, ft, yd or mile.',
    ],
    [
      { engagement: '', minimum: '5' },
      'engagement: Give a number, such as 212 or 9 1/2; nothing is written here.',
    ],
    [{ minimum: '-5' }, 'minimum: Give a number from 0 to 200 mm; you wrote “-5”.'],
    [
      { thread: 'M5.2' },
      'thread: “M5.2” is not a thread of the tables here. Give one such as M5, M8x0.75, #10 UNF, 1/4 BSF or 2BA, or measure the pitch.',
    ],
    [{ thread: '2BA' }, 'nut: The tables here hold no nut for 2BA. Measure the nut and give its height.'],
    [
      { threadFrom: 'measured' },
      'nut: The tables here hold no nut for a measured pitch. Measure the nut and give its height.',
    ],
    [{ nut: 'measured' }, 'nutHeight: Give a number, such as 212 or 9 1/2; nothing is written here.'],
    [
      { threadFrom: 'measured', nut: 'none', pitchTurns: '0' },
      'pitchTurns: Give a number from 1 to 100; you wrote “0”.',
    ],
    [
      { threadFrom: 'measured', nut: 'none', pitchTravel: '8 cm 3' },
      'pitchTravel: “cm 3” is not a unit that is known here. Give one of µm, mm, cm, m, km, thou, in, ft, yd or mile.',
    ],
    [
      { threadFrom: 'measured', nut: 'none', pitchTravel: '101' },
      'pitchTravel: Give a number from 1 mm to 100 mm; you wrote “101”.',
    ],
    [
      { idleThread: 'M' },
      'idleThread: “M” is not a thread of the tables here. Give one such as M5, M8x0.75, #10 UNF, 1/4 BSF or 2BA, or measure the pitch.',
    ],
    [{ idleOpening: 'x' }, 'idleOpening: Give one number, such as 212, 12.5 or 9 1/2; you wrote “x”.'],
    [{ idleClosing: '-2' }, 'idleClosing: Give a number from 0 to 200 mm; you wrote “-2”.'],
    [{ idleRatio: '0' }, 'idleRatio: Give a number above 0 and at most 20; you wrote “0”.'],
    [{ idleRatio: 'two' }, 'idleRatio: Give one number, such as 212, 12.5 or 9 1/2; you wrote “two”.'],
  ] as readonly (readonly [Partial<Form<Fields>>, string])[])('%o', (part, sentence) => {
    expect(faults(part)).toEqual([sentence]);
  });

  test('all that is wrong is said at once; adjusters that are not there are not asked', () => {
    expect(faults({ thread: '?', closing2: 'a', idleRatio: '-1' })).toHaveLength(3);
    expect(faults({ adjusters: '3', closing4: 'a', opening8: 'b' })).toEqual([]);
  });
});

describe('other answers in words', () => {
  test('a plan that does not fit', () => {
    const answer = answered({ planned4: '2' });
    expect(plain(answer.lead)).toBe('The plan does not fit: adjuster 4 lacks 1/2 turn to open.');
    expect(answer.rows[3]?.afterwards.opening).toEqual({ text: '−0.50', short: true });
  });

  test('no plan', () => {
    const none = { planned1: '', planned3: '', planned4: '0' };
    expect(plain(answered(none).lead)).toBe('Adjuster 4 has 1 1/2 turns left to open, the least of all.');
  });

  test('too little thread altogether', () => {
    const answer = answered({
      adjusters: '2',
      closing1: '2.7',
      opening1: '0',
      closing2: '2.7',
      opening2: '0',
      planned1: '2',
      planned2: '-1',
    });
    expect(plain(answer.shift?.lead)).toBe(
      'Open both adjusters by 1/8 turn, and close the idle-speed screw by 1/10 turn. Then at the worst 7/8 turn is still missing: re-centre the screws first, by the service manual.',
    );
    expect(textOf(answer, 'least')).toBe('7/8 turn missing');
  });

  test('more than a turn is missing', () => {
    const answer = answered({ adjusters: '2', closing2: '2.7', planned1: '5', planned2: '-1' });
    expect(plain(answer.shift?.lead)).toMatch(/Then at the worst 2 turns are still missing: /u);
  });

  test('less than a turn is left', () => {
    const answer = answered({ adjusters: '1', closing1: '3.5', opening1: '0', engagement: '', planned1: '' });
    expect(plain(answer.shift?.lead)).toBe(
      'Close the adjuster by 1/2 turn, and open the idle-speed screw by 2/5 turn. Then at least 1/2 turn is left everywhere.',
    );
  });

  test('in the middle already, or nothing left to undo it with', () => {
    const middle = {
      adjusters: '2',
      closing1: '3.5',
      opening1: '0.8',
      closing2: '3.5',
      opening2: '0.8',
      engagement: '',
      planned1: '',
      planned2: '',
    };
    expect(answered(middle).shift?.lead).toBe(
      'The adjusters stand in the middle already: no common move leaves more thread.',
    );
    const stuck = answered({ idleOpening: '0' });
    expect(stuck.shift?.lead).toBe('The idle-speed screw has no thread left to undo a common move.');
    expect(stuck.warnings.map(plain)).toEqual([
      'The idle-speed screw ends first. With more thread on it, all adjusters could close by 5/8 turn.',
    ]);
  });

  test('warnings: engagement, and the nut', () => {
    expect(answered({ engagement: '4' }).warnings.map(plain)).toContain(
      'Less thread holds than has to: 4 mm of 5 mm. Screw in first what is missing, engine off.',
    );
    expect(answered({ closing2: '2' }).warnings[0]).toMatch(/^No room for the lock nut on adjuster 2 after/u);
    expect(answered({ closing2: '2', closing3: '2.5', planned3: '-1/4' }).warnings).toContain(
      'No room for the lock nut on adjusters 2 and 3 after the plan: a nut that is not full of thread does not hold.',
    );
  });

  test.each(['fixed-reference', 'paired-screws', 'bypass-screws'])(
    '%s has no free common move, and says why',
    (generation) => {
      const answer = answered({ generation });
      expect(answer.shift).toBeNull();
      expect(answer.noShift).toMatch(/^This kind has no free common move: [^.]*\.$/u);
      expect(answer.announcement).toBe(answer.lead);
      expect(answer.plot).not.toContain('common move');
      expect(answered({ generation, planned4: '2' }).noShift).toContain('Re-centre the screws');
    },
  );

  test('the bench session gets one carburettor more where one has no adjuster, and none beyond eight', () => {
    const link = (generation: string, adjusters: string) =>
      answered({ generation, adjusters, ...eight }).sessionLink;
    const eight = Object.fromEntries(
      [5, 6, 7, 8].flatMap((n) => [
        [`closing${n}`, '4'],
        [`opening${n}`, '1'],
      ]),
    );
    expect(link('fixed-reference', '3')).toMatchObject({ g: 'fixed-reference', n: '4', fixed: '1' });
    expect(link('paired-screws', '3')).toMatchObject({ n: '4' });
    expect(link('bypass-screws', '4')).toMatchObject({ n: '4', fixed: '' });
    expect(link('separate-cables', '8')).toMatchObject({ n: '8' });
    expect(link('separate-cables', '2')).toMatchObject({ n: '2' });
    expect(link('fixed-reference', '8')).toBeNull();
    expect(link('separate-cables', '1')).toBeNull();
  });
});
