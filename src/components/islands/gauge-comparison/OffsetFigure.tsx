import type { GaugeDescribed } from '../../../calculators/index.ts';
import { offsetStripOf } from '../../../drawing/offset-strip.ts';
import { CarburettorMark } from '../strip/CarburettorMark.tsx';

/** The offsets on one scale: the line at no offset is what the gauges are held against. */
export default function OffsetFigure({ answer }: { readonly answer: GaugeDescribed }) {
  const strip = offsetStripOf(answer.marks, answer.mark);
  return (
    <figure class="figure">
      <svg class="strip" height={strip.height} role="img" aria-label={answer.plotWords}>
        <g class="axis">
          <line x1={`${strip.axisX1}%`} x2={`${strip.axisX2}%`} y1={strip.axisY} y2={strip.axisY} />
          {strip.ticks.map(({ x }) => (
            <line key={x} x1={`${x}%`} x2={`${x}%`} y1={strip.axisY} y2={strip.axisY + 6} />
          ))}
          <line class="dash" x1={`${strip.zeroX}%`} x2={`${strip.zeroX}%`} y1="18" y2={strip.axisY} />
        </g>
        <text x={`${strip.zeroX}%`} y="13" text-anchor="middle">
          {answer.heldAgainst}
        </text>
        {strip.ticks.map(({ x, label }) => (
          <text key={x} x={`${x}%`} y={strip.axisY + 22} text-anchor="middle">
            {label}
          </text>
        ))}
        <text x="100%" y={strip.axisY + 22} text-anchor="end">
          {answer.unitSymbol}
        </text>
        {strip.rows.map((row) => (
          <g key={row.gauge}>
            <text x="0" y={row.y + 5}>
              {row.gauge}
            </text>
            <line class="whisker" x1={`${row.whiskerX1}%`} x2={`${row.whiskerX2}%`} y1={row.y} y2={row.y} />
            <svg class="mark" x={`${row.x}%`} y={row.y} overflow="visible">
              <CarburettorMark number={row.gauge} />
            </svg>
            <text x="100%" y={row.y + 5} text-anchor="end">
              {row.label}
            </text>
          </g>
        ))}
      </svg>
      <figcaption>{answer.plotWords}</figcaption>
    </figure>
  );
}
