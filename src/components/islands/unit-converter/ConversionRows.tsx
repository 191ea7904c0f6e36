import type { ConversionCell, ConversionLine } from '../../../calculators/index.ts';
import AfterPaint from '../calculator/AfterPaint.tsx';
import type { Copied } from '../calculator/use-calculator.ts';

interface Props {
  readonly caption: string;
  readonly lines: readonly ConversionLine[];
  readonly headings: readonly string[];
  /** The columns of `headings` to show; the first of all is the one that was asked for, and is set large. */
  readonly columns: readonly number[];
  readonly copied: Copied;
  readonly onCopy: (text: string) => void;
}

/** As many as a phone shows above its keys. */
const rowsAtOnce = 5;

/** A line for each unit; a tap on a figure copies it. */
export default function ConversionRows({ caption, lines, headings, columns, copied, onCopy }: Props) {
  const figure = (value: ConversionCell | null | undefined) =>
    value ? (
      <button
        type="button"
        class="plain"
        aria-label={`Copy ${value.label}`}
        onClick={() => onCopy(value.copied)}
      >
        {value.text}
      </button>
    ) : (
      <span class="quiet">none</span>
    );
  const note = (line: ConversionLine): string => {
    if (columns.some((column) => line.cells[column]?.copied === copied.text))
      return copied.done ? 'copied' : 'not copied';
    return line.typed ? 'typed' : '';
  };
  const row = (line: ConversionLine) => (
    <tr key={line.unitId} data-unit={line.unitId}>
      <th scope="row">
        <abbr title={line.unitName}>{line.symbol}</abbr> <small>{note(line)}</small>
      </th>
      {columns.map((column) => (
        <td key={column} class={column === 0 ? 'num answer' : 'num'}>
          {figure(line.cells[column])}
        </td>
      ))}
    </tr>
  );
  return (
    <table class="table answers">
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">unit</th>
          {columns.map((column) => (
            <th key={column} scope="col" class="num">
              {headings[column]}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {lines.slice(0, rowsAtOnce).map(row)}
        <AfterPaint>{lines.slice(rowsAtOnce).map(row)}</AfterPaint>
      </tbody>
    </table>
  );
}
