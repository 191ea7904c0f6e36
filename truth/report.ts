import type { RowOutcome } from './check-row.ts';
import { describeTolerance } from './data-rows.ts';
import type { DataRow } from './data-rows.ts';

export type CheckedRow = { readonly file: string; readonly row: DataRow } & RowOutcome;

const count = (rows: readonly CheckedRow[], outcome: RowOutcome['outcome']): number =>
  rows.filter((row) => row.outcome === outcome).length;

/** The last line of a report, alone. */
export const summaryLine = (rows: readonly CheckedRow[]): string =>
  `${count(rows, 'passed')} passed, ${count(rows, 'failed')} failed, ${count(rows, 'unknown')} unknown`;

/** A line for each quantity: what became of its rows, and the worst of them. */
export function quantityLines(rows: readonly CheckedRow[]): string[] {
  const quantities = [...new Set(rows.map(({ row }) => row.quantity))];
  return quantities.map((quantity) => {
    const own = rows.filter(({ row }) => row.quantity === quantity);
    const answered = own.filter((each) => each.shareOfTolerance !== null);
    const worst = answered.toSorted((a, b) => (b.shareOfTolerance ?? 0) - (a.shareOfTolerance ?? 0))[0];
    const quoted = own.filter(({ kind }) => kind === 'quoted').length;
    return `${quantity}: ${summaryLine(own)}, ${quoted} quoted${worst === undefined ? '' : `; ${worstWords(worst)}`}`;
  });
}

const worstWords = ({ row, got, shareOfTolerance }: CheckedRow): string =>
  `worst ${Number(Math.abs((got ?? NaN) - Number(row.expected)).toPrecision(2))} ${row.expectedUnit}, ${Number(((shareOfTolerance ?? NaN) * 100).toPrecision(2))} % of its tolerance`;

/** A paragraph for every row that does not pass. */
export const failureLines = (rows: readonly CheckedRow[]): string[] =>
  rows
    .filter(({ outcome }) => outcome !== 'passed')
    .map(({ file, row, got, why, outcome }) =>
      [
        `${outcome}: ${file}, line ${row.line}, ${row.quantity}`,
        `  input ${row.input} [${row.inputUnit}]`,
        `  expected ${row.expected} ${row.expectedUnit}, got ${got === null ? 'nothing' : `${got} ${row.expectedUnit}`}, tolerance ${describeTolerance(row.tolerance)}`,
        ...(why === null ? [] : [`  ${why}`]),
        `  source: ${row.source} (${row.howObtained})`,
      ].join('\n'),
    );

/** Every row as one line of JSON. */
export const jsonLines = (rows: readonly CheckedRow[]): string[] =>
  rows.map(({ file, row, ...outcome }) =>
    JSON.stringify({ file, ...row, tolerance: describeTolerance(row.tolerance), ...outcome }),
  );
