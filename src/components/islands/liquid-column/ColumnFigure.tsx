import type { LiquidColumnDescribed } from '../../../calculators/index.ts';
import { manometerDrawing } from '../../../drawing/manometers.ts';

/** The column as chosen, with what is measured; the words beneath say the same. */
export default function ColumnFigure({ answer }: { readonly answer: LiquidColumnDescribed }) {
  const figure = manometerDrawing(answer.kind, answer.sides);
  return (
    <figure class="figure">
      <svg viewBox={figure.viewBox} role="img" aria-label={figure.title}>
        <g class="line">
          {figure.paths.map(({ d, dash, thin }) => (
            <path key={d} d={d} class={dash ? 'dash' : thin ? 'thin' : undefined} />
          ))}
        </g>
        <g class="call" aria-hidden="true">
          {figure.callouts.map(({ letter, x, y }) => (
            <text key={letter} x={x} y={y}>
              {letter}
            </text>
          ))}
        </g>
      </svg>
      <figcaption>
        <b>Not to scale. {answer.levelWords}</b>
        <dl class="callouts">
          {figure.callouts.map(({ letter, words }) => (
            <>
              <dt>{letter}</dt>
              <dd>{words}</dd>
            </>
          ))}
        </dl>
      </figcaption>
    </figure>
  );
}
