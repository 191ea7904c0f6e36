import { csvText } from '../../calculators/index.ts';
import { howSeen, sources, type SourceId } from '../sources.ts';

export type TableColumn = {
  readonly heading: string;
  /** Of all figures of the column; left out for words and bare numbers. */
  readonly unit?: string;
  /** Words; left out, the column holds figures. */
  readonly words?: true;
  /** Words that a page sets small beneath the first column; in a file they are a column of their own. */
  readonly beneath?: true;
};

export type TableRow = {
  /** One for each column, as the formatter wrote it; `noFigure` where there is none. */
  readonly cells: readonly string[];
  /** Where the figures of this row are from. */
  readonly sources: readonly [SourceId, ...SourceId[]];
};

/** A table of the handbook: one description for what the page draws and for the file that it offers. */
export type DataTable = {
  /** A sentence that names the table and says what it holds. */
  readonly caption: string;
  /** The first names the rows. */
  readonly columns: readonly [TableColumn, ...TableColumn[]];
  readonly rows: readonly TableRow[];
};

/** Stands in a cell that has no figure. */
export const noFigure = '–';

export const headingOf = ({ heading, unit }: TableColumn): string =>
  unit === undefined ? heading : `${heading}, ${unit}`;

/** A figure as files write it: the sign of the keyboard, no blank that is none; nothing where there is no figure. */
const cellForFile = (cell: string): string =>
  cell === noFigure ? '' : cell.replaceAll('\u00a0', ' ').replace(/−(?=\d)/gu, '-');

const citationOf = (id: SourceId): string => `${sources[id].citation} (${howSeen[sources[id].seen]})`;

/** The table as a file: a line of headings with their units, the rows, and where each row is from in the last column. */
export const csvOf = ({ columns, rows }: DataTable): string =>
  csvText([
    [
      ...columns.map(({ heading, unit }) => (unit === undefined ? heading : `${heading} (${unit})`)),
      'source',
    ],
    ...rows.map((row) => [
      ...row.cells.map(cellForFile),
      [...new Set(row.sources)].map(citationOf).join('; '),
    ]),
  ]);
