import { describe, expect, it } from 'vitest';
import {
  answerUnitConverter,
  changedConversion,
  converterQuantities,
  keepTypedUnit,
  pressureKindChoices,
  pressureUnits,
  quantitiesOfUnit,
  sayProblem,
  unitConverterExample,
  unitsOf,
  usualUnitIn,
} from '../../src/calculators/index.ts';
import { converterMeasures } from '../../src/calculators/unit-converter-quantities.ts';
import type { ConversionForm, ConversionTable } from '../../src/calculators/index.ts';

const form = (typed: string, rest: Partial<ConversionForm> = {}): ConversionForm => ({
  ...unitConverterExample,
  typed,
  ...rest,
});

const tableOf = (given: ConversionForm): ConversionTable => {
  const answer = answerUnitConverter(given);
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.answer;
};

/** Printed texts of a unit, in the order of the headings. */
const printed = (given: ConversionForm, unitId: string): (string | undefined)[] =>
  tableOf(given)
    .lines.find((line) => line.unitId === unitId)
    ?.cells.map((cell) => cell?.text) ?? [];

describe('unitConverterExample', () => {
  it('is a depression of 9 inHg: 228.6 mmHg, 30.48 kPa, and the same state as gauge and absolute', () => {
    const table = tableOf(unitConverterExample);
    expect(table.headings).toEqual(['depression', 'gauge', 'absolute']);
    expect(table.understood).toBe(
      '9\u00a0inHg is 30.48\u00a0kPa below an ambient pressure of 101.325\u00a0kPa.',
    );
    expect(printed(unitConverterExample, 'mmHg')).toEqual(['228.6', '−228.6', '531.4']);
    expect(printed(unitConverterExample, 'kPa')).toEqual(['30.48', '−30.48', '70.85']);
    expect(printed(unitConverterExample, 'inHg')).toEqual(['9', '−9', '20.921']);
    expect(printed(unitConverterExample, 'Pa')).toEqual(['30477', '−30477', '70848']);
  });

  it('answers in every unit, once', () => {
    expect(tableOf(unitConverterExample).lines.map(({ unitId }) => unitId)).toEqual(
      pressureUnits.map(({ id }) => id),
    );
  });
});

describe('computeConversions(question): kinds', () => {
  it('a signed gauge pressure is a depression with a minus sign', () => {
    const given = form('-0.4 bar', { kind: 'gauge' });
    expect(tableOf(given).headings).toEqual(['gauge', 'depression', 'absolute']);
    expect(printed(given, 'bar')).toEqual(['−0.4', '0.4', '0.6133']);
    expect(printed(given, 'mmHg')).toEqual(['−300.0', '300.0', '460.0']);
  });

  it('an absolute pressure below ambient is a depression', () => {
    const given = form('71.3 kPa', { kind: 'absolute' });
    expect(tableOf(given).headings).toEqual(['absolute', 'depression', 'gauge']);
    expect(printed(given, 'kPa')).toEqual(['71.3', '30.03', '−30.03']);
  });

  it('above the ambient pressure there is no depression', () => {
    expect(printed(form('2 bar', { kind: 'gauge' }), 'bar')).toEqual(['2', undefined, '3.013']);
  });

  it('a difference knows no ambient pressure, and may be negative', () => {
    const given = form('-5 mmHg', { kind: 'difference', ambient: 'nonsense' });
    expect(tableOf(given).headings).toEqual(['difference']);
    expect(printed(given, 'mbar')).toEqual(['−6.666']);
  });

  it('takes the ambient pressure that was given, in any unit', () => {
    expect(printed(form('9 inHg', { ambient: '28 inHg' }), 'inHg')).toEqual(['9', '−9', '19']);
    expect(printed(form('9 kPa', { ambient: '95' }), 'kPa')).toEqual(['9', '−9', '86']);
    expect(printed(form('9 kPa', { ambient: '' }), 'kPa')).toEqual(['9', '−9', '92.325']);
  });

  it('zero is zero in every unit, and the whole ambient pressure remains', () => {
    expect(printed(form('0 inHg'), 'psi')).toEqual(['0', '0', '14.6959']);
    expect(printed(form('0 inHg'), 'kPa')).toEqual(['0', '0', '101.325']);
  });

  it('the whole ambient pressure is a perfect vacuum, and allowed', () => {
    expect(printed(form('101.325 kPa'), 'kPa')).toEqual(['101.325', '−101.325', '0']);
  });
});

