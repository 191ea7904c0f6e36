import { describe, expect, it } from 'vitest';
import { describeProblem, describeReadings, formatPressure } from '../../src/calculators/index.ts';
import type { Problem } from '../../src/calculators/index.ts';

/** One problem of every kind with its sentence; the compiler asks for each. No-break spaces are written as spaces. */
const sentences: {
  readonly [Kind in Problem['kind']]: readonly [Omit<Extract<Problem, { kind: Kind }>, 'kind'>, string];
} = {
  empty: [{}, 'Give a number, such as 212 or 9 1/2; nothing is written here.'],
  'not-a-number': [{ typed: 'x' }, 'Give one number, such as 212, 12.5 or 9 1/2; you wrote “x”.'],
  'ambiguous-number': [
    { typed: '1,234e5', readings: [123_400_000, 123_400] },
    'The comma in “1,234e5” can be read two ways. Say which is meant: 123400000 (123400000) or 123400.',
  ],
  'unknown-unit': [
    { typed: '2 ell', unit: 'ell', known: ['mm', 'in', 'ft'] },
    '“ell” is not a unit that is known here. Give one of mm, in or ft.',
  ],
  'number-missing': [{ typed: 'mm' }, 'Give a number before the unit; you wrote “mm”.'],
  'zero-denominator': [
    { typed: '1/0' },
    'Nothing can be divided by 0: give a fraction such as 1/2; you wrote “1/0”.',
  ],
  'beyond-counting': [
    { typed: '1e999', limit: { min: 0.001, max: 1000 } },
    'Give a number of a size from 0.001 to 1000; you wrote “1e999”.',
  ],
  'too-long': [{ value: 81, limit: { max: 80 } }, 'Give at most 80 characters; there are 81.'],
  'not-finite': [{ field: 'pitchMm' }, 'Give a finite number; this one (pitchMm) is not.'],
  'out-of-range': [
    { field: 'pitchMm', value: 9, limit: { above: 0, max: 6 } },
    'Give a number above 0 and at most 6 mm; you gave 9 mm.',
  ],
  'carburettor-count': [
    { value: 9, limit: { min: 2, max: 8 } },
    'Give a number of carburettors from 2 to 8; you gave 9.',
  ],
  'column-length': [
    { field: 'moves', value: 2, limit: { min: 3, max: 3 } },
    'Give a number of entries of exactly 3, one for each carburettor; there are 2.',
  ],
  index: [
    { field: 'fixed', value: 5, limit: { min: 1, max: 4 } },
    'There is no number 5 here: give a whole number from 1 to 4.',
  ],
  'depression-beyond-ambient': [
    { depressionPa: 110_000, limit: { below: 100_000 } },
    'A depression cannot exceed the ambient pressure: give one below 100 kPa; you gave 110 kPa.',
  ],
  'negative-depression': [
    { depressionPa: -5000 },
    'A depression is counted downwards from the ambient pressure and cannot be below 0; you gave −5 kPa. A reading with a minus sign is a signed gauge pressure.',
  ],
  'absolute-below-zero': [
    { absolutePa: -5000 },
    'An absolute pressure is counted from perfect vacuum and cannot be below 0; you gave −5 kPa.',
  ],
  'gauge-below-vacuum': [
    { gaugePa: -110_000, limit: { min: -100_000 } },
    'This is below perfect vacuum: give a gauge pressure of at least −100 kPa (the ambient pressure with a minus sign); you gave −110 kPa.',
  ],
  'below-absolute-zero': [
    { typed: '-300 °C' },
    'Nothing is colder than absolute zero, −273.15 °C (−459.67 °F, 0 K); you wrote “-300 °C”.',
  ],
  'impossible-measure': [
    { typed: '-1', measure: 'engine speed', limit: { min: 0 } },
    'Give an engine speed of at least 0; you wrote “-1”.',
  ],
  'well-too-narrow': [
    { field: 'well', typed: '5 mm' },
    'Give a well that is wider than the tube; you wrote “5 mm”.',
  ],
  'measure-out-of-range': [
    { typed: '9 m', symbol: 'mm', limit: { min: 1, max: 2000 } },
    'Give one from 1 mm to 2000 mm; you wrote “9 m”.',
  ],
  'unknown-choice': [{ field: 'unit', typed: 'x', known: ['only'] }, 'Give only; you wrote “x”.'],
  'nut-unknown': [
    { typed: 'M7' },
    'The tables here hold no nut for M7. Measure the nut and give its height.',
  ],
  'unknown-thread': [
    { typed: 'M99', known: ['M5', 'M6'] },
    '“M99” is not a thread of the tables here. Give one such as M5 or M6, or measure the pitch.',
  ],
  'newer-version': [
    { field: 'v', value: 3, limit: { max: 2 } },
    'This was written by a newer version of this site (3; this page reads up to 2). Open it with a page that is up to date.',
  ],
  'no-screws': [{}, 'Give at least one balance screw; there is none.'],
  'no-readings': [{ field: 'carburettors.1' }, 'Give at least one reading of carburettor 2; there is none.'],
  'all-equal': [
    { field: 'swing' },
    'All readings are the same, so the finest step does not show. Damp the needle less, or give step and swing yourself.',
  ],
  'too-few-readings': [
    { field: 'repeats', value: 1, limit: { min: 5 } },
    'Give a number of readings of at least 5; there is 1.',
  ],
  'not-whole': [{ field: 'seed', typed: '1.5' }, 'Give a whole number; you wrote “1.5”.'],
  'bracket-length': [
    { field: 'readings', value: 5, order: 'aba' },
    'Give the readings in the order A, B, A: three, or six, or nine; there are 5.',
  ],
  'unequal-lists': [
    { field: 'readings', value: 3, expected: 4 },
    'Gauges that are read together have one reading each a round: give 4, as for gauge 1; there are 3.',
  ],
  'no-solution': [
    { at: 12.345, steps: 9 },
    'The sum came to no end at 12.3 minutes. Give less gas, or a shorter time.',
  ],
  'too-much-gas': [
    { ppm: 1e6, limit: { max: 100_000 } },
    'This would put more than 100000 ppm of carbon monoxide into the room, many times what kills; the engine itself would stop for want of oxygen before. Give less gas, a larger room or a shorter time.',
  ],
  'below-the-step': [
    { field: 'difference', value: 100, limit: { min: 1000 } },
    'No number of readings tells 0.1 kPa apart on this scale: give a difference of at least 1 kPa.',
  ],
  'too-many-readings': [
    { field: 'readings', value: 101, limit: { max: 100 } },
    'Give at most 100 readings; there are 101.',
  ],
  'impossible-correction': [
    { field: 'readings', carburettor: 3, depressionPa: -5000 },
    'Corrected for speed, a reading of carburettor 3 would be −5 kPa: no depression is below 0 or reaches the ambient pressure. Give what 100 rpm really change.',
  ],
  'fixed-needed': [{}, 'Say which carburettor has no adjuster.'],
  'groups-needed': [{ value: 5 }, 'Say which carburettors each screw moves: there is no usual layout for 5.'],
};

