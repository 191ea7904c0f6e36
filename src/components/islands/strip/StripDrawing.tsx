import type { Strip } from '../../../drawing/strip.ts';
import { CarburettorMark } from './CarburettorMark.tsx';

interface Props {
  readonly strip: Strip;
  /** Beneath the scale. */
  readonly unit: string;
  /** What the drawing shows, for those who do not see it. */
  readonly words: string;
}

/** Carburettors on one scale: solid now, hollow before the last turn, arrow for a move, line for the uncertainty. */
export function StripDrawing({ strip, unit, words }: Props) {
  return (
    <svg class="strip" height={strip.height} role="img" aria-label={words}>
      <rect
        class="band"
        x={`${strip.bandX}%`}
        y="20"
        width={`${strip.bandWidth}%`}
        height={strip.axisY - 20}
      />
      <text x={`${strip.bandMiddleX}%`} y="13" text-anchor="middle">
        tolerance
      </text>
      <g class="axis">
        <line x1={`${strip.axisX1}%`} x2={`${strip.axisX2}%`} y1={strip.axisY} y2={strip.axisY} />
        {strip.ticks.map(({ x }) => (
          <line key={x} x1={`${x}%`} x2={`${x}%`} y1={strip.axisY} y2={strip.axisY + 6} />
        ))}
      </g>
      {strip.ticks.map(({ x, label }) => (
        <text key={x} x={`${x}%`} y={strip.axisY + 22} text-anchor="middle">
          {label}
        </text>
      ))}
      <text x="100%" y={strip.axisY + 22} text-anchor="end">
        {unit}
      </text>
      {strip.rows.map((row) => (
        <g key={row.number}>
          <text x="0" y={row.y + 5}>
            {row.number}
          </text>
          {row.beforeX !== null && (
            <svg class="ghost" x={`${row.beforeX}%`} y={row.y} overflow="visible">
              <CarburettorMark number={row.number} />
            </svg>
          )}
          <line class="whisker" x1={`${row.whiskerX1}%`} x2={`${row.whiskerX2}%`} y1={row.y} y2={row.y} />
          <svg class="mark" x={`${row.x}%`} y={row.y} overflow="visible">
            <CarburettorMark number={row.number} />
          </svg>
          {row.afterX !== null && (
            <g class="go">
              <line
                class="whisker dash"
                x1={`${row.x}%`}
                x2={`${row.afterX}%`}
                y1={row.y + 11}
                y2={row.y + 11}
              />
              <svg class="line" x={`${row.afterX}%`} y={row.y + 11} overflow="visible">
                <path d={row.afterX < row.x ? 'M7-5 0 0 7 5' : 'M-7-5 0 0-7 5'} />
              </svg>
            </g>
          )}
          <text x="100%" y={row.y + 5} text-anchor="end">
            {row.label}
          </text>
        </g>
      ))}
    </svg>
  );
}
