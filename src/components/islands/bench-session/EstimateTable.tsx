import type { StripMark } from '../../../drawing/strip.ts';
import { figure, type Figures } from './words.ts';

/** The strip as a table. */
export function EstimateTable({ marks, figures }: { marks: readonly StripMark[]; figures: Figures }) {
  const cell = (pascals: number | undefined): string =>
    pascals === undefined ? '–' : figure(pascals, figures);
  return (
    <details>
      <summary>Show as a table</summary>
      <table class="table">
        <caption>Depression in {figures.unit}.</caption>
        <thead>
          <tr>
            <th scope="col">Carb.</th>
            <th scope="col" class="num">
              now
            </th>
            <th scope="col" class="num">
              95 %
            </th>
            <th scope="col" class="num">
              before
            </th>
            <th scope="col" class="num">
              after this move
            </th>
          </tr>
        </thead>
        <tbody>
          {marks.map((mark) => (
            <tr key={mark.number}>
              <th scope="row">{mark.number}</th>
              <td class="num">{cell(mark.depressionPa)}</td>
              <td class="num">± {cell(mark.halfWidthPa)}</td>
              <td class="num">{cell(mark.beforePa)}</td>
              <td class="num">{cell(mark.afterPa)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}