describe('computeConversions(question): digits', () => {
  it('repeats the typed unit as typed', () => {
    expect(printed(form('12,50 cmHg'), 'cmHg')[0]).toBe('12,50');
    expect(printed(form('9 1/2 inHg'), 'inHg')[0]).toBe('9.5');
  });

  it('answers with the decimal mark that was typed', () => {
    expect(printed(form('12,5 cmHg'), 'inHg')[0]).toBe('4,921');
  });

  it('gives one digit more than typed, at least four, and no zeros that only fill up', () => {
    expect(printed(form('12,5 cmHg'), 'mmHg')[0]).toBe('125');
    expect(printed(form('212 mmHg'), 'inHg')[0]).toBe('8.346');
    expect(printed(form('231.25 mmHg'), 'inHg')[0]).toBe('9.10433');
  });

  it('keeps zeros that were typed behind the mark, not those of a whole number', () => {
    expect(printed(form('100 kPa'), 'bar')[0]).toBe('1');
    expect(printed(form('100.0 kPa'), 'bar')[0]).toBe('1.000');
    expect(printed(form('212.0 mmHg'), 'cmHg')[0]).toBe('21.20');
  });

  it('copies with the ASCII minus sign and the symbol', () => {
    const line = tableOf(form('-0.4 bar', { kind: 'gauge' })).lines.find(({ unitId }) => unitId === 'kPa');
    expect(line?.cells[0]?.copied).toBe('-40 kPa');
  });

  it('takes the usual unit where none was typed', () => {
    expect(printed(form('212', { usualUnit: 'mmHg' }), 'mmHg')[0]).toBe('212');
  });
});

describe('computeConversions(question): what cannot be', () => {
  const refused: readonly (readonly [string, Partial<ConversionForm>, string])[] = [
    ['30 inHg', {}, 'depression-beyond-ambient'],
    ['29 inHg', { ambient: '90 kPa' }, 'depression-beyond-ambient'],
    ['-5 kPa', {}, 'negative-depression'],
    ['-1.2 bar', { kind: 'gauge' }, 'gauge-below-vacuum'],
    ['-1 kPa', { kind: 'absolute' }, 'absolute-below-zero'],
    ['', {}, 'empty'],
    ['1e309', {}, 'beyond-counting'],
    ['NaN', {}, 'not-a-number'],
    ['9 furlongs', {}, 'unknown-unit'],
    ['1,234 Pa', {}, 'ambiguous-number'],
  ];
  for (const [typed, rest, kind] of refused)
    it(`“${typed}” ${rest.kind ?? ''} is ${kind}, beside the reading`, () => {
      expect(answerUnitConverter(form(typed, rest))).toMatchObject({
        ok: false,
        problems: [{ field: 'typed', problem: { kind, field: 'typed' } }],
      });
    });

  for (const [ambient, kind, field] of [
    ['0', 'out-of-range', 'ambientPa'],
    ['500 kPa', 'out-of-range', 'ambientPa'],
    ['-101', 'out-of-range', 'ambientPa'],
    ['high', 'not-a-number', 'ambient'],
  ] as const)
    it(`an ambient pressure of “${ambient}” is ${kind}, beside the ambient pressure`, () => {
      expect(answerUnitConverter(form('9 inHg', { ambient }))).toMatchObject({
        ok: false,
        problems: [{ field: 'ambient', problem: { kind, field } }],
      });
    });
});

describe('answerUnitConverter(form): both fields wrong', () => {
  it('says so beside each', () => {
    const answer = answerUnitConverter(form('much', { ambient: '500' }));
    expect(
      answer.ok ? [] : answer.problems.map(sayProblem).map(({ field, sentence }) => `${field}: ${sentence}`),
    ).toEqual([
      'typed: Give one number, such as 212, 12.5 or 9 1/2; you wrote “much”.',
      'ambient: Give a number from 20\u00a0kPa to 120\u00a0kPa; you wrote “500”.',
    ]);
  });
});

