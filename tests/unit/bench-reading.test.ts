import { describe, expect, test } from 'vitest';
import { exampleSessions } from '../../src/calculators/example-sessions.ts';
import {
  parseReading,
  parseSpeed,
  parseTurns,
  type Problem,
  type Result,
} from '../../src/calculators/index.ts';
import { mmHg } from '../engine/invented.ts';
import { tolerances } from '../tolerances.ts';

const { setUp } = exampleSessions['fixed-reference'];

const valueOf = <Value>(result: Result<Value>): Value => {
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value;
};
const kindOf = (result: Result<unknown>): Problem['kind'] | 'none' =>
  result.ok ? 'none' : result.problem.kind;

describe('parseReading(typed, unit, setUp)', () => {
  // Conventional mercury, 133.322387415 Pa a millimetre; the inch is 25.4 mm (NIST SP 811).
  test.each([
    ['212', 'mmHg', 212 * mmHg],
    ['9 1/2 inHg', 'mmHg', 9.5 * 25.4 * mmHg],
    ['12,5 cmHg', 'mmHg', 125 * mmHg],
    ['0', 'mmHg', 0],
    ['28', 'kPa', 28_000],
    ['280 mbar', 'inHg', 28_000],
    ['  7,5 ', 'inHg', 7.5 * 25.4 * mmHg],
  ])('%s on a gauge in %s', (typed, unit, pascals) => {
    expect(Math.abs(valueOf(parseReading(typed, unit, setUp)) - pascals)).toBeLessThanOrEqual(
      tolerances.differenceOfPressures.absolute,
    );
  });

  test.each([
    ['', 'empty'],
    ['   ', 'empty'],
    ['NaN', 'not-a-number'],
    ['1e309', 'beyond-counting'],
    ['1,234', 'ambiguous-number'],
    ['212 furlong', 'unknown-unit'],
    ['inHg', 'number-missing'],
    ['1/0', 'zero-denominator'],
    ['9'.repeat(81), 'too-long'],
    ['-212', 'negative-depression'],
    ['-0.4 bar', 'negative-depression'],
    ['760', 'depression-beyond-ambient'],
    ['1e6', 'depression-beyond-ambient'],
  ])('%s: %s', (typed, kind) => {
    const result = parseReading(typed, 'mmHg', setUp);
    expect(kindOf(result)).toBe(kind);
    expect(result).toMatchObject({ problem: { field: 'reading' } });
  });

  test('the ambient pressure of the set-up is the limit', () => {
    const high = { ...setUp, ambientPa: 70_000 };
    expect(kindOf(parseReading('70', 'kPa', high))).toBe('depression-beyond-ambient');
    expect(kindOf(parseReading('69.9', 'kPa', high))).toBe('none');
    expect(kindOf(parseReading('101.3', 'kPa', setUp))).toBe('none');
    expect(kindOf(parseReading('101.325', 'kPa', setUp))).toBe('depression-beyond-ambient');
  });
});

describe('parseTurns(typed)', () => {
  test.each([
    ['1/4', 0.25],
    ['0.2', 0.2],
    ['0,2', 0.2],
    ['1 1/4', 1.25],
    ['1 1/4 turns', 1.25],
    ['1/8 turn', 0.125],
    ['7 min', 7 / 60],
    ['7min', 7 / 60],
    ['15 minutes', 0.25],
    ['15 Minute.', 0.25],
    ['7 min. ', 7 / 60],
    ['2 turns ', 2],
    ['0', 0],
    ['50', 50],
    ['3000 min', 50],
  ])('%s is %d', (typed, turns) => {
    expect(Math.abs(valueOf(parseTurns(typed)) - turns)).toBeLessThanOrEqual(tolerances.turns.absolute);
  });

  test.each([
    ['', 'empty'],
    ['min', 'empty'],
    ['a bit', 'not-a-number'],
    ['min 7', 'not-a-number'],
    ['7 minx', 'not-a-number'],
    ['turns 2', 'not-a-number'],
    ['2 turnsx', 'not-a-number'],
    ['NaN', 'not-a-number'],
    ['1e309', 'beyond-counting'],
    ['1,250', 'ambiguous-number'],
    ['1/0', 'zero-denominator'],
    ['-1/4', 'out-of-range'],
    ['51', 'out-of-range'],
    ['3001 min', 'out-of-range'],
  ])('%s: %s', (typed, kind) => {
    expect(parseTurns(typed)).toMatchObject({ problem: { kind, field: 'turns' } });
  });

  test('a problem quotes all that was typed, and names the limit', () => {
    expect(parseTurns('some min')).toMatchObject({ problem: { typed: 'some min' } });
    expect(parseTurns('90')).toMatchObject({ problem: { value: 90, limit: { min: 0, max: 50 } } });
  });
});

describe('parseSpeed(typed)', () => {
  test.each([
    ['2100', 2100],
    ['2100 rpm', 2100],
    ['2100RPM ', 2100],
    ['2100 r/min', 2100],
    ['2100 1/min', 2100],
    ['2 100', 2100],
    ['100', 100],
    ['20000', 20_000],
  ])('%s is %d', (typed, rpm) => {
    expect(valueOf(parseSpeed(typed))).toBe(rpm);
  });

  test('nothing typed: no speed was read', () => {
    expect(parseSpeed('')).toEqual({ ok: true, value: undefined });
    expect(parseSpeed('  ')).toEqual({ ok: true, value: undefined });
  });

  test.each([
    ['2,100', 'ambiguous-number'],
    ['fast', 'not-a-number'],
    ['rpm 2100', 'not-a-number'],
    ['2100 rpmx', 'not-a-number'],
    ['1e309', 'beyond-counting'],
    ['-2100', 'out-of-range'],
    ['0', 'out-of-range'],
    ['99', 'out-of-range'],
    ['20001', 'out-of-range'],
    ['rpm', 'empty'],
  ])('%s: %s', (typed, kind) => {
    const result = parseSpeed(typed);
    expect(kindOf(result)).toBe(kind);
    expect(result).toMatchObject({ problem: { field: 'rpm' } });
  });

  test('a problem quotes all that was typed, and names the limit', () => {
    expect(parseSpeed('fast rpm')).toMatchObject({ problem: { typed: 'fast rpm' } });
    expect(parseSpeed('99 rpm')).toMatchObject({ problem: { value: 99, limit: { min: 100, max: 20_000 } } });
  });
});
