import { describe, expect, test } from 'vitest';
import { threadTravelBudget, threadTravelBudgetExample } from '../../src/calculators/thread-travel-budget.ts';
import type { ThreadTravel, ThreadTravelBudget } from '../../src/calculators/thread-travel.ts';
import { agrees, describeRow, readDataRows, toNumber } from '../../truth/data-rows.ts';
import { metricThreads } from '../../src/calculators/screw-threads.ts';
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

  const rows = readDataRows('4-screw-threads.csv', 137).filter(
    ({ quantity }) => quantity === 'screw advance per turn fraction',
  );
  test('4 rows of tests/data/4-screw-threads.csv give advances', () => expect(rows).toHaveLength(4));
  test.each(rows.map((row) => [describeRow(row), row] as const))('%s', (_, row) => {
    const [, amount = '', unit = '', size = ''] = /^(\S+) (turn|deg) of (\S+) coarse$/.exec(row.input) ?? [];
    const [over = '', under = '1'] = amount.split('/');
    const share = toNumber(over, row.input) / toNumber(under, row.input);
    const pitchMm = metricThreads.find((thread) => thread.size === size)?.coarsePitchMm ?? NaN;
    const plannedTurns = unit === 'deg' ? share / 360 : share;
    const [first] = two.adjusters;
    if (first === undefined) throw new Error('two adjusters are made above');
    const result = budget({ ...two, pitchMm, adjusters: [{ ...first, plannedTurns }] });
    expect(agrees(result.adjusters[0]?.travelMm ?? NaN, row)).toBe(true);
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
    expect(idle({ turnsPerAdjusterTurn: 3 })).toMatchObject({
      idleScrewTurns: 3,
      idleScrewAfterwards: { closing: 5, opening: -1 },
    });
  });

  test('is there for separate cables and all-adjustable sets only', () => {
    expect(budget({ ...two, generation: 'separate-cables' }).commonMove).not.toBeNull();
    for (const generation of ['fixed-reference', 'paired-screws', 'bypass-screws'] as const) {
      expect(budget({ ...two, generation }).commonMove).toBeNull();
    }
  });
});

test('the worked example: the fourth runs out first, and closing all by 5/8 turn leaves 1 3/8', () => {
  const result = budget(threadTravelBudgetExample);
  expect(result.runsOutFirst.adjuster).toBe(4);
  expect(result.runsOutFirst.side).toBe('opening');
  expect(close(result.runsOutFirst.turnsLeft, 0.75)).toBe(true);
  expect(close(result.commonMove?.turns, -0.625)).toBe(true);
  expect(close(result.commonMove?.leastLeftTurns, 1.375)).toBe(true);
  expect(close(result.commonMove?.idleScrewTurns, 0.625)).toBe(true);
  expect(JSON.parse(JSON.stringify(result))).toEqual(result);
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
