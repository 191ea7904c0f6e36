import type { DescribedThreadTravel } from '../../../calculators/index.ts';
import TravelDrawing from './TravelDrawing.tsx';

interface Props {
  readonly answer: DescribedThreadTravel;
}

/** The thread of every screw after the plan and after the common move. The tables say the same. */
export default function TravelPlot({ answer: { marks, plot, shift } }: Props) {
  return (
    <figure class="figure">
      <TravelDrawing marks={marks} words={plot} />
      <figcaption>
        Each line is the thread of one screw, from shut to open. Solid: after the plan.
        {shift !== null && ' Hollow: after the plan and the common move.'}
      </figcaption>
    </figure>
  );
}