describe('answerUnitConverter(form): lines', () => {
  const idsOf = (given: ConversionForm, mark: 'typed' | 'rare') =>
    tableOf(given)
      .lines.filter((line) => line[mark])
      .map(({ unitId }) => unitId);

  it('mark the unit that was typed, and no other', () => {
    expect(idsOf(form('9 inHg'), 'typed')).toEqual(['inHg']);
    expect(idsOf(form('9', { usualUnit: 'mbar' }), 'typed')).toEqual(['mbar']);
    expect(idsOf(form('9 ft', { quantity: 'length' }), 'typed')).toEqual(['ft']);
  });

  it('mark the columns that need a temperature, of pressures alone', () => {
    expect(idsOf(form('9 inHg'), 'rare')).toEqual(
      pressureUnits.filter(({ rare }) => rare).map(({ id }) => id),
    );
    expect(idsOf(form('9 inHg'), 'rare')).toContain('inHg-60F');
    expect(idsOf(form('9 inHg'), 'rare')).not.toContain('mmHg');
    expect(idsOf(form('9 ft', { quantity: 'length' }), 'rare')).toEqual([]);
  });
});

describe('answerUnitConverter(form): sizes beyond plain digits', () => {
  it('are written with a power of ten, never as a row of noughts', () => {
    const given = form('1e-20 Pa', { kind: 'difference' });
    expect(tableOf(given).understood).toBe(
      'A difference of 1 × 10⁻²⁰\u00a0Pa is 1 × 10⁻²³\u00a0kPa; the ambient pressure does not matter.',
    );
    expect(printed(given, 'kPa')).toEqual(['1 × 10⁻²³']);
    expect(printed(form('1e20 Pa', { kind: 'difference' }), 'inHg')).toEqual(['2.953 × 10¹⁶']);
    const line = tableOf(form('-1e-20 Pa', { kind: 'difference' })).lines.find(
      ({ unitId }) => unitId === 'kPa',
    );
    expect(line?.cells[0]).toMatchObject({ text: '−1 × 10⁻²³', copied: '-1e-23 kPa' });
  });
});

describe('answerUnitConverter(form): quantities besides pressure', () => {
  const measure = (quantity: string, typed: string, usualUnit = ''): ConversionForm =>
    form(typed, { quantity, usualUnit, ambient: 'nonsense' });

  const figures: readonly (readonly [string, string, string, string])[] = [
    ['length', '5.5 mm', 'cm', '0.55'],
    ['length', '5.5 mm', 'mm', '5.5'],
    ['length', '5.50 mm', 'cm', '0.550'],
    ['length', '5,5', 'in', '0,2165'],
    ['length', '3/8 in', 'mm', '9.525'],
    ['length', '0.1 mm', 'um', '100'],
    ['length', '1 thou', 'mm', '0.0254'],
    ['length', '-0.05 mm', 'um', '−50'],
    ['length', '0 mm', 'mile', '0'],
    ['length', '1 mile', 'km', '1.609'],
    ['torque', '12 N·m', 'lbfft', '8.851'],
    ['torque', '9 ft-lb', 'Nm', '12.20'],
    ['torque', '1 kgf·m', 'Nm', '9.807'],
    ['temperature', '20 °C', 'F', '68'],
    ['temperature', '20 °C', 'K', '293.15'],
    ['temperature', '32 °F', 'C', '0'],
    ['temperature', '32.18 °F', 'C', '0.10'],
    ['temperature', '100 °F', 'C', '37.78'],
    ['temperature', '98,6 °F', 'C', '37,0'],
    ['temperature', '-459.67 °F', 'K', '0.00'],
    ['temperature-difference', '20 °C', 'F', '36'],
    ['temperature-difference', '20 °C', 'K', '20'],
    ['volume', '750 mL', 'in3', '45.77'],
    ['volume', '1 US qt', 'mL', '946.4'],
    ['volume', '1 imp gal', 'L', '4.546'],
    ['speed', '50 mph', 'km/h', '80.47'],
    ['speed', '36 km/h', 'm/s', '10'],
    ['engine-speed', '2100 rpm', 'Hz', '35'],
    ['engine-speed', '2100', 'rad/s', '219.91'],
    ['thread-pitch', '0.75 mm', 'tpi', '33.87'],
    ['thread-pitch', '20 TPI', 'mm', '1.27'],
    ['thread-pitch', '26 TPI', 'mm', '0.9769'],
  ]; // prettier-ignore
  it.each(figures)('%s: %s in %s is %s', (quantity, typed, unitId, text) => {
    expect(printed(measure(quantity, typed), unitId)).toEqual([text]);
  });

  it('answers in every unit of the family, once, and copies a figure with its unit', () => {
    for (const quantity of converterQuantities) {
      const table = tableOf(
        measure(quantity, '7').quantity === 'pressure' ? form('7') : measure(quantity, '7'),
      );
      expect(table.lines.map(({ unitId }) => unitId)).toEqual(unitsOf(quantity).map(({ id }) => id));
    }
    const line = tableOf(measure('length', '-5.5 mm')).lines.find(({ unitId }) => unitId === 'cm');
    expect(line?.cells[0]).toEqual({ text: '−0.55', copied: '-0.55 cm', label: '−0.55 cm, length' });
  });

  it('says what was understood, and announces the units of a workshop', () => {
    expect(tableOf(measure('length', '5.5 mm')).announcement).toBe(
      'A length of 5.5\u00a0mm is 0.2165\u00a0in. That is also 216.5 thousandths of an inch; 0.55 centimetres.',
    );
    expect(tableOf(measure('engine-speed', '2100')).understood).toBe(
      'An engine speed of 2100\u00a0rpm is 35\u00a0Hz.',
    );
    expect(tableOf(measure('temperature-difference', '9 °F')).understood).toBe(
      'A temperature difference of 9\u00a0°F is 5\u00a0°C.',
    );
  });

  it('announces every unit but the one that was typed, once', () => {
    for (const [quantity, { family, said }] of Object.entries(converterMeasures))
      for (const { id, symbol } of family.units) {
        const { announcement } = tableOf(measure(quantity, '7', id));
        expect(announcement).toContain(`of 7\u00a0${symbol} is `);
        const behind = announcement.split('That is also ')[1]?.split('; ') ?? [];
        expect(behind).toHaveLength(said.filter((each) => each !== id).length - 1);
        expect(new Set(behind).size).toBe(behind.length);
      }
  });

  const refused: readonly (readonly [string, string, string])[] = [
    ['length', '', 'nothing is written here'],
    ['length', '5 inHg', '“inHg” is not a unit that is known here'],
    ['temperature', '-300 °C', 'Nothing is colder than absolute zero'],
    ['thread-pitch', '0', 'Give a thread pitch above 0; you wrote “0”.'],
    ['thread-pitch', '-20 TPI', 'Give a thread pitch above 0; you wrote “-20 TPI”.'],
    ['volume', '1 pint', '“pint” is not a unit that is known here'],
    ['speed', '1e400 mph', 'you wrote “1e400 mph”'],
  ];
  it.each(refused)('%s: “%s” is refused in words, beside the reading', (quantity, typed, words) => {
    const answer = answerUnitConverter(measure(quantity, typed));
    if (answer.ok) throw new Error('answered');
    expect(answer.problems).toHaveLength(1);
    expect(answer.problems[0]?.field).toBe('typed');
    expect(answer.problems.map(sayProblem)[0]?.sentence).toContain(words);
  });
});

