import { describe, expect, test } from 'vitest';
import {
  answersOf,
  carburettorNumbers,
  defaultAnswers,
  describeProblem,
  generations,
  parseSetUp,
  pressureUnits,
  screwsOfAnswers,
  typedIn,
} from '../../src/calculators/index.ts';
import type { BenchSetUp, FieldProblem, SetUpAnswers } from '../../src/calculators/index.ts';
import { mmHg } from '../engine/invented.ts';

const answers: SetUpAnswers = { ...defaultAnswers('mmHg'), generation: 'fixed-reference', fixed: '2' };
const withAnswers = (changes: Partial<SetUpAnswers>): SetUpAnswers => ({ ...answers, ...changes });

const problemsOf = (changes: Partial<SetUpAnswers>): readonly FieldProblem[] => {
  const parsed = parseSetUp(withAnswers(changes));
  return parsed.ok ? [] : parsed.problems;
};
const setUpOf = (changes: Partial<SetUpAnswers>): BenchSetUp => {
  const parsed = parseSetUp(withAnswers(changes));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
  return parsed.value.setUp;
};

describe('parseSetUp(answers)', () => {
  test('with the defaults of a gauge in mmHg', () => {
    expect(parseSetUp(answers)).toEqual({
      ok: true,
      value: {
        generation: 'fixed-reference',
        unit: 'mmHg',
        setUp: {
          carburettors: 4,
          screws: [
            [1, 0, 0, 0],
            [0, 0, 1, 0],
            [0, 0, 0, 1],
          ].map((moves) => ({ moves })),
          tolerancePa: 10 * mmHg,
          gauge: { resolutionPa: 5 * mmHg, flutterPa: 3 * mmHg },
          targetRpm: 2100,
          fixed: 2,
          opens: ['unknown', 'unknown', 'unknown'],
        },
      },
    });
  });

  test('reads every field: fractions, decimal commas, units of their own', () => {
    const setUp = setUpOf({
      carburettors: '3',
      fixed: '1',
      resolution: '0,5 cmHg',
      flutter: '2 1/2',
      tolerance: '1 kPa',
      rpm: '',
      ambient: '700',
      lockShift: '1/50',
      confidence: '90',
      effect: '18000',
      opens: 'differ',
      opensEach: ['clockwise'],
      thread: [
        { closing: '1 1/2', opening: '0,75' },
        { closing: '', opening: ' ' },
      ],
    });
    expect(setUp).toMatchObject({
      carburettors: 3,
      fixed: 1,
      lockShiftTurns: 0.02,
      confidence: 0.9,
      effectPaPerTurn: 18_000,
    });
    expect(setUp.screws).toEqual([
      { moves: [0, 1, 0], turnsLeft: { closing: 1.5, opening: 0.75 } },
      { moves: [0, 0, 1] },
    ]);
    expect(setUp.opens).toEqual(['clockwise', 'unknown']);
    expect(setUp.gauge.resolutionPa).toBeCloseTo(5 * mmHg, 9);
    expect(setUp.gauge.flutterPa).toBeCloseTo(2.5 * mmHg, 9);
    expect(setUp.tolerancePa).toBe(1000);
    expect(setUp.ambientPa).toBeCloseTo(700 * mmHg, 9);
    expect(setUp).not.toHaveProperty('targetRpm');
  });

  test('the fixed carburettor counts only where a generation may have one', () => {
    expect(setUpOf({ generation: 'all-adjustable', fixed: 'x' })).not.toHaveProperty('fixed');
    expect(setUpOf({ generation: 'separate-cables', fixed: '9' }).screws).toHaveLength(4);
    expect(setUpOf({ generation: 'bypass-screws', fixed: '' }).screws).toHaveLength(4);
    expect(setUpOf({ generation: 'bypass-screws', fixed: '3' }).screws).toHaveLength(3);
  });

  test('groups of paired screws: the usual ones, or those that were typed', () => {
    const paired = { generation: 'paired-screws' } as const;
    expect(setUpOf(paired).screws.map(({ moves }) => moves.join(''))).toEqual(['1000', '0001', '0011']);
    expect(setUpOf({ ...paired, groups: '1, 2; 1; 3' }).screws.map(({ moves }) => moves.join(''))).toEqual([
      '1100',
      '1000',
      '0010',
    ]);
  });

  test('takes the limits of the confidence themselves', () => {
    expect(setUpOf({ confidence: '50' }).confidence).toBe(0.5);
    expect(setUpOf({ confidence: '99.9' }).confidence).toBe(0.999);
  });
});

