import { describe, expect, it } from 'vitest';
import {
  formatExact,
  formatFixed,
  formatPressure,
  formatSignificant,
  formatTrimmed,
  numberInWords,
} from '../../src/calculators/index.ts';
import { pressureFigures } from '../../src/calculators/pressure-figures.ts';
import { withArticle } from '../../src/calculators/with-article.ts';

describe('formatFixed(value, decimals)', () => {
  it('rounds half away from zero, by the decimal digits', () => {
    expect(
      [1.005, 2.5, -2.5, 0.285].map((value, index) => formatFixed(value, index % 3 === 0 ? 2 : 0)),
    ).toEqual(['1.01', '3', '−3', '0.29']);
    expect(formatFixed(9.996, 2)).toBe('10.00');
    expect(formatFixed(0.5, 0)).toBe('1');
    expect(formatFixed(0.49, 0)).toBe('0');
  });

  it('shows no tail of a binary fraction', () => {
    expect(formatFixed(0.1 + 0.2, 16)).toBe('0.3000000000000000');
    expect(formatFixed(228.59999999999997, 1)).toBe('228.6');
  });

  it('writes the true minus sign, or the hyphen where a program reads it', () => {
    expect(formatFixed(-0.4, 1)).toBe('−0.4');
    expect(formatFixed(-0.4, 1, { minus: 'hyphen' })).toBe('-0.4');
  });

  it('gives zero no sign', () => {
    expect([-0, -0.04, 0.04].map((value) => formatFixed(value, 1))).toEqual(['0.0', '0.0', '0.0']);
  });

  it('writes the mark that the reader uses', () => {
    expect(formatFixed(-12.5, 2, { mark: 'comma' })).toBe('−12,50');
  });

  it('throws for what no computation may return', () => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])
      expect(() => formatFixed(value, 2)).toThrow(new RangeError(`not a finite number: ${value}`));
  });
});

describe('formatSignificant(value, digits)', () => {
  it('keeps the whole part and fills up the decimals', () => {
    expect(
      [30477.498, 4.420435, 0.00098765, 9.9996, 0, 304.77].map((value) => formatSignificant(value, 4)),
    ).toEqual(['30477', '4.420', '0.0009877', '10.00', '0.000', '304.8']);
  });

  it('counts very large and very small values in powers of ten', () => {
    expect(formatSignificant(-1.23e-12, 4)).toBe('−1.23 × 10⁻¹²');
    expect(formatSignificant(1e21, 4)).toBe('1 × 10²¹');
    expect(formatSignificant(-1.5e21, 4, { minus: 'hyphen' })).toBe('-1.5e21');
    expect(formatSignificant(-1.5e21, 4, { mark: 'comma' })).toBe('−1,5 × 10²¹');
    expect([1e15, 9.99e14, 1e-9, 9.9e-10].map((value) => formatSignificant(value, 2))).toEqual([
      '1 × 10¹⁵',
      '999000000000000',
      '0.0000000010',
      '9.9 × 10⁻¹⁰',
    ]);
    // More digits than a double has are not made up.
    expect(formatSignificant(1e16 / 3, 20)).toBe('3.33333333333333 × 10¹⁵');
  });
});

describe('formatTrimmed(value, decimals, leastDecimals)', () => {
  it('drops zeros that only fill up, keeps those that were rounded to', () => {
    expect(formatTrimmed(125, 1)).toBe('125');
    expect(formatTrimmed(4.4204, 3)).toBe('4.420');
    expect(formatTrimmed(21.2, 2, 2)).toBe('21.20');
    expect(formatTrimmed(5.5 * 0.1, 3)).toBe('0.55');
    expect(formatTrimmed(-12.5, 2, 0, { mark: 'comma' })).toBe('−12,5');
    expect(formatTrimmed(4.4204, 3, 0, { mark: 'comma' })).toBe('4,420');
    expect(formatTrimmed(7, 1, 3)).toBe('7.0');
  });
});

