import { readingDecimals, type Bench } from '../../../calculators/index.ts';
import { stripOf, type StripMark } from '../../../drawing/strip.ts';
import { StripDrawing } from '../strip/StripDrawing.tsx';
import { stripWords, type Figures } from './words.ts';

/** The estimates on one scale: solid now, hollow before the last turn, arrow for this move, line for 95 %. */
export function StripPlot({
  bench,
  figures,
  marks,
}: {
  bench: Bench;
  figures: Figures;
  marks: readonly StripMark[];
}) {
  if (marks.length === 0)
    return (
      <svg class="strip" height="64" role="img" aria-label="No readings yet">
        <g class="axis">
          <line x1="8%" x2="72%" y1="32" y2="32" />
        </g>
        <text x="40%" y="22" text-anchor="middle">
          no readings yet
        </text>
      </svg>
    );
  const { setUp, unit, mark } = figures;
  const strip = stripOf({
    marks,
    tolerancePa: setUp.tolerancePa,
    ...(setUp.fixed === undefined ? {} : { reference: setUp.fixed }),
    unit,
    decimals: readingDecimals(setUp.gauge.resolutionPa, unit),
    mark,
  });
  return <StripDrawing strip={strip} unit={unit} words={stripWords(bench, figures)} />;
}
