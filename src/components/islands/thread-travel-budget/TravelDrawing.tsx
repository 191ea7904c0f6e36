import type { TravelMark } from '../../../calculators/index.ts';
import { travelStripOf } from '../../../drawing/thread-travel-strip.ts';
import { CarburettorMark } from '../strip/CarburettorMark.tsx';

interface Props {
  readonly marks: readonly TravelMark[];
  /** What the drawing shows, for those who do not see it. */
  readonly words: string;
}

/** A line a screw, as long as its thread: solid where the plan brings it, hollow where another would. */
export default function TravelDrawing({ marks, words }: Props) {
  const strip = travelStripOf(marks);
  return (
    <svg class="strip" height={strip.height} role="img" aria-label={words}>
      <text x={`${strip.nowX}%`} y="13" text-anchor="middle">
        ← close · now · open →
      </text>
      <g class="axis">
        <line x1={`${strip.axisX[0]}%`} x2={`${strip.axisX[1]}%`} y1={strip.axisY} y2={strip.axisY} />
        <line class="dash" x1={`${strip.nowX}%`} x2={`${strip.nowX}%`} y1="20" y2={strip.axisY} />
        {strip.ticks.map(({ x }) => (
          <line key={x} x1={`${x}%`} x2={`${x}%`} y1={strip.axisY} y2={strip.axisY + 6} />
        ))}
      </g>
      {strip.ticks.map(({ x, label }) => (
        <text key={x} x={`${x}%`} y={strip.axisY + 22} text-anchor="middle">
          {label}
        </text>
      ))}
      <text x="0" y={strip.axisY + 22}>
        turns
      </text>
      {strip.rows.map(({ adjuster, y, endX, plannedX, beyond, shiftedX }) => (
        <g key={adjuster ?? 'idle'} class={beyond ? 'late' : undefined}>
          <text x="0" y={y + 5}>
            {adjuster ?? 'idle'}
          </text>
          <line class="whisker" x1={`${endX[0]}%`} x2={`${endX[1]}%`} y1={y} y2={y} />
          {endX.map((x) => (
            <line key={x} class="whisker" x1={`${x}%`} x2={`${x}%`} y1={y - 7} y2={y + 7} />
          ))}
          {beyond && <line class="whisker dash" x1={`${strip.nowX}%`} x2={`${plannedX}%`} y1={y} y2={y} />}
          {shiftedX !== null && (
            <svg class="ghost" x={`${shiftedX}%`} y={y} overflow="visible">
              <CarburettorMark number={adjuster ?? 1} />
            </svg>
          )}
          <svg class="mark" x={`${plannedX}%`} y={y} overflow="visible">
            <CarburettorMark number={adjuster ?? 1} />
          </svg>
        </g>
      ))}
    </svg>
  );
}