describe('parseSetUp(answers) puts a problem beside its field', () => {
  const number = [
    'resolution',
    'flutter',
    'tolerance',
    'rpm',
    'ambient',
    'lockShift',
    'confidence',
    'effect',
    'carburettors',
    'fixed',
  ] as const;
  const pressures = ['resolution', 'flutter', 'tolerance', 'ambient'] as const;

  test.each(number)('%s: words, NaN, 1e309, an ambiguous comma, one letter too many', (field) => {
    const kinds = ['many', 'NaN', '1e309', '1,234', '5x'].map((typed) =>
      problemsOf({ [field]: typed }).map(({ field: at, problem }) => [at, problem.kind]),
    );
    const unitKind = (pressures as readonly string[]).includes(field) ? 'unknown-unit' : 'not-a-number';
    expect(kinds).toEqual([
      [[field, 'not-a-number']],
      [[field, 'not-a-number']],
      [[field, 'beyond-counting']],
      [[field, 'ambiguous-number']],
      [[field, unitKind]],
    ]);
  });

  test.each(['resolution', 'flutter', 'tolerance', 'carburettors', 'fixed'] as const)(
    '%s: empty',
    (field) => {
      expect(problemsOf({ [field]: ' ' })).toMatchObject([{ field, problem: { kind: 'empty' } }]);
    },
  );

  test.each(['rpm', 'ambient', 'lockShift', 'confidence', 'effect'] as const)('%s may be empty', (field) => {
    expect(problemsOf({ [field]: ' ' })).toEqual([]);
  });

  test.each<[keyof SetUpAnswers, string, object]>([
    ['resolution', '0', { above: 0 }],
    ['resolution', '-5', { above: 0 }],
    ['flutter', '-1', { min: 0 }],
    ['tolerance', '0', { above: 0 }],
    ['tolerance', '-10', { above: 0 }],
    ['rpm', '299', { min: 300, max: 20_000 }],
    ['rpm', '-2100', { min: 300, max: 20_000 }],
    ['rpm', '1e6', { min: 300, max: 20_000 }],
    ['ambient', '29 kPa', { min: 30_000, max: 120_000 }],
    ['ambient', '1000', { min: 30_000, max: 120_000 }],
    ['lockShift', '-0.1', { min: 0, max: 1 }],
    ['lockShift', '2', { min: 0, max: 1 }],
    ['confidence', '49', { min: 50, max: 99.9 }],
    ['confidence', '100', { min: 50, max: 99.9 }],
    ['effect', '0', { above: 0 }],
    ['effect', '-3', { above: 0 }],
  ])('%s: %s is outside its limit', (field, typed, limit) => {
    expect(problemsOf({ [field]: typed })).toMatchObject([
      { field, problem: { kind: 'out-of-range', limit } },
    ]);
  });

  test.each(['0', '1', '9', '-4', '2.5', '1e9'])('carburettors: %s', (typed) => {
    expect(problemsOf({ carburettors: typed })).toMatchObject([
      {
        field: 'carburettors',
        problem: { kind: 'carburettor-count', value: Number(typed), limit: { min: 2, max: 8 } },
      },
    ]);
  });

  test.each(['0', '5', '-1', '1.5'])('fixed: %s of 4', (typed) => {
    expect(problemsOf({ fixed: typed })).toMatchObject([
      { field: 'fixed', problem: { kind: 'index', value: Number(typed), limit: { min: 1, max: 4 } } },
    ]);
  });

  test.each(['resolution', 'flutter', 'tolerance'] as const)(
    '%s: larger than all the air there is',
    (field) => {
      expect(problemsOf({ [field]: '770' })).toMatchObject([
        { field, problem: { kind: 'depression-beyond-ambient', limit: { below: 101_325 } } },
      ]);
      expect(problemsOf({ [field]: '759' })).toEqual([]);
      expect(problemsOf({ [field]: '600', ambient: '590' })).toMatchObject([{ field }]);
    },
  );

  test('unit: one that is not known, with those that are', () => {
    const [first, ...others] = problemsOf({ unit: 'furlong' });
    expect(others).toEqual([]);
    expect(first).toMatchObject({ field: 'unit', problem: { kind: 'unknown-unit', unit: 'furlong' } });
    expect(describeProblem(first!.problem)).toContain('mmHg');
  });

  test('generation: none, or one that is not known', () => {
    expect(problemsOf({ generation: '' })).toMatchObject([
      { field: 'generation', problem: { kind: 'empty' } },
    ]);
    expect(problemsOf({ generation: 'constructor' })).toMatchObject([
      { field: 'generation', problem: { kind: 'unknown-choice', known: generations } },
    ]);
  });

  test('thread: one side told alone, a negative one, too much, words', () => {
    const threadProblems = (closing: string, opening: string) =>
      problemsOf({
        thread: [
          { closing: '', opening: '' },
          { closing, opening },
        ],
      }).map(({ field, problem }) => [field, problem.kind]);
    expect(threadProblems('1', '')).toEqual([['thread.1.opening', 'empty']]);
    expect(threadProblems('-1', '1')).toEqual([['thread.1.closing', 'out-of-range']]);
    expect(threadProblems('1', '101')).toEqual([['thread.1.opening', 'out-of-range']]);
    expect(threadProblems('some', '1e309')).toEqual([
      ['thread.1.closing', 'not-a-number'],
      ['thread.1.opening', 'beyond-counting'],
    ]);
    expect(threadProblems('0', '100')).toEqual([]);
  });

  test('groups: a carburettor that is not there, an empty group, none for a number without a usual layout', () => {
    const groupProblems = (groups: string, carburettors = '4') =>
      problemsOf({ generation: 'paired-screws', groups, carburettors }).map(({ field, problem }) => [
        field,
        problem.kind,
      ]);
    expect(groupProblems('1; 9')).toEqual([['groups', 'index']]);
    expect(groupProblems('1;;2')).toEqual([['groups', 'column-length']]);
    expect(groupProblems('left')).toEqual([['groups', 'column-length']]);
    expect(groupProblems('', '5')).toEqual([['groups', 'groups-needed']]);
  });

  test('all fields at once', () => {
    const fields = problemsOf({ carburettors: 'x', tolerance: '', flutter: '-1', rpm: '1' }).map(
      ({ field }) => field,
    );
    expect(fields).toEqual(['carburettors', 'tolerance', 'flutter', 'rpm']);
  });

  test('every one of these problems has words', () => {
    for (const changes of [
      { tolerance: '' },
      { tolerance: '770' },
      { fixed: '9' },
      { unit: 'x' },
      { rpm: '1' },
    ])
      for (const { problem } of problemsOf(changes))
        expect(describeProblem(problem)).toMatch(/^[A-Z“].{20,}\.$/u);
  });
});

