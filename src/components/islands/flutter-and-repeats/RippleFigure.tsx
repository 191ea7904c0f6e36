import type { FlutterDescribed } from '../../../calculators/index.ts';
import { rippleDrawingOf } from '../../../drawing/ripple.ts';

/** The needle against time: dashed with the tap open, solid as it is damped. */
export default function RippleFigure({ answer }: { readonly answer: FlutterDescribed }) {
  const drawing = rippleDrawingOf(answer.ripple, answer.mark);
  const { frame } = drawing;
  return (
    <figure class="figure">
      <svg class="strip" height={drawing.height} role="img" aria-label={answer.rippleWords}>
        <g class="axis">
          <line x1={`${frame.x}%`} x2={`${frame.x}%`} y1={frame.y} y2={frame.y + frame.height} />
          <line
            x1={`${frame.x}%`}
            x2={`${frame.x + frame.width}%`}
            y1={frame.y + frame.height}
            y2={frame.y + frame.height}
          />
          <line
            x1={`${frame.x}%`}
            x2={`${frame.x + frame.width}%`}
            y1={drawing.middleY}
            y2={drawing.middleY}
          />
          {drawing.ticks.map(({ x }) => (
            <line
              key={x}
              x1={`${x}%`}
              x2={`${x}%`}
              y1={frame.y + frame.height}
              y2={frame.y + frame.height + 6}
            />
          ))}
        </g>
        <svg
          class="line"
          x={`${frame.x}%`}
          y={frame.y}
          width={`${frame.width}%`}
          height={frame.height}
          viewBox="0 0 1000 100"
          preserveAspectRatio="none"
        >
          <path class="dash" d={drawing.before} />
          <path d={drawing.after} />
        </svg>
        {drawing.levels.map(({ y, label }) => (
          <text key={label} x={`${frame.x - 1.5}%`} y={y + 5} text-anchor="end">
            {label}
          </text>
        ))}
        {drawing.ticks.map(({ x, label }) => (
          <text key={x} x={`${x}%`} y={frame.y + frame.height + 22} text-anchor="middle">
            {label}
          </text>
        ))}
        <text x="0" y={frame.y + frame.height + 40}>
          {answer.unitSymbol}
        </text>
        <text x="98%" y={frame.y + frame.height + 40} text-anchor="end">
          ms
        </text>
      </svg>
      <figcaption>
        Dashed: the needle with the tap open. Solid: damped. Three pulls of this take-off, drawn as a sine.{' '}
        {answer.rippleWords}
      </figcaption>
    </figure>
  );
}