describe('formatExact(value)', () => {
  it('leaves no nought behind that only fills up', () => {
    expect(formatExact(28.05348413596)).toBe('28.053484136');
    expect(formatExact(1 / 3 + 1e-9)).toBe('0.333333334333');
    expect([1000, 1000.5, 2e12, 2e20].map((value) => formatExact(value))).toEqual([
      '1000',
      '1000.5',
      '2000000000000',
      '2 × 10²⁰',
    ]);
    expect(formatExact(-0.5, { mark: 'comma', minus: 'hyphen' })).toBe('-0,5');
  });

  it('writes as few digits as the value has', () => {
    expect([0.55, 5.5 * 0.1, 101.325, 9, -0.4, 0].map((value) => formatExact(value))).toEqual([
      '0.55',
      '0.55',
      '101.325',
      '9',
      '−0.4',
      '0',
    ]);
  });
});

describe('formatPressure(pascals, unitId)', () => {
  it('gives number and symbol, four significant digits, with a no-break space', () => {
    expect(formatPressure(101325, 'inHg')).toBe('29.92\u00a0inHg');
    expect(formatPressure(101325, 'kPa', 6)).toBe('101.325\u00a0kPa');
    expect(formatPressure(101325, 'kPa', 4, { mark: 'comma' })).toBe('101,3\u00a0kPa');
    expect(formatPressure(1e-7, 'bar')).toBe('1 × 10⁻¹²\u00a0bar');
    expect(formatPressure(35 * 3386.388640341, 'inHg')).toBe('35\u00a0inHg');
  });
});

describe('numberInWords(value)', () => {
  it('says whole numbers below a million', () => {
    expect([20, 99, 100, 1100, 1101, -999999].map(numberInWords)).toEqual([
      'twenty',
      'ninety-nine',
      'one hundred',
      'one thousand one hundred',
      'one thousand one hundred and one',
      'minus nine hundred and ninety-nine thousand nine hundred and ninety-nine',
    ]);
    expect([1234, 1000, 1001, 12345, 0, -21, 100110, 40].map(numberInWords)).toEqual([
      'one thousand two hundred and thirty-four',
      'one thousand',
      'one thousand and one',
      'twelve thousand three hundred and forty-five',
      'zero',
      'minus twenty-one',
      'one hundred thousand one hundred and ten',
      'forty',
    ]);
  });

  it('throws for anything else', () => {
    for (const value of [1e6, -1e6, 0.5, Number.NaN])
      expect(() => numberInWords(value)).toThrow(new RangeError(`no words for ${value}`));
  });
});

describe('pressureFigures(unitId, decimals, mark)', () => {
  const mmHg = 133.322387415;
  const { number, withUnit, range, apart } = pressureFigures('mmHg', 0, 'point');

  it('writes a pressure, with its unit, with its doubt', () => {
    expect(number(212.6 * mmHg)).toBe('213');
    expect(withUnit(213 * mmHg)).toBe('213\u00a0mmHg');
    expect(range(213 * mmHg, 4 * mmHg)).toBe('213\u00a0±\u00a04\u00a0mmHg');
    expect(pressureFigures('kPa', 1, 'comma').withUnit(28_317)).toBe('28,3\u00a0kPa');
  });

  it('tells a difference by a word, and says level where it rounds to nothing', () => {
    expect(apart(37 * mmHg, 6 * mmHg, 'carburettor 2')).toBe(
      '37\u00a0±\u00a06\u00a0mmHg higher than carburettor 2',
    );
    expect(apart(-37 * mmHg, 6 * mmHg, 'carburettor 2')).toBe(
      '37\u00a0±\u00a06\u00a0mmHg lower than carburettor 2',
    );
    expect(apart(-0.4 * mmHg, 6 * mmHg, 'carburettor 2')).toBe(
      'level with carburettor 2, ±\u00a06\u00a0mmHg',
    );
  });
});

it('withArticle(name) sets an before the sound of a vowel that is written as one', () => {
  expect(['length', 'engine speed', 'altitude', 'torque'].map(withArticle)).toEqual([
    'a length',
    'an engine speed',
    'an altitude',
    'a torque',
  ]);
});
