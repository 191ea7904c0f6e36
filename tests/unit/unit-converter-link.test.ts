import { describe, expect, it } from 'vitest';
import {
  parseUnitConverterLink,
  unitConverterExample,
  writeUnitConverterLink,
} from '../../src/calculators/index.ts';

const linkOf = (record: Record<string, string>) => {
  const link = parseUnitConverterLink(record);
  if (!link.ok) throw new Error(link.problem.kind);
  return link.value;
};

describe('writeUnitConverterLink(form)', () => {
  it('leaves defaults out', () => {
    expect(writeUnitConverterLink(unitConverterExample)).toEqual({ v: '1', q: '9 inHg' });
  });

  it('writes what is not a default: kind, ambient pressure with its unit, the unit that was not typed', () => {
    expect(
      writeUnitConverterLink({
        quantity: 'pressure',
        typed: '-40',
        kind: 'gauge',
        usualUnit: 'kPa',
        ambient: '98',
      }),
    ).toEqual({ v: '1', q: '-40', as: 'gauge', ambient: '98 kPa', u: 'kPa' });
  });
});

describe('writeUnitConverterLink(form): what is empty or holds space', () => {
  it('leaves out what is empty, and keeps no space around it', () => {
    const form = { ...unitConverterExample, typed: ' ', usualUnit: 'kPa', ambient: '' };
    expect(writeUnitConverterLink(form)).toEqual({ v: '1', u: 'kPa' });
    expect(writeUnitConverterLink({ ...form, ambient: ' 98 ' })['ambient']).toBe('98 kPa');
    expect(writeUnitConverterLink({ ...form, ambient: ' 980 hPa ' })['ambient']).toBe('980 hPa');
  });
});

describe('writeUnitConverterLink(form): quantities besides pressure', () => {
  it('names the quantity in version 2, which an older page refuses in words instead of reading a pressure', () => {
    const form = {
      ...unitConverterExample,
      quantity: 'length',
      typed: ' 5.5 mm ',
      kind: 'gauge',
      ambient: '98',
    };
    expect(writeUnitConverterLink(form)).toEqual({ v: '2', of: 'length', q: '5.5 mm' });
    expect(writeUnitConverterLink({ ...form, typed: '5.5', usualUnit: 'cm' })).toEqual({
      v: '2',
      of: 'length',
      q: '5.5',
      u: 'cm',
    });
  });
});

describe('parseUnitConverterLink(record)', () => {
  it('reads the form, a bare ambient pressure in pascals', () => {
    expect(linkOf({ v: '1', q: '9 1/2 inHg', as: 'absolute', ambient: '98000' }).form).toEqual({
      quantity: 'pressure',
      typed: '9 1/2 inHg',
      kind: 'absolute',
      ambient: '98000 Pa',
      usualUnit: 'inHg',
    });
  });

  it('takes defaults for what is left out, and the example where there is nothing', () => {
    expect(linkOf({ v: '1' }).form).toEqual({ ...unitConverterExample, typed: '' });
    expect(linkOf({})).toEqual({ form: unitConverterExample, unknownKeys: [], problems: [] });
  });

  it('knows all its own keys, and takes a text of 80 characters', () => {
    const link = linkOf({ v: '2', of: 'length', q: '9'.repeat(80), as: 'gauge', ambient: '98 kPa', u: 'cm' });
    expect(link).toMatchObject({ unknownKeys: [], problems: [], form: { typed: '9'.repeat(80) } });
  });

  it.each([
    [' 98000.5 ', '98000.5 Pa'],
    ['98 kPa', '98 kPa'],
    ['x98', 'x98'],
  ])('ambient “%s” is “%s”', (ambient, form) => {
    expect(linkOf({ v: '1', ambient }).form.ambient).toBe(form);
  });

  it('takes the typed unit for the usual one, with or without a version', () => {
    expect(linkOf({ q: '9 kPa' }).form.usualUnit).toBe('kPa');
    expect(linkOf({ v: '1', q: '212 mmHg' }).form.usualUnit).toBe('mmHg');
  });

  it('reads a quantity besides pressure, with its unit', () => {
    expect(linkOf({ v: '2', of: 'length', q: '5.5', u: 'cm' }).form).toEqual({
      ...unitConverterExample,
      quantity: 'length',
      typed: '5.5',
      usualUnit: 'cm',
    });
    expect(linkOf({ v: '2', of: 'torque', q: '5' }).form.usualUnit).toBe('Nm');
  });

  it('reports a quantity that it does not know, and a unit of another quantity', () => {
    expect(linkOf({ v: '2', of: 'mass', q: '5' }).problems).toMatchObject([
      { kind: 'unknown-choice', field: 'of', typed: 'mass' },
    ]);
    expect(linkOf({ v: '2', of: 'length', u: 'inHg' }).problems).toMatchObject([
      { kind: 'unknown-choice', field: 'u', typed: 'inHg' },
    ]);
  });

  it('names unknown keys and ignores them', () => {
    expect(linkOf({ v: '1', q: '9', colour: 'red', constructor: 'x' }).unknownKeys).toEqual([
      'colour',
      'constructor',
    ]);
  });

  it('reports single bad values and takes their defaults', () => {
    const { form, problems } = linkOf({ v: 'one', as: 'vacuum', u: 'furlong', q: 'x'.repeat(500) });
    expect(problems.map(({ kind }) => kind)).toEqual([
      'unknown-choice',
      'too-long',
      'unknown-choice',
      'unknown-choice',
    ]);
    expect(problems[1]).toEqual({ kind: 'too-long', field: 'q', value: 500, limit: { max: 80 } });
    expect(form).toEqual({ ...unitConverterExample, typed: '' });
  });

  it('refuses a newer version', () => {
    expect(parseUnitConverterLink({ v: '3', q: '9' })).toMatchObject({
      ok: false,
      problem: { kind: 'newer-version', field: 'v', value: 3, limit: { max: 2 } },
    });
  });
});
