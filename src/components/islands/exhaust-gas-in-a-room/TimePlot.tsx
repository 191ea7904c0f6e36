import { timePlotOf } from '../../../drawing/time-plot.ts';
import type { TimePlotInput } from '../../../drawing/time-plot.ts';

interface Props {
  readonly input: TimePlotInput;
  /** What the plot shows, in words. */
  readonly label: string;
  /** Unit of the upright axis. */
  readonly unit: string;
  /** Unit of the level axis; minutes, unless another is given. */
  readonly across?: string;
}

/** Curves against time, or against what `across` says, and levels as lines across. The first curve is drawn whole, the others dashed. */
export default function TimePlot({ input, label, unit, across = 'minutes' }: Props) {
  const plot = timePlotOf(input);
  const bottom = plot.plotY + plot.plotHeight;
  const [x1, x2] = [`${plot.left}%`, `${plot.right}%`];
  return (
    <svg class="strip" height={plot.height} role="img" aria-label={label}>
      <text x="0" y="13">
        {unit}
      </text>
      {plot.levels.map(({ name, y }) => (
        <g key={name}>
          <line class="thin" x1={x1} x2={x2} y1={y} y2={y} />
          <text x={x2} y={y + 14} text-anchor="end">
            {name}
          </text>
        </g>
      ))}
      <svg
        x={x1}
        y={plot.plotY}
        width={`${plot.right - plot.left}%`}
        height={plot.plotHeight}
        viewBox={`0 0 1000 ${plot.plotHeight}`}
        preserveAspectRatio="none"
      >
        {plot.curves.map(({ name, path }, position) => (
          <g key={name} class={position === 0 ? 'line' : 'line dash'}>
            <path d={path} />
          </g>
        ))}
      </svg>
      {plot.curves.length > 1 &&
        plot.curves.map(({ name, nameY }) => (
          <text key={name} x={x2} dx="6" y={nameY + 5}>
            {name}
          </text>
        ))}
      <g class="axis">
        <line x1={x1} x2={x2} y1={bottom} y2={bottom} />
        <line x1={x1} x2={x1} y1={plot.plotY} y2={bottom} />
        {plot.ticksX.map(({ x }) => (
          <line key={x} x1={`${x}%`} x2={`${x}%`} y1={bottom} y2={bottom + 6} />
        ))}
      </g>
      {plot.ticksY.map(({ y, label: text }) => (
        <text key={y} x={x1} dx="-6" y={y + 5} text-anchor="end">
          {text}
        </text>
      ))}
      {plot.ticksX.map(({ x, label: text }, position) => (
        <text
          key={x}
          x={`${x}%`}
          y={bottom + 22}
          text-anchor={plot.right === 100 && position === plot.ticksX.length - 1 ? 'end' : 'middle'}
        >
          {text}
        </text>
      ))}
      <text x={x2} y={bottom + 40} text-anchor="end">
        {across}
      </text>
    </svg>
  );
}
