/** The whole table of outside values through the runner that `npm run check:values` starts. */
import { execFile } from 'node:child_process';
import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { adapters } from '../../truth/adapters.ts';
import { computed } from '../../truth/adapter.ts';
import { checkRow } from '../../truth/check-row.ts';
import { dataFolder, describeRow, parseDataRows } from '../../truth/data-rows.ts';
import { parseCsv } from '../../truth/parse-csv.ts';

const files = readdirSync(dataFolder).filter((file) => file.endsWith('.csv'));
const rows = files.flatMap((file) => parseDataRows(readFileSync(new URL(file, dataFolder), 'utf8'), file));

/** Rows that contradict the definition or the standard that they quote; README.md of tests/data says how. */
const printedWrong = [
  'line 26, inHg conversion, published table: 1 inHg → 0.0345315 at',
  'line 94, published altitude table, pressure: 9000 ft → 21.38 inHg',
];

describe('the rows of tests/data', () => {
  test('955 in eight files; all pass but the two that are printed wrong', () => {
    expect(files).toHaveLength(8);
    expect(rows).toHaveLength(955);
    const outcomes = rows.map((row) => ({ row, ...checkRow(row, adapters) }));
    const others = outcomes.filter(({ outcome }) => outcome !== 'passed');
    expect(others.map(({ row }) => describeRow(row))).toEqual(printedWrong);
    expect(others.map(({ outcome }) => outcome)).toEqual(['failed', 'failed']);
  });
});

describe('a row', () => {
  const [header = ''] = readFileSync(new URL(files[0] ?? '', dataFolder), 'utf8').split('\n');
  const rowOf = (cells: string) => {
    const [row] = parseDataRows(`${header}\n${cells}\n`, 'planted.csv');
    if (row === undefined) throw new Error('no row');
    return row;
  };
  const double = { double: () => computed(2) };

  test.each([
    ['double,1,m,2,m,exact,s,read', 'passed'],
    ['double,1,m,2.0004,m,abs 0.0005,s,read', 'passed'],
    ['double,1,m,2.0006,m,abs 0.0005,s,read', 'failed'],
    ['double,1,m,2.002,m,rel 1e-3,s,computed', 'passed'],
    ['double,1,m,2.003,m,rel 1e-3,s,memory', 'failed'],
    ['halve,1,m,2,m,exact,s,read', 'unknown'],
    ['toString,1,m,2,m,exact,s,read', 'unknown'],
  ])('%s: %s', (cells, outcome) => {
    expect(checkRow(rowOf(cells), double).outcome).toBe(outcome);
  });

  test('an adapter that throws, or answers no number, fails the row and says why', () => {
    const row = rowOf('q,1,m,2,m,exact,s,read');
    const thrown = checkRow(row, {
      q: () => {
        throw new Error('not understood');
      },
    });
    expect(thrown).toMatchObject({ outcome: 'failed', why: 'not understood', got: null });
    expect(checkRow(row, { q: () => computed(NaN) })).toMatchObject({ outcome: 'failed', got: null });
  });

  test('of several values the nearest counts', () => {
    const row = rowOf('q,1,m,2,m,exact,s,read');
    const several = { q: () => ({ kind: 'quoted', values: [1, 2, 3] }) as const };
    expect(checkRow(row, several)).toMatchObject({ outcome: 'passed', kind: 'quoted', got: 2 });
  });

  test.each([
    'q,1,m,2,m,exact,s',
    'q,1,m,2,m,about 3,s,read',
    'q,1,m,2,m,exact,s,guessed',
    'q,1,m,2,m,rel x,s,read',
  ])('%s is no row', (cells) => {
    expect(() => rowOf(cells)).toThrow(/planted\.csv, line 2/);
  });

  test('cells in quotation marks may hold commas, line ends and quotation marks', () => {
    expect(parseCsv('a,"b, ""c""\nd"\r\ne,f')).toEqual([
      ['a', 'b, "c"\nd'],
      ['e', 'f'],
    ]);
    expect(() => parseCsv('a,"b')).toThrow('unclosed quote');
  });
});

describe('npm run check:values', () => {
  let folder = '';
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'evendraw-values-'));
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  const run = (...options: string[]): Promise<{ code: number; lines: string[] }> =>
    new Promise((resolve) => {
      const runner = new URL('../../truth/run.ts', import.meta.url).pathname;
      execFile(process.execPath, [runner, ...options], { maxBuffer: 1e8 }, (error, stdout) =>
        resolve({ code: error === null ? 0 : Number(error.code), lines: stdout.trimEnd().split('\n') }),
      );
    });
  const planted = (name: string, ...cells: string[]): string => {
    const header = 'quantity,input,input_unit,expected,expected_unit,tolerance,source,how_obtained';
    writeFileSync(join(folder, name), [header, ...cells, ''].join('\n'));
    return join(folder, name);
  };

  test('ends with 0 if every row passes, and says the worst of each quantity', async () => {
    const file = planted('right.csv', 'unit factor to Pa,1,mmHg,133.3224,Pa,abs 0.0001,s,read');
    const { code, lines } = await run(file);
    expect(code).toBe(0);
    expect(lines[0]).toBe(
      'unit factor to Pa: 1 passed, 0 failed, 0 unknown, 0 quoted; worst 0.000013 Pa, 13 % of its tolerance',
    );
    expect(lines.at(-1)).toBe('1 passed, 0 failed, 0 unknown');
  });

  test('ends with 1 and lists what fails and what is unknown', async () => {
    const file = planted(
      'wrong.csv',
      'unit factor to Pa,1,mmHg,134,Pa,abs 0.0001,a source,read',
      'colour of the tank,1,-,2,-,exact,s,memory',
      'unit factor to Pa,one,mmHg,1,Pa,exact,s,read',
    );
    const { code, lines } = await run(file);
    expect(code).toBe(1);
    const text = lines.join('\n');
    expect(text).toContain('expected 134 Pa, got 133.322387415 Pa, tolerance abs 0.0001');
    expect(text).toContain('unknown: wrong.csv, line 3, colour of the tank');
    expect(text).toContain('a source (read)');
    expect(lines.at(-1)).toBe('0 passed, 2 failed, 1 unknown');
  });

  test('--json prints every row; without rows, or with an unknown option, it ends with 1', async () => {
    const file = planted('json.csv', 'unit factor to Pa,1,mmHg,133.322387415,Pa,rel 1e-12,s,read');
    const { code, lines } = await run('--json', file);
    expect(code).toBe(0);
    expect(lines).toHaveLength(2);
    expect(JSON.parse(lines[0] ?? '')).toMatchObject({
      file: 'json.csv',
      line: 2,
      input: '1',
      expected: '133.322387415',
      tolerance: 'rel 1e-12',
      outcome: 'passed',
      kind: 'computed',
    });
    expect((await run(planted('empty.csv'))).code).toBe(1);
    expect((await run('--jsn')).code).toBe(1);
  });
}, 60_000);