describe('a unit and its quantity', () => {
  it('a unit of another quantity shows the way there', () => {
    expect(quantitiesOfUnit('mm')).toEqual(['length', 'thread-pitch']);
    expect(quantitiesOfUnit('°C')).toEqual(['temperature', 'temperature-difference']);
    expect(quantitiesOfUnit('inHg')).toEqual(['pressure']);
    expect(quantitiesOfUnit('furlong')).toEqual([]);
  });

  it('another quantity keeps the number, and the unit if it has such a one', () => {
    const asked = (typed: string, quantity: string, rest: Partial<ConversionForm> = {}) =>
      changedConversion(form(typed, rest), { quantity });
    expect(asked('9 1/2 inHg', 'length')).toEqual(form('9 1/2', { quantity: 'length', usualUnit: 'mm' }));
    expect(asked('5 in', 'length')).toMatchObject({ typed: '5 in', usualUnit: 'in' });
    expect(asked('-300 K', 'temperature')).toMatchObject({ typed: '-300 K', usualUnit: 'K' });
    expect(asked('5 mm', 'pressure', { quantity: 'length' })).toMatchObject({
      typed: '5',
      usualUnit: 'inHg',
    });
    expect(asked('  ', 'speed')).toMatchObject({ typed: '  ', usualUnit: 'km/h' });
  });

  it('a typed unit becomes the usual one; a chosen one takes its place', () => {
    expect(keepTypedUnit(form('212 mmHg')).usualUnit).toBe('mmHg');
    expect(keepTypedUnit(form('212')).usualUnit).toBe('inHg');
    expect(keepTypedUnit(form('5 furlongs', { quantity: 'length', usualUnit: 'cm' })).usualUnit).toBe('cm');
    expect(changedConversion(form('9 inHg'), { typed: '212 mmHg' })).toEqual(
      form('212 mmHg', { usualUnit: 'mmHg' }),
    );
    const chosen = (typed: string) => changedConversion(form(typed), { usualUnit: 'kPa' });
    expect(chosen('212 mmHg')).toEqual(form('212', { usualUnit: 'kPa' }));
    expect(chosen('mmHg')).toEqual(form('mmHg', { usualUnit: 'kPa' }));
    // What is not about units changes none.
    expect(changedConversion(chosen('mmHg'), { kind: 'gauge' })).toEqual(
      form('mmHg', { usualUnit: 'kPa', kind: 'gauge' }),
    );
  });

  it('a usual unit of another quantity is replaced by one of this', () => {
    expect(usualUnitIn(form('5', { quantity: 'length' }))).toBe('mm');
    expect(usualUnitIn(form('5', { quantity: 'length', usualUnit: 'ft' }))).toBe('ft');
    expect(usualUnitIn(form('5', { usualUnit: 'ft' }))).toBe('inHg');
  });
});

