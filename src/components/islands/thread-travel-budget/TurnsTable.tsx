import type { AdjusterRow, SideCell } from '../../../calculators/index.ts';

interface Props {
  readonly caption: string;
  /** Heading of the turns that are made: the plan, or plan and common move together. */
  readonly turns: string;
  readonly rows: readonly AdjusterRow[];
  /** Whether what is left before the turns is shown too. */
  readonly now?: boolean;
}

const Cell = ({ cell }: { cell: SideCell }) => <td class={cell.short ? 'num late' : 'num'}>{cell.text}</td>;

/** Turns left on every adjuster; what is short or missing is marked by weight and sign, not by colour alone. */
export default function TurnsTable({ caption, turns, rows, now = false }: Props) {
  return (
    <table class="table">
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col" rowSpan={2}>
            No.
          </th>
          {now && (
            <th scope="colgroup" colSpan={2} class="num">
              left now
            </th>
          )}
          <th scope="col" rowSpan={2} class="num">
            {turns}
          </th>
          <th scope="colgroup" colSpan={2} class="num">
            left after
          </th>
        </tr>
        <tr>
          {(now ? ['now', 'after'] : ['after']).flatMap((when) =>
            ['close', 'open'].map((side) => (
              <th key={when + side} scope="col" class="num">
                {side}
              </th>
            )),
          )}
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.adjuster} data-adjuster={row.adjuster}>
            <th scope="row">{row.adjuster}</th>
            {now && (
              <>
                <Cell cell={row.now.closing} />
                <Cell cell={row.now.opening} />
              </>
            )}
            <td class="num">{row.turns}</td>
            <Cell cell={row.afterwards.closing} />
            <Cell cell={row.afterwards.opening} />
          </tr>
        ))}
      </tbody>
    </table>
  );
}
