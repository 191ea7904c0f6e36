import { describe, expect, test } from 'vitest';
import { csvText } from '../../src/calculators/index.ts';

/** Reads a CSV text by the letter of RFC 4180, as the writer's opposite. */
function cellsOf(text: string): string[][] {
  const rows: string[][] = [[]];
  let rest = text;
  while (rest !== '') {
    const [whole = '', inQuotes, plain, end] = /^(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/u.exec(rest) ?? [];
    if (whole === '') throw new Error(`not RFC 4180: ${rest.slice(0, 20)}`);
    rows.at(-1)!.push(inQuotes?.replaceAll('""', '"') ?? plain ?? '');
    rest = rest.slice(whole.length);
    if (end === '\r\n' && rest !== '') rows.push([]);
  }
  return rows;
}

describe('csvText(rows)', () => {
  test('ends every line with CR LF', () => {
    expect(
      csvText([
        ['a', 'b'],
        ['1', '2'],
      ]),
    ).toBe('a,b\r\n1,2\r\n');
    expect(csvText([])).toBe('');
  });

  test.each([
    ['a, b', '"a, b"'],
    ['the “6 mm” one', 'the “6 mm” one'],
    ['1/4" BSF', '"1/4"" BSF"'],
    ['two\nlines', '"two\nlines"'],
    ['', ''],
  ])('%j is written %s', (cell, written) => {
    expect(csvText([[cell]])).toBe(`${written}\r\n`);
  });

  test.each(['=1+2', '+SUM(A1)', '-2+3', '@now', ' =1', '\t1', '\r=1', '\uff1d1', '-', '--1', '-1e'])(
    '%j begins like a formula and gets an apostrophe',
    (cell) => {
      expect(cellsOf(csvText([[cell]]))).toEqual([[`'${cell}`]]);
    },
  );

  test.each(['-40', '-0.25', '12', '-1.5e-7', 'M5 x 0.5', 'a=b', '−40', "'="])(
    '%j stays as it is',
    (cell) => {
      expect(cellsOf(csvText([[cell]]))).toEqual([[cell]]);
    },
  );

  test('what was written is read again, cell for cell', () => {
    const rows = [
      ['name', 'note "x"', 'a,b'],
      ['', 'line\r\nline', '7'],
    ];
    expect(cellsOf(csvText(rows))).toEqual(rows);
  });

  test('rows of unequal length are our own mistake', () => {
    expect(() => csvText([['a', 'b'], ['c']])).toThrow('a row of 1 cells in a table of 2');
  });
});
