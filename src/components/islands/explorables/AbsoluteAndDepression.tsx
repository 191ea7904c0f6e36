import { useState } from 'preact/hooks';
import {
  absoluteAndDepression,
  airAndIntakeExample,
  ambientHPaLimits,
  depressionFinding,
  intakeHPaLimits,
} from '../../../calculators/index.ts';
import { pressureBarsOf } from '../../../drawing/pressure-bars.ts';
import Explorable from './Explorable.tsx';
import Slider from './Slider.tsx';

/** One intake, counted from nothing and from the air outside. */
export default function AbsoluteAndDepression() {
  const [state, setState] = useState(airAndIntakeExample);
  const shown = absoluteAndDepression(state);
  const drawing = pressureBarsOf(shown.ambientPa, shown.absolutePa);
  return (
    <Explorable
      id="absolute-and-depression"
      title="Try it: change the weather"
      finding={depressionFinding()}
      said={shown.said}
      controls={
        <>
          <Slider
            id="air-outside"
            label="Air outside"
            value={state.ambientHPa}
            text={shown.ambient}
            limits={ambientHPaLimits}
            onChange={(ambientHPa) => setState({ ...state, ambientHPa })}
          />
          <Slider
            id="air-intake"
            label="Intake, absolute"
            value={state.intakeHPa}
            text={shown.absolute}
            limits={intakeHPaLimits}
            onChange={(intakeHPa) => setState({ ...state, intakeHPa })}
          />
        </>
      }
    >
      <figure class="figure">
        <svg class="strip" height={drawing.height} role="img" aria-label={shown.said}>
          <g class="axis">
            {[drawing.ambientX, drawing.intakeX].map((x, position) => (
              <line key={position} class="dash" x1={`${x}%`} x2={`${x}%`} y1="38" y2={drawing.axisY} />
            ))}
            <line
              x1={`${drawing.axisX[0]}%`}
              x2={`${drawing.axisX[1]}%`}
              y1={drawing.axisY}
              y2={drawing.axisY}
            />
            {drawing.ticks.map(({ x }) => (
              <line key={x} x1={`${x}%`} x2={`${x}%`} y1={drawing.axisY} y2={drawing.axisY + 6} />
            ))}
          </g>
          <text x="97%" y="13" text-anchor="end">
            air outside {shown.ambient}
          </text>
          <text x="97%" y="31" text-anchor="end">
            intake {shown.absolute}
          </text>
          {drawing.bars.map(({ name, y, fromX, toX }) => (
            <g key={name}>
              <text x={`${drawing.axisX[0]}%`} y={y - 10}>
                {name}
              </text>
              <line class="whisker" x1={`${fromX}%`} x2={`${toX}%`} y1={y} y2={y} />
              <line class="whisker" x1={`${fromX}%`} x2={`${fromX}%`} y1={y - 7} y2={y + 7} />
              <circle class="mark" cx={`${toX}%`} cy={y} r="5" />
            </g>
          ))}
          {drawing.ticks.map(({ x, label }) => (
            <text key={x} x={`${x}%`} y={drawing.axisY + 22} text-anchor="middle">
              {label}
            </text>
          ))}
          <text x="97%" y={drawing.axisY + 40} text-anchor="end">
            hPa
          </text>
        </svg>
        <figcaption>
          Both lines end at the intake. The absolute pressure is counted from nothing, the depression back
          from the air outside.
        </figcaption>
      </figure>
    </Explorable>
  );
}
