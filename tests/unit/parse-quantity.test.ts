import { describe, expect, it } from 'vitest';
import {
  findPressureUnit,
  parsePressure,
  parseQuantity,
  pressureUnit,
  pressureUnits,
  settleComma,
  unitTextOf,
  withoutUnit,
} from '../../src/calculators/index.ts';
import { spellingOf } from '../../src/calculators/unit-spelling.ts';

const family = { find: findPressureUnit, known: ['kPa', 'inHg'] };

const understood: readonly (readonly [string, number, string | null])[] = [
  ['12', 12, null], ['12 inHg', 12, 'inHg'], ['12inHg', 12, 'inHg'], ['12,5 cmHg', 12.5, 'cmHg'], ['-0.4 bar', -0.4, 'bar'],
  ['−0.4 bar', -0.4, 'bar'], ['9 1/2 inHg', 9.5, 'inHg'], ['9½″Hg', 9.5, 'inHg'], ['9 ½ "Hg', 9.5, 'inHg'], ['9-1/2 in. Hg', 9.5, 'inHg'],
  ['212\u202fmmHg', 212, 'mmHg'], ['212\u00a0mmHg', 212, 'mmHg'], ['1\u2009234,5\u2009Pa', 1234.5, 'Pa'], ["5'H2O", 5, 'ftH2O'],
  ["1'013 hPa", 1013, 'hPa'], ['1e3 Pa', 1000, 'Pa'], ['1e-2bar', 0.01, 'bar'], ['9 inHg (60 °F)', 9, 'inHg-60F'], ['0.3 kgf/cm²', 0.3, 'at'],
  ['\t9\n inHg ', 9, 'inHg'], ['12 IN HG', 12, 'inHg'], ['5.e3 Pa', 5000, 'Pa'], [`9${' '.repeat(77)}Pa`, 9, 'Pa'],
  ['5,inHg', 5, 'inHg'], ['5. inHg', 5, 'inHg'], ['5inches of mercury', 5, 'inHg'], ['0,125 kPa', 0.125, 'kPa'], ['1234567890123456 Pa', 1234567890123456, 'Pa'],
]; // prettier-ignore

describe('parseQuantity(typed, units): what is understood', () => {
  for (const [typed, value, id] of understood)
    it(`“${typed.trim()}” is ${value} ${id}`, () => {
      const parsed = parseQuantity(typed, family);
      if (!parsed.ok) throw new Error(parsed.problem.kind);
      expect([parsed.value.number.value, parsed.value.unit?.id ?? null]).toEqual([value, id]);
    });
});

describe('parseQuantity(typed, units): a number alone', () => {
  function unitsLookedUp(typed: string): readonly string[] {
    const asked: string[] = [];
    const find = (spelling: string) => {
      asked.push(spelling);
      return findPressureUnit(spelling);
    };
    parseQuantity(typed, { ...family, find });
    return asked;
  }

  for (const typed of ['12', '12.', '12,5', ' 9 1/2 ', '1,234', ''])
    it(`of “${typed}” no unit is looked up, which would make the table of all spellings`, () =>
      expect(unitsLookedUp(typed)).toEqual([]));

  it('with a unit behind it, that unit is looked up', () =>
    expect(unitsLookedUp('12,5 inHg')).toEqual(['inHg']));
});

const refused: readonly (readonly [string, string])[] = [
  ['', 'empty'], ['\u2009', 'empty'], ['inHg', 'number-missing'], [' kPa ', 'number-missing'], ['NaN', 'not-a-number'], ['NaN inHg', 'not-a-number'],
  ['Infinity', 'not-a-number'], ['1e309 Pa', 'beyond-counting'], ['0x10', 'unknown-unit'], ['--5 kPa', 'not-a-number'], ['5/0 inHg', 'zero-denominator'],
  ['12 13', 'not-a-number'], ['12 13 inHg', 'not-a-number'], ['12 furlongs', 'unknown-unit'], ['12 inHg 13', 'unknown-unit'],
  ['12 Mbar', 'unknown-unit'], ['12 mPa', 'unknown-unit'], ['1,234 inHg', 'ambiguous-number'], ['- inHg', 'not-a-number'], ['12 %', 'unknown-unit'], ['5 .inHg', 'not-a-number'],
  ['<b>9</b>', 'not-a-number'], ['5\'6"', 'unknown-unit'], [`9 ${'x'.repeat(200)}`, 'too-long'],
]; // prettier-ignore