describe('describeConversions(conversions)', () => {
  it('announces one unit of each family', () => {
    expect(tableOf(unitConverterExample).announcement).toBe(
      '9\u00a0inHg is 30.48\u00a0kPa below an ambient pressure of 101.325\u00a0kPa. That is also 228.6 millimetres of mercury; 304.8 millibars; 22.86 centimetres of mercury; 4.420 pounds per square inch.',
    );
  });
});

describe('the words of the converter', () => {
  it.each<[typed: string, rest: Partial<ConversionForm>, understood: string]>([
    [
      '-9 inHg',
      { kind: 'gauge' },
      '−9 inHg is −30.48 kPa gauge, counted from an ambient pressure of 101.325 kPa.',
    ],
    [
      '9 inHg',
      { kind: 'absolute' },
      '9 inHg is 30.48 kPa absolute, under an ambient pressure of 101.325 kPa.',
    ],
    [
      '9 inHg',
      { kind: 'difference' },
      'A difference of 9 inHg is 30.48 kPa; the ambient pressure does not matter.',
    ],
    ['9,5 inHg', {}, '9,5 inHg is 32,17 kPa below an ambient pressure of 101,325 kPa.'],
    ['30 kPa', {}, '30 kPa is 225.0 mmHg below an ambient pressure of 101.325 kPa.'],
    ['9,5 mm', { quantity: 'length', usualUnit: 'mm' }, 'A length of 9,5 mm is 0,3740 in.'],
    ['3/8 in', { quantity: 'length', usualUnit: 'mm' }, 'A length of 0.375 in is 9.525 mm.'],
    ['60 mph', { quantity: 'speed', usualUnit: 'km/h' }, 'A speed of 60 mph is 96.56 km/h.'],
    ['750', { quantity: 'volume', usualUnit: 'mL' }, 'A volume of 750 mL is 25.36 US fl oz.'],
  ])('%s, %o', (typed, rest, understood) => {
    const table = tableOf(form(typed, rest));
    expect(table.understood.replaceAll('\u00a0', ' ')).toBe(understood);
    expect(table.understood).not.toMatch(/\d (?!×)[a-zA-Z]/u);
    expect(table.announcement.startsWith(`${table.understood} That is also `)).toBe(true);
    expect(table.headings.length).toBe(rest.quantity !== undefined || rest.kind === 'difference' ? 1 : 3);
  });

  it('says what each kind is, and which sign it carries', () => {
    const { depression, gauge, absolute, difference } = pressureKindChoices;
    expect(depression).toMatch(/^Depression: a vacuum/u);
    expect(gauge).toMatch(/^Gauge pressure: minus below/u);
    expect(absolute).toMatch(/^Absolute/u);
    expect(difference).toMatch(/^Difference/u);
  });

  it.each<[typed: string, rest: Partial<ConversionForm>, sentence: string]>([
    ['40 inHg', {}, 'from 0 to 29.92 inHg; you gave 40 inHg.'],
    ['-40 inHg', { kind: 'gauge' }, 'of at least −29.92 inHg'],
  ])('%s %o is beyond the ambient pressure, in the unit that was typed', (typed, rest, sentence) => {
    const answer = answerUnitConverter(form(typed, rest));
    const said = answer.ok ? [] : answer.problems.map(sayProblem);
    expect(said.map(({ field }) => field)).toEqual(['typed']);
    expect(said[0]?.sentence.replaceAll('\u00a0', ' ')).toContain(sentence);
  });
});
