/** Reads the check values of tests/data and says whether a computed value agrees with a row. */
import { readFileSync } from 'node:fs';

export type RowTolerance =
  | { readonly kind: 'rel'; readonly size: number }
  | { readonly kind: 'abs'; readonly size: number }
  /** Equal after rounding to the digits printed in `expected`. */
  | { readonly kind: 'exact' };

export type DataRow = {
  /** Line in the file, counted from 1; the header is line 1. */
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
];

/** Reads a file of tests/data and throws unless it holds exactly `count` rows. */
export function readDataRows(file: string, count: number): DataRow[] {
  const text = readFileSync(new URL(`./data/${file}`, import.meta.url), 'utf8');
  const [header, ...records] = parseCsv(text);
  if (header?.join() !== columns.join()) throw new Error(`${file}: unexpected header ${header}`);
  const rows = records.map((cells, index) => toRow(cells, index + 2, file));
  if (rows.length !== count) throw new Error(`${file}: ${rows.length} rows, ${count} asserted`);
  return rows;
}

/** The expected value as a number; throws where the row quotes words. */
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

function toRow(cells: readonly string[], line: number, file: string): DataRow {
  const where = `${file}, line ${line}`;
  if (cells.length !== columns.length) throw new Error(`${where}: ${cells.length} cells`);
  const [quantity, input, inputUnit, expected, expectedUnit, tolerance, source, howObtained] = cells as [
    string,
    string,
    string,
    string,
    string,
    string,
    string,
    string,
  ];
  if (howObtained !== 'read' && howObtained !== 'computed' && howObtained !== 'memory')
    throw new Error(`${where}: unknown how_obtained “${howObtained}”`);
  return {
    line,
    quantity,
    input,
    inputUnit,
    expected,
    expectedUnit,
    tolerance: toTolerance(tolerance, where),
    source,
    howObtained,
  };
}

function toTolerance(text: string, where: string): RowTolerance {
  if (text === 'exact') return { kind: 'exact' };
  const [kind, size = ''] = text.split(' ');
  if (kind !== 'rel' && kind !== 'abs') throw new Error(`${where}: unknown tolerance “${text}”`);
  return { kind, size: toNumber(size, where) };
}

/** RFC 4180: quoted cells may hold commas, line ends and doubled quotes. */
function parseCsv(text: string): string[][] {
  const records: string[][] = [];
  let record: string[] = [];
  let cell = '';
  let quoted = false;
  for (let at = 0; at < text.length; at += 1) {
    const character = text[at];
    if (quoted) {
      if (character !== '"') cell += character;
      else if (text[at + 1] === '"') {
        cell += '"';
        at += 1;
      } else quoted = false;
    } else if (character === '"') quoted = true;
    else if (character === ',') {
      record.push(cell);
      cell = '';
    } else if (character === '\n') {
      records.push([...record, cell]);
      record = [];
      cell = '';
    } else if (character !== '\r') cell += character;
  }
  if (quoted) throw new Error('unclosed quote');
  if (cell !== '' || record.length > 0) records.push([...record, cell]);
  return records;
}
