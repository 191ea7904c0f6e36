/** Reads tables of check values and says whether a computed value agrees with a row. */
import { readFileSync } from 'node:fs';
import { parseCsv } from './parse-csv.ts';

export type RowTolerance =
  | { readonly kind: 'rel'; readonly size: number }
  | { readonly kind: 'abs'; readonly size: number }
  /** Equal after rounding to the digits printed in `expected`. */
  | { readonly kind: 'exact' };

export type DataRow = {
  /** Record in the file, counted from 1; the header is 1. */
  readonly line: number;
  readonly quantity: string;
  readonly input: string;
  readonly inputUnit: string;
  /** As printed; `expectedNumber` parses it. */
  readonly expected: string;
  readonly expectedUnit: string;
  readonly tolerance: RowTolerance;
  readonly source: string;
  readonly howObtained: 'read' | 'computed' | 'memory';
};

const columns = [
  'quantity',
  'input',
  'input_unit',
  'expected',
  'expected_unit',
  'tolerance',
  'source',
  'how_obtained',
] as const;

/** The rows of a table; throws where a record does not have the columns that README.md of tests/data names. */
export function parseDataRows(text: string, file: string): DataRow[] {
  const [header, ...records] = parseCsv(text.replace(/^\uFEFF/u, ''));
  if (header?.join() !== columns.join()) throw new Error(`${file}: unexpected header ${header}`);
  return records.map((cells, index) => toRow(cells, index + 2, file));
}

/** The folder of the tables that the project keeps. */
export const dataFolder = new URL('../tests/data/', import.meta.url);

/** Reads a file of tests/data and throws unless it holds exactly `count` rows. */
export function readDataRows(file: string, count: number): DataRow[] {
  const rows = parseDataRows(readFileSync(new URL(file, dataFolder), 'utf8'), file);
  if (rows.length !== count) throw new Error(`${file}: ${rows.length} rows, ${count} asserted`);
  return rows;
}

/** The expected value as a number; throws where the row holds words. */
export function expectedNumber(row: DataRow): number {
  return toNumber(row.expected, `line ${row.line}`);
}

/** A number that is written plainly; throws on anything else, so that no row passes as NaN. */
export function toNumber(text: string, where: string): number {
  if (!/^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(text))
    throw new Error(`${where}: not a number: “${text}”`);
  return Number(text);
}

/** Largest difference that the row allows between a computed value and the expected one. */
export function allowedDifference(row: DataRow): number {
  const expected = expectedNumber(row);
  if (row.tolerance.kind === 'rel') return row.tolerance.size * Math.abs(expected);
  if (row.tolerance.kind === 'abs') return row.tolerance.size;
  const [mantissa = '', exponent = '0'] = row.expected.toLowerCase().split('e');
  const decimals = mantissa.split('.')[1]?.length ?? 0;
  // Half a unit of the last printed digit, and a hair for the binary fraction of a tie.
  return 0.5 * 10 ** (Number(exponent) - decimals) * (1 + 1e-9);
}

/** Whether the computed value is within the row's tolerance; NaN and Infinity never are. */
export function agrees(computed: number, row: DataRow): boolean {
  return Number.isFinite(computed) && Math.abs(computed - expectedNumber(row)) <= allowedDifference(row);
}

/** Name of a row for a test title or a failure. */
export const describeRow = (row: DataRow): string =>
  `line ${row.line}, ${row.quantity}: ${row.input} ${row.inputUnit} → ${row.expected} ${row.expectedUnit}`;

/** A tolerance as it is written in a table. */
export const describeTolerance = (tolerance: RowTolerance): string =>
  tolerance.kind === 'exact' ? 'exact' : `${tolerance.kind} ${tolerance.size}`;

function toRow(cells: readonly string[], line: number, file: string): DataRow {
  const where = `${file}, line ${line}`;
  if (cells.length !== columns.length) throw new Error(`${where}: ${cells.length} cells`);
  const cell = (name: (typeof columns)[number]): string => cells[columns.indexOf(name)] ?? '';
  const howObtained = cell('how_obtained');
  if (howObtained !== 'read' && howObtained !== 'computed' && howObtained !== 'memory')
    throw new Error(`${where}: unknown how_obtained “${howObtained}”`);
  return {
    line,
    quantity: cell('quantity'),
    input: cell('input'),
    inputUnit: cell('input_unit'),
    expected: cell('expected'),
    expectedUnit: cell('expected_unit'),
    tolerance: toTolerance(cell('tolerance'), where),
    source: cell('source'),
    howObtained,
  };
}

function toTolerance(text: string, where: string): RowTolerance {
  if (text === 'exact') return { kind: 'exact' };
  const [kind, size = ''] = text.split(' ');
  if (kind !== 'rel' && kind !== 'abs') throw new Error(`${where}: unknown tolerance “${text}”`);
  return { kind, size: toNumber(size, where) };
}
