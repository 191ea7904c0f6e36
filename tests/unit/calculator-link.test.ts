import { describe, expect, test } from 'vitest';
import {
  calculatorLink,
  formReader,
  initialForm,
  parseCalculatorLink,
  refuse,
  sayProblem,
  writeCalculatorLink,
} from '../../src/calculators/index.ts';
import type { FormFields } from '../../src/calculators/index.ts';

const fields = {
  speed: { kind: 'text', initially: '2100' },
  notes: { kind: 'text', initially: '', longest: 200 },
  kind: { kind: 'choice', initially: 'water', choices: ['water', 'mercury'] },
} as const satisfies FormFields<string>;
const first = { speed: '2100', notes: '', kind: 'water' };

describe('the form of a calculator', () => {
  test('stands at first as its fields say', () => {
    expect(initialForm(fields)).toEqual(first);
  });

  test('keeps every problem with its field, and says it', () => {
    const { problems, take, blame } = formReader<'speed' | 'kind'>();
    expect(take('speed', { ok: true, value: 3 })).toBe(3);
    expect(take('speed', { ok: false, problem: { kind: 'empty' } })).toBeUndefined();
    blame('kind', { kind: 'no-screws' });
    expect(problems).toEqual([
      { field: 'speed', problem: { kind: 'empty' } },
      { field: 'kind', problem: { kind: 'no-screws' } },
    ]);
    const refused = refuse(problems, (field) => ({ label: field }));
    expect(refused).toEqual({
      ok: false,
      problems: [
        { field: 'speed', problem: { kind: 'empty' }, words: { label: 'speed' } },
        { field: 'kind', problem: { kind: 'no-screws' }, words: { label: 'kind' } },
      ],
    });
    expect(!refused.ok && refused.problems.map(sayProblem)).toEqual([
      {
        field: 'speed',
        problem: { kind: 'empty' },
        sentence: 'speed: give a number, such as 212 or 9 1/2; nothing is written here.',
      },
      {
        field: 'kind',
        problem: { kind: 'no-screws' },
        sentence: 'kind: give at least one balance screw; there is none.',
      },
    ]);
    expect(refuse(problems)).toMatchObject({ problems: [{ words: {} }, { words: {} }] });
  });

  test('says the two readings of a comma for the buttons that ask which is meant', () => {
    const problem = { kind: 'ambiguous-number', typed: '1,234', readings: [1234, 1.234] } as const;
    expect(sayProblem({ field: 'speed', problem, words: {} })).toMatchObject({
      field: 'speed',
      sentence: expect.stringContaining('can be read two ways') as string,
      readings: ['one thousand two hundred and thirty-four', '1.234'],
    });
  });
});

describe('the link of a calculator', () => {
  test('is written and read by the names of the fields', () => {
    const { write, parse } = calculatorLink(fields);
    const form = { ...first, speed: '1900', kind: 'mercury' };
    expect(write(form)).toEqual({ v: '1', speed: '1900', kind: 'mercury' });
    expect(parse(write(form))).toEqual({ ok: true, value: { form, unknownKeys: [], problems: [] } });
  });

  test('leaves out what stands as at first', () => {
    expect(writeCalculatorLink(fields, first)).toEqual({ v: '1' });
    expect(writeCalculatorLink(fields, { ...first, speed: ' 1900 ', kind: 'mercury' })).toEqual({
      v: '1',
      speed: '1900',
      kind: 'mercury',
    });
  });

  test('is read back; unknown keys are named, also those of every object', () => {
    expect(parseCalculatorLink(fields, { v: '1', speed: '1900', colour: 'red', toString: 'x' })).toEqual({
      ok: true,
      value: { form: { ...first, speed: '1900' }, unknownKeys: ['colour', 'toString'], problems: [] },
    });
  });

  test('of a newer version is refused', () => {
    expect(parseCalculatorLink(fields, { v: '2', speed: '1' })).toEqual({
      ok: false,
      problem: { kind: 'newer-version', field: 'v', value: 2, limit: { max: 1 } },
    });
  });

  test.each([
    [{ v: 'x' }, { kind: 'unknown-choice', field: 'v', typed: 'x', known: ['1'] }],
    [{ kind: 'oil' }, { kind: 'unknown-choice', field: 'kind', typed: 'oil', known: ['water', 'mercury'] }],
    [{ speed: '9'.repeat(81) }, { kind: 'too-long', field: 'speed', value: 81, limit: { max: 80 } }],
    [{ notes: 'n'.repeat(201) }, { kind: 'too-long', field: 'notes', value: 201, limit: { max: 200 } }],
  ])('%o: the field stays as at first, and the problem is told', (record, problem) => {
    const read = parseCalculatorLink(fields, record);
    expect(read).toEqual({ ok: true, value: { form: first, unknownKeys: [], problems: [problem] } });
  });

  test('a longer text is taken where the field is longer', () => {
    const read = parseCalculatorLink(fields, { notes: 'n'.repeat(200) });
    expect(read).toMatchObject({ value: { form: { notes: 'n'.repeat(200) }, problems: [] } });
  });
});