describe('parseQuantity(typed, units): what is refused, as a problem that quotes all that was typed', () => {
  for (const [typed, kind] of refused)
    it(`“${typed.slice(0, 20)}” is ${kind}`, () => {
      const parsed = parseQuantity(typed, family, 'reading');
      expect(parsed).toMatchObject({ ok: false, problem: { kind, field: 'reading' } });
      if (!parsed.ok && 'typed' in parsed.problem) expect(parsed.problem.typed).toBe(typed);
    });

  it('an unknown unit is named, with the known ones', () => {
    expect(parseQuantity('12 furlongs ', family)).toEqual({
      ok: false,
      problem: { kind: 'unknown-unit', typed: '12 furlongs ', unit: 'furlongs', known: ['kPa', 'inHg'] },
    });
  });

  it('too many characters are counted, with the most that are looked at', () => {
    expect(parseQuantity(`9${' '.repeat(78)}Pa`, family)).toStrictEqual({
      ok: false,
      problem: { kind: 'too-long', value: 81, limit: { max: 80 } },
    });
  });
});

describe('settleComma(typed, meant)', () => {
  it('removes the comma or makes it a point, and the result is understood', () => {
    expect(settleComma('-1,234 inHg', 'grouped')).toBe('-1234 inHg');
    expect(settleComma('-1,234 inHg', 'decimal')).toBe('-1.234 inHg');
    expect(parseQuantity(settleComma('1,234 inHg', 'grouped'), family)).toMatchObject({
      value: { number: { value: 1234 } },
    });
  });
});

describe('withoutUnit(typed)', () => {
  it('keeps the number as it was typed', () => {
    expect(['9 1/2 inHg', '12,5cmHg', ' 12 ', 'inHg', "5'H2O", '1e3 Pa'].map(withoutUnit)).toEqual([
      '9 1/2',
      '12,5',
      '12',
      '',
      '5',
      '1e3',
    ]);
  });
});

describe('unitTextOf(typed)', () => {
  it('is what stands behind the number', () => {
    expect([' 9 1/2  inHg ', '12,5cmHg', '12', '', " 5'H2O"].map(unitTextOf)).toEqual([
      'inHg',
      'cmHg',
      '',
      '',
      "'H2O",
    ]);
  });
});

describe('spellingOf(typed): one form for all spellings', () => {
  it.each([
    [' ″Hg', 'inhg'],
    ['’’H₂O', 'inh2o'],
    ['′H2O', 'fth2o'],
    ['lbf/in²', 'lbf/in2'],
    ['in. Hg (60 deg F)', 'inhg60f'],
    ['mmHg, conventional', 'mmhg'],
    ['㎩', 'pa'],
    ['˚C', 'c'],
    ['ºF', 'f'],
    // Only where they stand: an inch in front, a degree before C or F at the end, the word at the end.
    ['a"', 'a"'],
    ['a′', 'a′'],
    ['60degfoo', '60degfoo'],
    ['conventional', 'conventional'],
    ['mmhgconventionally', 'mmhgconventionally'],
  ])('%s is %s', (typed, spelling) => expect(spellingOf(typed)).toBe(spelling));
});

describe('parsePressure(typed, usualUnit)', () => {
  it('names the units that are in use where it does not know one', () => {
    const parsed = parsePressure('12 furlongs', pressureUnit('mmHg'));
    expect(parsed).toMatchObject({ problem: { unit: 'furlongs' } });
    const known = !parsed.ok && parsed.problem.kind === 'unknown-unit' ? parsed.problem.known : [];
    expect(known).toEqual(pressureUnits.filter((unit) => unit.rare !== true).map((unit) => unit.symbol));
    expect(known).toContain('mmHg');
    expect(known.length).toBeLessThan(pressureUnits.length);
  });

  it('takes the usual unit where none was typed, and says so', () => {
    expect(parsePressure('212', pressureUnit('mmHg'))).toMatchObject({
      value: { pascals: 212 * 133.322387415, unitTyped: false, unit: { id: 'mmHg' } },
    });
  });

  it('takes the typed unit before the usual one', () => {
    expect(parsePressure('9 1/2 inHg', pressureUnit('mmHg'))).toMatchObject({
      value: { unitTyped: true, unit: { id: 'inHg' } },
    });
  });
});
