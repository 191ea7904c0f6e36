import { describe, expect, test } from 'vitest';
import { pressureUnit, threadTables } from '../../src/calculators/index.ts';
import { csvOf, noFigure, type DataTable } from '../../src/content/tables/data-table.ts';
import { dataTables } from '../../src/content/tables/index.ts';
import { sources } from '../../src/content/sources.ts';

const tables = Object.entries<DataTable>(dataTables);
/** A figure as a person reads it. */
const figure = /^−?\d+(?:\.\d+)?$/u;
const columnOf = (name: keyof typeof dataTables, heading: string, unit?: string): (string | undefined)[] => {
  const { columns, rows }: DataTable = dataTables[name];
  const index = columns.findIndex((column) => column.heading === heading && column.unit === unit);
  expect(index, `${name}: ${heading}`).toBeGreaterThan(-1);
  return rows.map(({ cells }) => cells[index]);
};
const cell = (name: keyof typeof dataTables, row: string, heading: string, unit?: string) =>
  columnOf(name, heading, unit)[dataTables[name].rows.findIndex(({ cells }) => cells[0] === row)];

describe('tables of the handbook', () => {
  test.each(tables)('%s: headings differ, rows are full, names differ, figures are figures', (_, table) => {
    const { caption, columns, rows } = table;
    expect(caption).toMatch(/^\p{Lu}.{20,}\.$/u);
    expect(new Set(columns.map(({ heading, unit }) => `${heading} ${unit}`)).size).toBe(columns.length);
    expect(rows.length).toBeGreaterThan(2);
    for (const { cells, sources: ids } of rows) {
      expect(cells).toHaveLength(columns.length);
      for (const id of ids) expect(sources).toHaveProperty([id]);
      for (const [index, column] of columns.entries())
        if (column.words) expect(cells[index]).not.toBe('');
        else if (cells[index] !== noFigure) expect(cells[index]).toMatch(figure);
    }
    expect(new Set(rows.map(({ cells }) => cells.slice(0, 3).join('|'))).size).toBe(rows.length);
  });

  test('figures that are known from outside', () => {
    // NIST SP 811: 1 inHg is 3.386 389 kPa, 1 mmHg is 133.3224 Pa. U.S. Standard Atmosphere 1976: 898.76 hPa at 1000 m.
    expect(cell('usual-readings', '10\u00a0inHg', 'kilopascals', 'kPa')).toBe('33.9');
    expect(cell('usual-readings', '250\u00a0mmHg', 'inches of mercury', 'inHg')).toBe('9.84');
    expect(cell('depression-limit-by-altitude', '1000', 'air', 'hPa')).toBe('899');
    expect(cell('depression-limit-by-altitude', '0', 'limit', 'mmHg')).toBe('760');
    expect(cell('gauge-liquids', 'water', 'density at 20 °C', 'kg/m³')).toBe('998.2');
    expect(cell('accuracy-classes', '1.6', '± on a scale of 1 bar', 'kPa')).toBe('1.6');
    expect(cell('threads-iso-coarse', 'M5', 'one turn (the pitch)', 'mm')).toBe('0.8');
    expect(cell('threads-ba', '4BA', 'one turn (the pitch)', 'mm')).toBe('0.66');
    expect(cell('lock-nuts', 'M5', 'thin, tallest', 'mm')).toBe('2.7');
    expect(cell('carbon-monoxide-limits', 'OSHA, 1971', 'the same at 20 °C', 'ppm')).toBe('50');
  });

  test('a depression limit falls with height, and needs fewer readings the larger the difference', () => {
    const limits = columnOf('depression-limit-by-altitude', 'limit', 'mmHg').map(Number);
    expect(limits).toEqual(limits.toSorted((a, b) => b - a));
    for (const { cells } of dataTables['readings-for-a-difference'].rows) {
      const counts = cells.slice(2).map((each) => (each === noFigure ? Infinity : Number(each)));
      expect(counts).toEqual(counts.toSorted((a, b) => b - a));
    }
  });

  test('every thread of a system is in its table', () => {
    for (const { system, threads } of threadTables)
      expect(dataTables[`threads-${system}`].rows, system).toHaveLength(threads.length);
  });
});

describe('csvOf(table)', () => {
  const table: DataTable = {
    caption: 'A table that tests the file.',
    columns: [{ heading: 'reading', words: true }, { heading: 'gauge', unit: 'kPa' }, { heading: 'count' }],
    rows: [
      { cells: ['10\u00a0inHg', '−33.9', noFigure], sources: ['si'] },
      { cells: ['=SUM(A1)', '0', '2'], sources: ['practice', 'si'] },
    ],
  };
  const [head, first, second, end] = csvOf(table).split('\r\n');

  test('names columns with their units, and where each row is from', () => {
    expect(head).toBe('reading,gauge (kPa),count,source');
    expect(first).toMatch(
      /^10 inHg,-33\.9,,"The International System of Units, .*\(seen in a copy, a table/u,
    );
    expect(second).toContain('Common practice of the trade');
    expect(second).toContain('The International System of Units');
    expect(end).toBe('');
  });

  test('leaves no formula', () => {
    expect(second).toMatch(/^'=SUM/u);
  });

  test.each(tables)(
    '%s: a line for each row and one of headings, with its units, and no formula',
    (_, each) => {
      const lines = csvOf(each).split('\r\n');
      expect(lines).toHaveLength(each.rows.length + 2);
      for (const { unit } of each.columns) if (unit) expect(lines[0]).toContain(`(${unit})`);
      for (const line of lines) expect(line).not.toMatch(/^[=+@]|^-(?!\d)/u);
      expect(csvOf(each)).not.toMatch(/[\u00a0−]\d/u);
    },
  );

  test('units are written as the converter writes them', () => {
    expect(csvOf(dataTables['usual-readings']).split('\r\n')[0]).toContain(
      `(${pressureUnit('cmH2O').symbol})`,
    );
  });
});
