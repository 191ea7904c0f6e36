import { describe, expect, it } from 'vitest';
import { parseNumber } from '../../src/calculators/index.ts';

const valueOf = (typed: string): number => {
  const parsed = parseNumber(typed);
  if (!parsed.ok) throw new Error(`${typed}: ${parsed.problem.kind}`);
  return parsed.value.value;
};

const understood: readonly (readonly [string, number])[] = [
  ['12', 12], ['+5', 5], ['-0.4', -0.4], ['−0.4', -0.4], ['–0.4', -0.4], ['- 5', -5], ['  7  ', 7], ['007', 7],
  ['12,5', 12.5], ['12.5', 12.5], ['.5', 0.5], [',5', 0.5], ['5.', 5], ['5,', 5],
  ['9 1/2', 9.5], ['9½', 9.5], ['9 ½', 9.5], ['½', 0.5], ['-½', -0.5], ['1/2', 0.5], ['9-1/2', 9.5], ['-9-1/2', -9.5],
  ['9 1⁄2', 9.5], ['−9 3/4', -9.75], ['⅞', 0.875], ['10 0/4', 10], ['22/7', 22 / 7],
  ['1 234,5', 1234.5], ['1\u2009234,5', 1234.5], ['1\u202f234,5', 1234.5], ['1\u00a0234.5', 1234.5], ['1\u2007234', 1234], ['12 345 678', 12345678],
  ["1'234", 1234], ['1’234.5', 1234.5],
  ['1,234.5', 1234.5], ['1.234,5', 1234.5], ['1,234,567', 1234567], ['1.234.567', 1234567], ['1,234,567.8', 1234567.8],
  ['1.234', 1.234], ['0,125', 0.125], ['1234,567', 1234.567], ['1 234,567', 1234.567], ['-1,2345', -1.2345],
  ['1e3', 1000], ['1.5E-3', 0.0015], ['1,5e+2', 150], ['1e300', 1e300], ['1e-300', 1e-300], ['-0', 0], ['0e-400', 0],
  ['5.e3', 5000], ['9\n1/2', 9.5], [`${' '.repeat(79)}5`, 5],
]; // prettier-ignore

describe('parseNumber(typed): what is understood', () => {
  for (const [typed, value] of understood)
    it(`“${typed.trim()}” is ${value}`, () => expect(Object.is(valueOf(typed), value)).toBe(true));
});

const refused: readonly (readonly [string, string])[] = [
  ['', 'empty'], ['   ', 'empty'], ['\u202f', 'empty'],
  ['NaN', 'not-a-number'], ['Infinity', 'not-a-number'], ['-Infinity', 'not-a-number'], ['0x10', 'not-a-number'],
  ['--5', 'not-a-number'], ['+-5', 'not-a-number'], ['12 13', 'not-a-number'], ['3–4', 'not-a-number'], ['3-4', 'not-a-number'],
  ['1_000', 'not-a-number'], ['1.2.3', 'not-a-number'], ['1,23.5', 'not-a-number'], ['1.234,5,6', 'not-a-number'],
  ['0,123.5', 'not-a-number'], ['1 23', 'not-a-number'], ["1'23", 'not-a-number'], ["1 234'567", 'not-a-number'],
  ['12.5 1/2', 'not-a-number'], ['9 12/5', 'not-a-number'], ['9 5/5', 'not-a-number'], ['1\n234', 'not-a-number'], ['x1', 'not-a-number'],
  ['1.234.567,8,9', 'not-a-number'], ['1,234,56', 'not-a-number'], ['1.234.56', 'not-a-number'], ['0,123,456', 'not-a-number'], ['0.123.456', 'not-a-number'], ['9 - - 1/2', 'not-a-number'], ['1/2/3', 'not-a-number'], ['½½', 'not-a-number'], ['1⅞6', 'not-a-number'], ['½7', 'not-a-number'],
  ['.', 'not-a-number'], [',', 'not-a-number'], ['-', 'not-a-number'], ['e3', 'not-a-number'], ['5e', 'not-a-number'], ['1e3.5', 'not-a-number'],
  ['twelve', 'not-a-number'], ['١٢', 'not-a-number'], ['[object Object]', 'not-a-number'],
  ['1,234', 'ambiguous-number'], ['-12,345', 'ambiguous-number'], ['1,234e3', 'ambiguous-number'], ['999,000', 'ambiguous-number'],
  ['5/0', 'zero-denominator'], ['9 1/0', 'zero-denominator'], ['0/0', 'zero-denominator'],
  ['1e309', 'beyond-counting'], ['-1e309', 'beyond-counting'], ['1e-400', 'beyond-counting'], ['1e99999999999', 'beyond-counting'],
  ['9'.repeat(81), 'too-long'], [' '.repeat(1000), 'too-long'],
]; // prettier-ignore

describe('parseNumber(typed): what is refused, as a problem', () => {
  for (const [typed, kind] of refused)
    it(`“${typed.slice(0, 20)}” is ${kind}`, () => {
      const parsed = parseNumber(typed, 'flutter');
      expect(parsed).toMatchObject({ ok: false, problem: { kind, field: 'flutter' } });
      if (!parsed.ok && 'typed' in parsed.problem) expect(parsed.problem.typed).toBe(typed);
    });

  it('a million characters are refused at once', () => {
    expect(parseNumber('1 '.repeat(500_000))).toStrictEqual({
      ok: false,
      problem: { kind: 'too-long', value: 1_000_000, limit: { max: 80 } },
    });
  });
});

describe('parseNumber(typed): an ambiguous comma', () => {
  it('gives both readings, the grouped one first', () => {
    expect(parseNumber('-1,234')).toEqual({
      ok: false,
      problem: { kind: 'ambiguous-number', typed: '-1,234', readings: [-1234, -1.234] },
    });
  });
});

describe('parseNumber(typed): digits as typed', () => {
  const digits: readonly (readonly [string, number, number, string | null])[] = [
    ['12', 0, 2, null], ['12.50', 2, 4, 'point'], ['0,0120', 4, 3, 'comma'], ['200', 0, 3, null], ['0', 0, 1, null], ['0.00', 2, 1, 'point'],
    ['9 1/2', 1, 2, null], ['1/3', 4, 4, null], ['1/8', 3, 3, null], ['1.5e3', 0, 2, 'point'], ['1.5e-3', 4, 2, 'point'], ['1 234,5', 1, 5, 'comma'],
    ['1,234.5', 1, 5, 'point'], ['1.234.567', 0, 7, null], ['1,234,567', 0, 7, null], ['1,234,567.', 0, 7, 'point'],
    ['1.234,56', 2, 6, 'comma'], ['1.234.567,89', 2, 9, 'comma'], ['1 234', 0, 4, null], [',5', 1, 1, 'comma'], ['1e-20', 15, 1, null],
    ['+200', 0, 3, null], ['+0.012', 3, 2, 'point'],
  ]; // prettier-ignore
  for (const [typed, decimals, significantDigits, mark] of digits)
    it(`“${typed}”: ${decimals} decimals, ${significantDigits} significant, mark ${mark}`, () => {
      expect(parseNumber(typed)).toMatchObject({ ok: true, value: { decimals, significantDigits, mark } });
    });
});
