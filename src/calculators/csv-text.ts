/** A number as it is written for a file: it may begin with its sign, and no spreadsheet takes it for a formula. */
const plainNumber = /^-?\d+(?:\.\d+)?(?:e-?\d+)?$/u;

/** What spreadsheets take for a formula, also after blanks, in ASCII and in full width. */
const beginsLikeFormula = /^\s*[=+\-@\uff1d\uff0b\uff0d\uff20]|^[\t\r\n]/u;

/** A cell that begins like a formula gets an apostrophe in front, which spreadsheets show as text. */
const neutralised = (cell: string): string =>
  beginsLikeFormula.test(cell) && !plainNumber.test(cell) ? `'${cell}` : cell;

const quoted = (cell: string): string => (/[",\r\n]/u.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);

/**
 * Rows of cells as comma-separated text: every line ends with CR LF, and cells with commas, quotes or line ends are
 * quoted. All rows have as many cells as the first; anything else is our own mistake, and throws.
 * Source: Y. Shafranovich, Common format and MIME type for comma-separated values (CSV) files, RFC 4180, 2005, section 2.
 */
export function csvText(rows: readonly (readonly string[])[]): string {
  const width = rows[0]?.length;
  return rows
    .map((row) => {
      if (row.length !== width) throw new Error(`a row of ${row.length} cells in a table of ${width}`);
      return `${row.map((cell) => quoted(neutralised(cell))).join(',')}\r\n`;
    })
    .join('');
}