describe('describeProblem(problem)', () => {
  it.each(Object.entries(sentences))('%s', (kind, [problem, sentence]) => {
    expect(describeProblem({ kind, ...problem } as Problem).replaceAll('\u00a0', ' ')).toBe(sentence);
  });

  it('has other words where there is more or less to say', () => {
    expect(describeProblem({ kind: 'no-readings' })).toBe('Give at least one reading; there is none.');
    expect(describeProblem({ kind: 'too-few-readings', field: 'swing', value: 0, limit: { min: 2 } })).toBe(
      'Give a number of readings of at least 2; there are 0.',
    );
    expect(describeProblem({ kind: 'bracket-length', field: 'readings', value: 5, order: 'abba' })).toBe(
      'Give the readings in the order A, B, B, A: four, or eight, or twelve; there are 5.',
    );
  });
});

describe('describeProblem(problem, words)', () => {
  it('quotes what was typed and names the limit', () => {
    expect(
      describeProblem(
        { kind: 'out-of-range', field: 'depressionPa', value: -5, limit: { min: 0, max: 101325 } },
        { typed: '-5' },
      ),
    ).toBe('Give a number from 0 to 101.3\u00a0kPa; you wrote “-5”.');
  });

  it('writes limits in the reader’s unit', () => {
    const problem: Problem = {
      kind: 'depression-beyond-ambient',
      depressionPa: 35 * 3386.388640341,
      limit: { min: 0, max: 101325 },
    };
    expect(
      describeProblem(problem, { formatPressure: (pascals) => formatPressure(pascals, 'inHg') }).replaceAll(
        '\u00a0',
        ' ',
      ),
    ).toBe(
      'A depression cannot exceed the ambient pressure: give one from 0 to 29.92 inHg; you gave 35 inHg.',
    );
  });

  it('sets the name of the field in front where the sentence stands elsewhere', () => {
    expect(describeProblem({ kind: 'not-a-number', typed: '3–4' }, { label: 'Swing of the needle' })).toBe(
      'Swing of the needle: give one number, such as 212, 12.5 or 9 1/2; you wrote “3–4”.',
    );
  });

  it('cuts a long quotation and keeps it on one line', () => {
    const sentence = describeProblem({ kind: 'not-a-number', typed: `a\n${'b'.repeat(60)}` });
    expect(sentence).toContain(`“a ${'b'.repeat(38)}…”`);
    expect(describeProblem({ kind: 'not-a-number', typed: ' x \n y ' })).toContain('“x y”');
    expect(describeProblem({ kind: 'not-a-number', typed: 'c'.repeat(40) })).toContain(`“${'c'.repeat(40)}”`);
  });

  it('offers both readings of a comma, one of them in words', () => {
    expect(describeProblem({ kind: 'ambiguous-number', typed: '1,234', readings: [1234, 1.234] })).toBe(
      'The comma in “1,234” can be read two ways. Say which is meant: 1234 (one thousand two hundred and thirty-four) or 1.234.',
    );
  });

  it('names both readings for two buttons', () => {
    expect(describeReadings([-1234, -1.234])).toEqual([
      'minus one thousand two hundred and thirty-four',
      '−1.234',
    ]);
  });

  it('says open bounds as open and exact counts as exact', () => {
    const at = (limit: object): string =>
      describeProblem({ kind: 'out-of-range', field: 'pitch', value: 0, limit });
    expect(at({ above: 0, max: 3 })).toContain('above 0 and at most 3');
    expect(at({ min: 1 })).toContain('of at least 1');
    expect(at({ min: 4, max: 4 })).toContain('of exactly 4');
    expect(at({ above: 0, below: 1 })).toContain('above 0 and below 1');
  });

  it('gives no words to a million and more, nor to a fraction', () => {
    expect(describeReadings([-999_000, -999])[0]).toBe('minus nine hundred and ninety-nine thousand');
    expect(describeReadings([1_000_000, 1_000])[0]).toBe('1000000');
    expect(describeReadings([0.1234, 0.000_123_4])).toEqual(['0.1234', '0.0001234']);
  });

  it('counts carburettors from 1, and speaks of none where no field names one', () => {
    const at = (field: string): string => describeProblem({ kind: 'no-readings', field });
    expect(at('carburettors.11')).toBe('Give at least one reading of carburettor 12; there is none.');
    expect([at('readings'), at('carburettors.1.rpm'), at('own.carburettors.1')]).toEqual(
      new Array(3).fill('Give at least one reading; there is none.'),
    );
  });

  it('throws for a kind without words', () => {
    expect(() => describeProblem({ kind: 'unheard-of' } as unknown as Problem)).toThrow('unheard-of');
  });
});