describe('defaultAnswers(unit)', () => {
  test.each(pressureUnits.map(({ id }) => id))('%s: one significant digit, good for a session', (unit) => {
    const defaults = defaultAnswers(unit);
    const parsed = parseSetUp({ ...defaults, generation: 'all-adjustable' });
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
    const { tolerancePa, gauge } = parsed.value.setUp;
    // One digit of 1.5 is off by a third at the worst.
    for (const [pascals, asked] of [
      [tolerancePa, 10],
      [gauge.resolutionPa, 5],
      [gauge.flutterPa, 3],
    ] as const)
      expect(Math.abs(pascals / mmHg / asked - 1)).toBeLessThan(0.34);
    for (const typed of [defaults.tolerance, defaults.resolution, defaults.flutter])
      expect(typed.replace(/e.*/u, '').replace(/[^1-9]/gu, '')).toHaveLength(1);
  });
});

describe('screwsOfAnswers(answers)', () => {
  test('has the columns of the set, and none while the answers do not say', () => {
    expect(screwsOfAnswers(answers)).toEqual([
      [1, 0, 0, 0],
      [0, 0, 1, 0],
      [0, 0, 0, 1],
    ]);
    expect(screwsOfAnswers(withAnswers({ generation: 'paired-screws', carburettors: '2' }))).toEqual([
      [1, 0],
    ]);
    expect(screwsOfAnswers(withAnswers({ generation: 'paired-screws', groups: '1 2; 4' }))).toEqual([
      [1, 1, 0, 0],
      [0, 0, 0, 1],
    ]);
    expect(screwsOfAnswers(withAnswers({ generation: 'bypass-screws', fixed: '' }))).toHaveLength(4);
    for (const changes of [
      { generation: '' },
      { carburettors: '' },
      { carburettors: '9' },
      { fixed: '' },
      { fixed: '7' },
    ])
      expect(screwsOfAnswers(withAnswers(changes))).toEqual([]);
  });
});

