import { describe, expect, test } from 'vitest';
import {
  accuracyClasses,
  bracketsOf,
  classLimitPercent,
  parseSeconds,
  parseSpan,
  permissibleError,
  pressureUnit,
  resolutionUncertainty,
  rootSumOfSquares,
  standardUncertaintyOf,
} from '../../src/calculators/index.ts';
import { parseChoice } from '../../src/calculators/parse-choice.ts';
import { agrees, readDataRows } from '../../truth/data-rows.ts';

describe('accuracy classes', () => {
  test.each(accuracyClasses)('class %s permits so many per cent of any span', (accuracyClass) => {
    expect(classLimitPercent(accuracyClass)).toBe(accuracyClass);
    expect(permissibleError(accuracyClass, 100)).toEqual({ ok: true, value: accuracyClass });
  });

  test('a class that the standard has not has no printed limit, but an error', () => {
    expect(classLimitPercent(1.5)).toBeNull();
    expect(permissibleError(100, 2)).toEqual({ ok: true, value: 2 });
  });

  test('the published example', () => {
    const [row] = readDataRows('7-measurement-practice.csv', 59).filter(({ quantity }) =>
      quantity.includes('published example'),
    );
    const error = permissibleError(1.6, 10);
    expect(row && error.ok && agrees(error.value, row)).toBe(true);
  });

  test.each([
    [0, 1, 'accuracyClass'],
    [101, 1, 'accuracyClass'],
    [1, 0, 'span'],
    [NaN, 1, 'accuracyClass'],
    [1, Infinity, 'span'],
  ])('class %s of span %s is refused', (accuracyClass, span, field) => {
    expect(permissibleError(accuracyClass, span)).toMatchObject({ ok: false, problem: { field } });
  });
});

test('a triangle is worth less than a rectangle of the same width, a sine more', () => {
  const [triangle, rectangle, sine] = (['triangular', 'rectangular', 'u-shaped'] as const).map((each) =>
    standardUncertaintyOf(each, 6),
  );
  expect([triangle, rectangle, sine]).toEqual([6 / Math.sqrt(6), 6 / Math.sqrt(3), 6 / Math.sqrt(2)]);
  // A step is a rectangle of half its width either way.
  expect(resolutionUncertainty(6)).toBeCloseTo(standardUncertaintyOf('rectangular', 3), 15);
});

test('independent parts add by their squares', () => {
  expect(rootSumOfSquares([3, 4])).toBe(5);
  expect(rootSumOfSquares([])).toBe(0);
});

describe('brackets', () => {
  test('A-B-A and A-B-B-A in one run or several', () => {
    expect(bracketsOf([180, 171, 183], 'aba')).toEqual({ ok: true, value: [{ a: 181.5, b: 171 }] });
    expect(bracketsOf([1, 2, 4, 5, 1, 1, 1, 1], 'abba')).toEqual({
      ok: true,
      value: [
        { a: 3, b: 3 },
        { a: 1, b: 1 },
      ],
    });
  });

  test.each([
    [[], 'aba'],
    [[1, 2, 3, 4], 'aba'],
    [[1, 2, 3], 'abba'],
  ] as const)('%j is no whole run of %s', (readings, order) => {
    const problem = { kind: 'bracket-length', field: 'readings', value: readings.length, order };
    expect(bracketsOf(readings, order)).toEqual({ ok: false, problem });
  });
});

test.each<[string, number]>([
  ['0.5', 0.5],
  ['1/2 s', 0.5],
  ['400 ms', 0.4],
  ['2 millisecond', 0.002],
  ['2 milliseconds', 0.002],
  ['0,5 sec.', 0.5],
  ...['s', 'secs', 'second', 'seconds', 'S'].map((unit) => [`2 ${unit}`, 2] as [string, number]),
  ...['min', 'minute', 'minutes', 'min.'].map((unit) => [`2 ${unit}`, 120] as [string, number]),
])('“%s” is %s seconds', (typed, seconds) => {
  expect(parseSeconds(typed)).toMatchObject({ ok: true, value: { seconds } });
});

test.each([
  ['', 'empty'],
  ['0.5 h', 'unknown-unit'],
  ['0.5 s.ec', 'unknown-unit'],
])('“%s” is no short time', (typed, kind) => {
  expect(parseSeconds(typed, 'damping')).toMatchObject({ ok: false, problem: { kind, field: 'damping' } });
});

test('a unit that is none of a short time is told with those that are', () => {
  expect(parseSeconds('2 h')).toMatchObject({ problem: { unit: 'h', known: ['s', 'ms', 'min'] } });
});

const bar = pressureUnit('bar');
test.each([
  ['1', 1e5],
  ['-1..0 bar', 1e5],
  ['0 to 100 kPa', 1e5],
  ['-1 bar … 0 kPa', 1e5],
  ['0..-100 kPa', 1e5],
  ['-1...+5', 6e5],
  ['0.5..1.5 bar', 1e5],
  [' 5 bar to 10 bar', 5e5],
  ['-760..0mmHg', 760 * 133.322387415],
])('“%s” is a span of %s Pa', (typed, pascals) => {
  const span = parseSpan(typed, bar, 'span1');
  expect(span.ok && Math.abs(span.value - pascals)).toBeLessThan(1e-9);
});

test.each([
  ['', 'empty'],
  ['0..0 bar', 'out-of-range'],
  ['-1 bar', 'out-of-range'],
  ['0..one', 'not-a-number'],
  ['zero..1', 'not-a-number'],
  ['0..1 furlong', 'unknown-unit'],
])('“%s” is no span: %s', (typed, kind) => {
  expect(parseSpan(typed, bar, 'span1')).toMatchObject({ ok: false, problem: { kind } });
});

test('a span of nothing is told with its limit', () => {
  expect(parseSpan('1..1', bar, 'span1')).toEqual({
    ok: false,
    problem: { kind: 'out-of-range', field: 'span1Pa', value: 0, limit: { above: 0 } },
  });
});

test('a choice is one of those that there are', () => {
  expect(parseChoice('b', ['a', 'b'], 'letter')).toEqual({ ok: true, value: 'b' });
  expect(parseChoice('c', ['a', 'b'], 'letter')).toMatchObject({
    problem: { kind: 'unknown-choice', field: 'letter', typed: 'c', known: ['a', 'b'] },
  });
});
