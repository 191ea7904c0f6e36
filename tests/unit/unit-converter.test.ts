import { describe, expect, it } from 'vitest';
import {
  computeConversions,
  describeConversions,
  parseConversion,
  pressureUnits,
  unitConverterExample,
} from '../../src/calculators/index.ts';
import type { ConversionForm, ConversionTable, Result } from '../../src/calculators/index.ts';

const form = (typed: string, rest: Partial<ConversionForm> = {}): ConversionForm => ({
  ...unitConverterExample,
  typed,
  ...rest,
});

const answer = (given: ConversionForm): Result<ConversionTable> => {
  const question = parseConversion(given);
  const conversions = question.ok ? computeConversions(question.value) : question;
  return conversions.ok ? { ok: true, value: describeConversions(conversions.value) } : conversions;
};

const tableOf = (given: ConversionForm): ConversionTable => {
  const table = answer(given);
  if (!table.ok) throw new Error(table.problem.kind);
  return table.value;
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
    expect(table.understood).toBe('9 inHg below an ambient pressure of 101.325 kPa.');
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
    const given = form('-5 mmHg', { kind: 'difference', ambientTyped: 'nonsense' });
    expect(tableOf(given).headings).toEqual(['difference']);
    expect(printed(given, 'mbar')).toEqual(['−6.666']);
  });

  it('takes the ambient pressure that was given, in any unit', () => {
    expect(printed(form('9 inHg', { ambientTyped: '28 inHg' }), 'inHg')).toEqual(['9', '−9', '19']);
    expect(printed(form('9 kPa', { ambientTyped: '95' }), 'kPa')).toEqual(['9', '−9', '86']);
    expect(printed(form('9 kPa', { ambientTyped: '' }), 'kPa')).toEqual(['9', '−9', '92.325']);
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

  it('keeps zeros that were typed', () => {
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
    ['29 inHg', { ambientTyped: '90 kPa' }, 'depression-beyond-ambient'],
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
      expect(answer(form(typed, rest))).toMatchObject({ ok: false, problem: { kind, field: 'typed' } });
    });

  for (const [ambientTyped, kind, field] of [
    ['0', 'out-of-range', 'ambientPa'],
    ['500 kPa', 'out-of-range', 'ambientPa'],
    ['-101', 'out-of-range', 'ambientPa'],
    ['high', 'not-a-number', 'ambient'],
  ] as const)
    it(`an ambient pressure of “${ambientTyped}” is ${kind}, beside the ambient pressure`, () => {
      expect(answer(form('9 inHg', { ambientTyped }))).toMatchObject({ ok: false, problem: { kind, field } });
    });
});

describe('describeConversions(conversions)', () => {
  it('announces one unit of each family', () => {
    expect(tableOf(unitConverterExample).announcement).toBe(
      '9 inHg below an ambient pressure of 101.325 kPa. That is 30.48 kilopascals; 304.8 millibars; 228.6 millimetres of mercury; 22.86 centimetres of mercury; 4.420 pounds per square inch.',
    );
  });
});
