import type { ConversionCell, ConversionLine } from '../../../calculators/index.ts';
import AfterPaint from '../calculator/AfterPaint.tsx';
import type { Copied } from '../calculator/use-calculator.ts';

interface Props {
  readonly caption: string;
  readonly lines: readonly ConversionLine[];
  readonly headings: readonly string[];
  /** The columns of `headings` to show; the first of all is the one that was asked for, and is set large. */
  readonly columns: readonly number[];
  /** Lines that are drawn at once, the others after the paint; all of them if left out. */
  readonly first?: number;
  readonly copied: Copied;
  readonly onCopy: (text: string) => void;
}

/** A line for each unit; a tap on a figure copies it. */
export default function ConversionRows({ caption, lines, headings, columns, first, copied, onCopy }: Props) {
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
  const note = (cells: ConversionLine['cells'], typed: boolean): string | false => {
    if (columns.some((column) => cells[column]?.copied === copied.text))
      return copied.done ? 'copied' : 'not copied';
    return typed && 'typed';
  };
  const row = ({ unitId, unitName, symbol, typed, cells }: ConversionLine) => {
    const noted = note(cells, typed);
    return (
      <tr key={unitId} data-unit={unitId}>
        <th scope="row">
          <abbr title={unitName}>{symbol}</abbr>
          {noted && <small> {noted}</small>}
        </th>
        {columns.map((column) => (
          <td key={column} class={column === 0 ? 'num answer' : 'num'}>
            {figure(cells[column])}
          </td>
        ))}
      </tr>
    );
  };
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
        {lines.slice(0, first).map(row)}
        {first !== undefined && <AfterPaint draw={() => lines.slice(first).map(row)} />}
      </tbody>
    </table>
  );
}
