import { describe, expect, it } from 'vitest';
import { describeProblem, describeReadings, formatPressure } from '../../src/calculators/index.ts';
import type { Problem } from '../../src/calculators/index.ts';

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

  it('throws for a kind without words', () => {
    expect(() => describeProblem({ kind: 'unheard-of' } as unknown as Problem)).toThrow('unheard-of');
  });
});
