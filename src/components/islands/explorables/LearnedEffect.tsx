import { useMemo, useState } from 'preact/hooks';
import {
  effectMmHgExample,
  effectsMmHg,
  learnedEffect,
  learnedFinding,
  learnedTurnsLimits,
} from '../../../calculators/index.ts';
import type { EffectMmHg } from '../../../calculators/index.ts';
import { learnedRowsOf } from '../../../drawing/learned-rows.ts';
import Choice from './Choice.tsx';
import Explorable from './Explorable.tsx';
import Slider from './Slider.tsx';

/** A session that learns what a turn does, from the readings alone. */
export default function LearnedEffect() {
  const [effectMmHg, setEffect] = useState<EffectMmHg>(effectMmHgExample);
  const [turns, setTurns] = useState<number>(learnedTurnsLimits.max);
  const finding = useMemo(learnedFinding, []);
  const effect = useMemo(() => learnedEffect(effectMmHg), [effectMmHg]);
  const rows = learnedRowsOf(effect, turns, learnedTurnsLimits.max + 1);
  const now = effect.learned[turns]!;
  return (
    <Explorable
      id="learned-effect"
      title="Try it: let the session learn"
      finding={finding}
      said={now.said}
      controls={
        <>
          <Choice
            name="learned-true"
            legend="A turn of this engine really does"
            value={effectMmHg}
            options={effectsMmHg.map((each) => [each, effect.choices[each]] as const)}
            onChange={setEffect}
          />
          <Slider
            id="learned-turns"
            label="Turns that have been read"
            value={turns}
            text={String(turns)}
            limits={learnedTurnsLimits}
            onChange={setTurns}
          />
        </>
      }
    >
      <figure class="figure">
        <svg class="strip" height={rows.height} role="img" aria-label={now.plotWords}>
          <g class="axis">
            <line x1={`${rows.axisX[0]}%`} x2={`${rows.axisX[1]}%`} y1={rows.axisY} y2={rows.axisY} />
            {rows.ticks.map(({ x }) => (
              <line key={x} x1={`${x}%`} x2={`${x}%`} y1={rows.axisY} y2={rows.axisY + 6} />
            ))}
            <line class="dash" x1={`${rows.trueX}%`} x2={`${rows.trueX}%`} y1="18" y2={rows.axisY} />
          </g>
          <text x={`${rows.trueX}%`} y="13" text-anchor="middle">
            really
          </text>
          {rows.ticks.map(({ x, label }) => (
            <text key={x} x={`${x}%`} y={rows.axisY + 22} text-anchor="middle">
              {label}
            </text>
          ))}
          <text x="100%" y={rows.axisY + 22} text-anchor="end">
            mmHg
          </text>
          {rows.rows.map((row) => (
            <g key={row.turns}>
              <text x="0" y={row.y + 5}>
                {row.turns}
              </text>
              <line class="whisker" x1={`${row.lowX}%`} x2={`${row.highX}%`} y1={row.y} y2={row.y} />
              <circle class="mark" cx={`${row.likelyX}%`} cy={row.y} r="5" />
              <text x="100%" y={row.y + 5} text-anchor="end">
                {row.label}
              </text>
            </g>
          ))}
        </svg>
        <figcaption>
          What is believed of the effect of a turn, in mmHg, after so many turns that have been read: the
          likeliest, and the range at 95 %. The engine is invented.
        </figcaption>
      </figure>
    </Explorable>
  );
}