test('carburettorNumbers(answers) counts from 1, and none while their number cannot be', () => {
  expect(carburettorNumbers(withAnswers({ carburettors: '3' }))).toEqual([1, 2, 3]);
  for (const carburettors of ['', '1', '9', 'x'])
    expect(carburettorNumbers(withAnswers({ carburettors }))).toEqual([]);
});

test('typedIn(answers, field) is the text of a field, and nothing for one that is chosen one by one', () => {
  const typed = withAnswers({ tolerance: '10', thread: [{ closing: '1', opening: '2' }] });
  expect(typedIn(typed, 'tolerance')).toBe('10');
  expect(typedIn(typed, 'thread.0.closing')).toBe('1');
  expect(typedIn(typed, 'thread.0.opening')).toBe('2');
  expect(typedIn(typed, 'thread.1.opening')).toBeUndefined();
  expect(typedIn(typed, 'thread')).toBeUndefined();
  expect(typedIn(typed, 'opensEach')).toBeUndefined();
});

describe('answersOf(generation, unit, setUp)', () => {
  test('are answers that give the set-up again', () => {
    const given = withAnswers({
      opens: 'differ',
      opensEach: ['clockwise', 'unknown', 'anticlockwise'],
      confidence: '99.9',
      ambient: '675',
      lockShift: '0.03',
      effect: '18000',
      thread: [
        { closing: '1.5', opening: '0.25' },
        { closing: '', opening: '' },
        { closing: '0', opening: '2' },
      ],
    });
    const parsed = parseSetUp(given);
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
    expect(parseSetUp(answersOf('fixed-reference', 'mmHg', parsed.value.setUp))).toEqual(parsed);
  });

  test('leave empty what was not told', () => {
    const { rpm, ambient, lockShift, confidence, effect } = answersOf(
      'fixed-reference',
      'mmHg',
      setUpOf({ rpm: '' }),
    );
    expect({ rpm, ambient, lockShift, confidence, effect }).toEqual({
      rpm: '',
      ambient: '',
      lockShift: '',
      confidence: '',
      effect: '',
    });
  });

  test('write the groups of paired screws', () => {
    const paired = { generation: 'paired-screws' } as const;
    expect(answersOf('paired-screws', 'mmHg', setUpOf(paired)).groups).toBe('1; 4; 3 4');
  });
});
