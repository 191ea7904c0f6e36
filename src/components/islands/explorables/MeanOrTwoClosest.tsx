import { useState } from 'preact/hooks';
import {
  fourthMmHgExample,
  fourthMmHgLimits,
  meanOrTwoClosest,
  referenceFinding,
} from '../../../calculators/index.ts';
import type { ReferenceChosen } from '../../../calculators/index.ts';
import Choice from './Choice.tsx';
import Explorable from './Explorable.tsx';
import ReadingsFigure from './ReadingsFigure.tsx';
import Slider from './Slider.tsx';

/** What four readings are matched to, and who then has to be turned. */
export default function MeanOrTwoClosest() {
  const [fourthMmHg, setFourth] = useState<number>(fourthMmHgExample);
  const [chosen, setChosen] = useState<ReferenceChosen>('mean');
  const shown = meanOrTwoClosest(fourthMmHg, chosen);
  return (
    <Explorable
      id="mean-or-two-closest"
      title="Try it: choose what to match"
      finding={referenceFinding()}
      said={shown.said}
      controls={
        <>
          <Choice
            name="reference-drawn"
            legend="Draw the way to"
            value={chosen}
            options={[
              ['mean', 'the mean'],
              ['closest-two', 'the two closest'],
            ]}
            onChange={setChosen}
          />
          <Slider
            id="reference-fourth"
            label="Carburettor 4 reads"
            value={fourthMmHg}
            text={shown.fourth}
            limits={fourthMmHgLimits}
            onChange={setFourth}
          />
        </>
      }
    >
      <ReadingsFigure
        shown={shown}
        caption="Invented readings. The band is the tolerance about what is matched to; the arrow is the way of a carburettor that lies outside it."
      />
      <table class="table">
        <caption>How far each lies from both, in mmHg, and what to do with its throttle</caption>
        <thead>
          <tr>
            <th scope="col">No.</th>
            <th scope="col">Reads</th>
            <th scope="col">Mean</th>
            <th scope="col">Two closest</th>
          </tr>
        </thead>
        <tbody>
          {shown.rows.map((row) => (
            <tr key={row.carburettor}>
              <th scope="row">{row.carburettor}</th>
              <td>{row.reading}</td>
              <td>{row.mean}</td>
              <td>{row['closest-two']}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Explorable>
  );
}
