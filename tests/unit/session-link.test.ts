import { describe, expect, test } from 'vitest';
import {
  benchSessionExample,
  defaultAnswers,
  parseReadings,
  parseSessionLink,
  parseSetUp,
  writeSessionLink,
} from '../../src/calculators/index.ts';
import type { SessionLink, SetUpAnswers } from '../../src/calculators/index.ts';
import { mmHg } from '../engine/invented.ts';

/** As the browser takes an address apart. */
const stateOf = (fragment: string): Record<string, string> =>
  Object.fromEntries(new URLSearchParams(fragment.replace(/^#/u, '')));

const linkOf = (fragment: string): SessionLink => {
  const link = parseSessionLink(stateOf(fragment));
  if (!link.ok) throw new Error(link.problem.kind);
  return link.value;
};

const base = defaultAnswers('mmHg');
const answers = (changes: Partial<SetUpAnswers>): SetUpAnswers => ({ ...base, ...changes });

const example = '#v=1&g=fixed-reference&n=4&fixed=2&r=212,248,251,187&u=mmHg&tol=10';

describe('parseSessionLink(state)', () => {
  test('reads the link of the handbook', () => {
    expect(linkOf(example)).toEqual({
      answers: answers({ generation: 'fixed-reference', carburettors: '4', fixed: '2', tolerance: '10' }),
      readings: '1: 212; 2: 248; 3: 251; 4: 187',
      unknownKeys: [],
    });
  });

  test('which makes a set-up and four readings', () => {
    const link = linkOf(example);
    const parsed = parseSetUp(link.answers);
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
    const readings = parseReadings(link.readings, parsed.value.unit, parsed.value.setUp);
    expect(parsed.value.setUp).toMatchObject({ carburettors: 4, fixed: 2 });
    expect(readings.ok && readings.value.map(({ depressionPa }) => Math.round(depressionPa / mmHg))).toEqual([
      212, 248, 251, 187,
    ]);
  });

  test('several readings of one carburettor are parted by strokes; a place may be empty', () => {
    expect(linkOf('r=212/214,248').readings).toBe('1: 212; 1: 214; 2: 248');
    expect(linkOf('r=212,,251').readings).toBe('1: 212; 3: 251');
    expect(linkOf('r=').readings).toBe('');
    expect(linkOf('r=212, , 248 ').readings).toBe('1: 212; 3: 248');
  });

  test('readings in another order name their carburettors; a speed stands behind an @', () => {
    expect(linkOf('r=2:248,1:212@2150,2:252').readings).toBe('2: 248; 1: 212 @ 2150; 2: 252');
    expect(linkOf('r=212@2150/214,248').readings).toBe('1: 212 @ 2150; 1: 214; 2: 248');
  });

  test('takes defaults for what is left out, in the gauge’s unit', () => {
    expect(linkOf('')).toEqual({ answers: base, readings: '', unknownKeys: [] });
    expect(linkOf('u=inHg').answers).toEqual(defaultAnswers('inHg'));
  });

  test('reads every key', () => {
    const link = linkOf(
      'v=1&g=paired-screws&n=4&m=1,4,3.4&u=kPa&res=0.5&fl=0.3&tol=1.5&amb=95&rpm=2400&lock=0.03&conf=90&eff=18000&o=c,a,u&t=1.5/0.25,/,0/2',
    );
    expect(link.unknownKeys).toEqual([]);
    expect(link.answers).toEqual({
      carburettors: '4',
      generation: 'paired-screws',
      fixed: '1',
      groups: '1; 4; 3 4',
      opens: 'differ',
      opensEach: ['clockwise', 'anticlockwise', 'unknown'],
      unit: 'kPa',
      resolution: '0.5',
      flutter: '0.3',
      tolerance: '1.5',
      rpm: '2400',
      thread: [
        { closing: '1.5', opening: '0.25' },
        { closing: '', opening: '' },
        { closing: '0', opening: '2' },
      ],
      ambient: '95',
      lockShift: '0.03',
      confidence: '90',
      effect: '18000',
    });
    expect(linkOf('o=c').answers.opens).toBe('clockwise');
    expect(linkOf('o=x').answers.opens).toBe('unknown');
    expect(linkOf('t=1.5').answers.thread).toEqual([{ closing: '1.5', opening: '' }]);
  });

  test('names unknown keys and ignores them', () => {
    const link = linkOf(`${example}&colour=red&constructor=x&__proto__=y&toString=z`);
    expect(link.unknownKeys).toEqual(['colour', 'constructor', '__proto__', 'toString']);
    expect(link.answers).toEqual(linkOf(example).answers);
    expect(Object.getPrototypeOf(link.answers)).toBe(Object.prototype);
  });

  test('keeps bad values as typed, for the form to answer', () => {
    const link = linkOf('n=nine&tol=-3&u=furlong&g=steam&o=constructor&conf=1e309');
    expect(link.answers).toMatchObject({
      carburettors: 'nine',
      tolerance: '-3',
      unit: 'furlong',
      generation: 'steam',
      opens: 'unknown',
      confidence: '1e309',
    });
    const parsed = parseSetUp(link.answers);
    expect(parsed.ok ? [] : parsed.problems.map(({ field }) => field).sort()).toEqual([
      'carburettors',
      'confidence',
      'generation',
      'tolerance',
      'unit',
    ]);
  });

  test.each(['2', '1.5', '99', '1e309'])('refuses the newer version %s', (version) => {
    expect(parseSessionLink({ ...stateOf(example), v: version })).toEqual({
      ok: false,
      problem: { kind: 'newer-version', field: 'v', value: Number(version), limit: { max: 1 } },
    });
  });
});

describe('writeSessionLink(answers, readings)', () => {
  const writtenText = (given: SetUpAnswers, readings = ''): string =>
    Object.entries(writeSessionLink(given, readings))
      .map(([key, value]) => `${key}=${value}`)
      .join('&');

  test('leaves defaults out', () => {
    expect(writtenText(answers({ generation: 'all-adjustable' }))).toBe('v=1&g=all-adjustable&n=4');
    expect(writtenText(answers({ tolerance: '10.0', rpm: ' 2100 ' }))).toBe('v=1&n=4');
    expect(writtenText(answers({ thread: [{ closing: '', opening: ' ' }] }))).toBe('v=1&n=4');
    expect(writtenText(answers({ generation: 'paired-screws' }))).toBe('v=1&g=paired-screws&n=4');
  });

  test('writes the example of the page', () => {
    expect(writtenText(benchSessionExample.answers, benchSessionExample.readings)).toBe(
      'v=1&g=all-adjustable&n=4&r=212,248,251,187&o=a&t=1.5/1.5,1.5/1.5,1.5/1.5,0.4/2',
    );
  });

  test('writes decimal points, in the gauge’s unit, whatever was typed', () => {
    expect(
      writtenText(
        answers({ tolerance: '1,5 cmHg', lockShift: '1/50', generation: 'fixed-reference', fixed: ' 3' }),
        '12,5 cmHg; 1: 214; 3: 248,5',
      ),
    ).toBe('v=1&g=fixed-reference&n=4&fixed=3&r=125/214,,248.5&tol=15&lock=0.02');
  });

  test('what is no number stays as it was typed, and a minus is a hyphen', () => {
    expect(
      writtenText(answers({ carburettors: ' nine ', rpm: '−3', flutter: ' few ', tolerance: '−2 cmHg' })),
    ).toBe('v=1&n=nine&fl=few&tol=-20&rpm=-3');
  });

  test('what was emptied stays empty: no target speed, no body left alone', () => {
    const emptied = answers({ generation: 'bypass-screws', fixed: '', rpm: '' });
    expect(writtenText(emptied)).toBe('v=1&g=bypass-screws&n=4&fixed=&rpm=');
    expect(linkOf(writtenText(emptied)).answers).toEqual(emptied);
  });

  test('one direction answered of several does not speak for the others', () => {
    const differ = answers({ opens: 'differ', opensEach: ['clockwise'] });
    expect(writtenText(differ)).toBe('v=1&n=4&o=c,u');
    expect(linkOf(writtenText(differ)).answers).toMatchObject({
      opens: 'differ',
      opensEach: ['clockwise', 'unknown'],
    });
  });

  test('an unknown unit stays as it was typed, and figures are taken in mmHg', () => {
    expect(writtenText(answers({ unit: 'furlong', tolerance: '12' }), '1: 212')).toBe(
      'v=1&n=4&r=212&u=furlong&tol=12',
    );
  });

  test('never makes two readings of one that is ambiguous', () => {
    const written = writeSessionLink(base, '1: 1,234; 2: 248; 3: 1/0');
    expect(written['r']).toBe(',248');
    expect(linkOf(`r=${written['r']}`).readings).toBe('2: 248');
  });

  test.each([
    ['2: 248, 1: 212 @ 2150 rpm, 2: 252', '2:248,1:212@2150,2:252'],
    ['1: 212 @ 2150; 1: 214; 3: 248', '212@2150/214,,248'],
    // No such carburettor on any set that can be told.
    ['9: 212; 0: 4; 2: 248', ',248'],
    ['8: 212', ',,,,,,,212'],
    // No speed of an engine: the reading stays with who typed it.
    ['1: 212 @ fast; 2: 248', ',248'],
  ])('%j is written as %s, and read again', (readings, written) => {
    expect(writeSessionLink(base, readings)['r']).toBe(written);
    expect(writeSessionLink(base, linkOf(`r=${written}`).readings)['r']).toBe(written);
  });

  test('leaves the fixed carburettor and the groups to the generations that have them', () => {
    expect(writtenText(answers({ generation: 'all-adjustable', fixed: '3', groups: '1; 2' }))).not.toMatch(
      /fixed|m=/u,
    );
    expect(writtenText(answers({ generation: 'paired-screws', groups: '1, 2; 1; 3' }))).toContain(
      'm=1.2,1,3',
    );
    expect(writtenText(answers({ generation: 'paired-screws', groups: '12; 3 x' }))).toContain('m=12,3');
  });
});
