import { useState } from 'preact/hooks';
import {
  altitudeFinding,
  heightMExample,
  heightMLimits,
  readingAtHeight,
} from '../../../calculators/index.ts';
import CurveFigure from './CurveFigure.tsx';
import Explorable from './Explorable.tsx';
import Slider from './Slider.tsx';

/** One reading, carried from the sea to a height. */
export default function AltitudeAndReading() {
  const [heightM, setHeight] = useState<number>(heightMExample);
  const shown = readingAtHeight(heightM);
  return (
    <Explorable
      id="altitude-and-reading"
      title="Try it: go up"
      finding={altitudeFinding()}
      said={shown.said}
      controls={
        <Slider
          id="altitude-height"
          label="Height above the sea"
          value={heightM}
          text={shown.height}
          limits={heightMLimits}
          onChange={setHeight}
        />
      }
    >
      <CurveFigure
        curves={shown.curves}
        words={shown.plotWords}
        caption="Depression of one invented engine against the height. Solid: every screw untouched. Dashed: its speed set again. A real one lies between."
      />
    </Explorable>
  );
}
