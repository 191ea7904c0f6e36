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
      writeUnitConverterLink({ typed: '-40', kind: 'gauge', usualUnit: 'kPa', ambientTyped: '98' }),
    ).toEqual({ v: '1', q: '-40', as: 'gauge', ambient: '98 kPa', u: 'kPa' });
  });
});

describe('parseUnitConverterLink(record)', () => {
  it('reads the form, a bare ambient pressure in pascals', () => {
    expect(linkOf({ v: '1', q: '9 1/2 inHg', as: 'absolute', ambient: '98000' }).form).toEqual({
      typed: '9 1/2 inHg',
      kind: 'absolute',
      ambientTyped: '98000 Pa',
      usualUnit: 'inHg',
    });
  });

  it('takes defaults for what is left out', () => {
    expect(linkOf({}).form).toEqual({ ...unitConverterExample, typed: '' });
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
    expect(form).toEqual({ ...unitConverterExample, typed: '' });
  });

  it('refuses a newer version', () => {
    expect(parseUnitConverterLink({ v: '2', q: '9' })).toMatchObject({
      ok: false,
      problem: { kind: 'newer-version', value: 2, limit: { max: 1 } },
    });
  });
});
