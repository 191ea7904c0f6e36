import type { Generation } from '../../../calculators/index.ts';
import { linkageDrawings } from '../../../drawing/linkages.ts';

/** A linkage drawn small; the words beside it say the same. */
export function LinkageDrawing({ generation }: { generation: Generation }) {
  const figure = linkageDrawings[generation];
  return (
    <svg class="linkage" viewBox={figure.viewBox} aria-hidden="true">
      <g class="line">
        {figure.paths.map((path) =>
          path.detail ? null : (
            <path key={path.d} d={path.d} class={path.dash ? 'dash' : path.thin ? 'thin' : undefined} />
          ),
        )}
        {figure.circles.map((circle) =>
          circle.detail ? null : (
            <circle
              key={`${circle.cx} ${circle.cy} ${circle.r}`}
              cx={circle.cx}
              cy={circle.cy}
              r={circle.r}
              class={circle.filled ? 'mark' : undefined}
            />
          ),
        )}
      </g>
    </svg>
  );
}
