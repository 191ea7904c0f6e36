import { pressureUnit } from '../../../calculators/index.ts';
import type { DrawnReadings } from '../../../calculators/index.ts';
import { stripOf } from '../../../drawing/strip.ts';
import { StripDrawing } from '../strip/StripDrawing.tsx';

interface Props {
  readonly shown: DrawnReadings;
  /** What the marks mean. */
  readonly caption: string;
}

/** Readings on a scale that keeps still. */
export default function ReadingsFigure({ shown: { plot, plotWords }, caption }: Props) {
  return (
    <figure class="figure">
      <StripDrawing strip={stripOf(plot)} unit={pressureUnit(plot.unit).symbol} words={plotWords} />
      <figcaption>{caption}</figcaption>
    </figure>
  );
}
