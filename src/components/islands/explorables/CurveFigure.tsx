import type { Curves } from '../../../calculators/index.ts';
import { curveStripOf } from '../../../drawing/curve-strip.ts';

interface Props {
  readonly curves: Curves;
  /** What the figure shows, for those who do not see it. */
  readonly words: string;
  readonly caption: string;
}

/** Curves on axes that keep still; the first is drawn whole, the others dashed; a line and dots where one is. */
export default function CurveFigure({ curves, words, caption }: Props) {
  const strip = curveStripOf(curves);
  const { frame, atX } = strip;
  const [x1, x2] = [`${frame.x}%`, `${frame.x + frame.width}%`];
  const bottom = frame.y + frame.height;
  return (
    <figure class="figure">
      <svg class="strip" height={strip.height} role="img" aria-label={words}>
        <text x="0" y="13">
          {curves.y.unit}
        </text>
        <svg
          x={x1}
          y={frame.y}
          width={`${frame.width}%`}
          height={frame.height}
          viewBox="0 0 1000 100"
          preserveAspectRatio="none"
        >
          {strip.curves.map(({ name, path }, position) => (
            <g key={name} class={position === 0 ? 'line' : 'line dash'}>
              <path d={path} />
            </g>
          ))}
        </svg>
        {strip.levels.map(({ name, y }) => (
          <g key={name}>
            <line class="thin" x1={x1} x2={x2} y1={y} y2={y} />
            <text class="over" x={x2} y={y + 15} text-anchor="end">
              {name}
            </text>
          </g>
        ))}
        <g class="axis">
          <line x1={x1} x2={x2} y1={bottom} y2={bottom} />
          <line x1={x1} x2={x1} y1={frame.y} y2={bottom} />
          {strip.ticksX.map(({ at }) => (
            <line key={at} x1={`${at}%`} x2={`${at}%`} y1={bottom} y2={bottom + 6} />
          ))}
          {atX !== null && <line class="dash" x1={`${atX}%`} x2={`${atX}%`} y1={frame.y} y2={bottom} />}
        </g>
        {atX !== null &&
          strip.curves.map(
            ({ name, atY }) =>
              atY !== null && <circle key={name} class="mark" cx={`${atX}%`} cy={atY} r="5" />,
          )}
        {strip.ticksY.map(({ at, label }) => (
          <text key={at} x={x1} dx="-6" y={at + 5} text-anchor="end">
            {label}
          </text>
        ))}
        {strip.ticksX.map(({ at, label }) => (
          <text key={at} x={`${at}%`} y={bottom + 22} text-anchor="middle">
            {label}
          </text>
        ))}
        <text x={x2} y={bottom + 40} text-anchor="end">
          {curves.x.unit}
        </text>
      </svg>
      <figcaption>{caption}</figcaption>
    </figure>
  );
}
