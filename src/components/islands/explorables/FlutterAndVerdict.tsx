import { useState } from 'preact/hooks';
import {
  flutterFinding,
  spreadMmHgLimits,
  swingMmHgLimits,
  toldSwingExample,
  verdictUnderSwing,
} from '../../../calculators/index.ts';
import Explorable from './Explorable.tsx';
import ReadingsFigure from './ReadingsFigure.tsx';
import Slider from './Slider.tsx';

/** The same four readings under a calm and a lively needle. */
export default function FlutterAndVerdict() {
  const [told, setTold] = useState(toldSwingExample);
  const shown = verdictUnderSwing(told);
  return (
    <Explorable
      id="flutter-and-verdict"
      title="Try it: let the needle swing"
      finding={flutterFinding()}
      said={shown.said}
      controls={
        <>
          <Slider
            id="verdict-swing"
            label="Swing of the needle, each way"
            value={told.swingMmHg}
            text={shown.swing}
            limits={swingMmHgLimits}
            onChange={(swingMmHg) => setTold({ ...told, swingMmHg })}
          />
          <Slider
            id="verdict-spread"
            label="Readings apart"
            value={told.spreadMmHg}
            text={shown.spread}
            limits={spreadMmHgLimits}
            onChange={(spreadMmHg) => setTold({ ...told, spreadMmHg })}
          />
        </>
      }
    >
      <ReadingsFigure
        shown={shown}
        caption="Invented readings. The line at each mark is its uncertainty at 95 %; the band is the tolerance."
      />
    </Explorable>
  );
}
