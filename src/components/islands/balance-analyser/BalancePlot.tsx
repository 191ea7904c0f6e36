import { pressureUnit } from '../../../calculators/index.ts';
import type { DescribedBalance } from '../../../calculators/index.ts';
import { stripOf } from '../../../drawing/strip.ts';
import { StripDrawing } from '../strip/StripDrawing.tsx';

interface Props {
  readonly answer: DescribedBalance;
}

/** What every carburettor reads on one scale; the last table of the answer says the same. */
export default function BalancePlot({ answer: { plot, plotWords } }: Props) {
  return (
    <figure class="figure">
      <StripDrawing strip={stripOf(plot)} unit={pressureUnit(plot.unit).symbol} words={plotWords} />
      <figcaption>
        Depression of each carburettor. The line is its uncertainty, the band is as wide as the tolerance
        {plot.reference === undefined ? ' about the middle' : ` about carburettor ${plot.reference}`}.
      </figcaption>
    </figure>
  );
}
