import { useMemo, useState } from 'preact/hooks';
import {
  oneScrewLinkages,
  oneScrewMinutesLimits,
  oneScrewScene,
  oneTurnExample,
  turnOneScrew,
} from '../../../calculators/index.ts';
import type { OneScrewLinkage } from '../../../calculators/index.ts';
import Choice from './Choice.tsx';
import Explorable from './Explorable.tsx';
import ReadingsFigure from './ReadingsFigure.tsx';
import Slider from './Slider.tsx';

const linkageWords: Record<OneScrewLinkage, string> = {
  'all-adjustable': 'an adjuster for each',
  'paired-screws': 'screws between neighbours',
};

/** One screw of an invented engine, and what every gauge then shows. */
export default function TurnOneScrew() {
  const [linkage, setLinkage] = useState<OneScrewLinkage>('all-adjustable');
  const [turn, setTurn] = useState(oneTurnExample);
  const scene = useMemo(() => oneScrewScene(linkage), [linkage]);
  const shown = turnOneScrew(scene, turn);
  const choose = (next: OneScrewLinkage) => {
    setLinkage(next);
    setTurn({ ...turn, screw: 1 });
  };
  return (
    <Explorable
      id="turn-one-screw"
      title="Try it: turn one screw"
      finding="One screw moves every reading. What it opens reads lower; all that it leaves alone read higher, whether the speed is brought back or not."
      said={shown.said}
      controls={
        <>
          <Choice
            name="one-screw-linkage"
            legend="Linkage"
            value={linkage}
            options={oneScrewLinkages.map((each) => [each, linkageWords[each]] as const)}
            onChange={choose}
          />
          <Choice
            name="one-screw"
            legend="Turn the screw of"
            value={turn.screw}
            options={scene.moves.map((words, position) => [position + 1, words] as const)}
            onChange={(screw) => setTurn({ ...turn, screw })}
          />
          <Choice
            name="one-screw-speed"
            legend="The speed"
            value={turn.speedBack}
            options={[
              [true, 'brought back'],
              [false, 'left to itself'],
            ]}
            onChange={(speedBack) => setTurn({ ...turn, speedBack })}
          />
          <Slider
            id="one-screw-minutes"
            label="Turned by"
            value={turn.minutes}
            text={shown.amount}
            limits={oneScrewMinutesLimits}
            onChange={(minutes) => setTurn({ ...turn, minutes })}
          />
        </>
      }
    >
      <ReadingsFigure
        shown={shown}
        caption="Depression of each carburettor of an invented engine. Hollow: before the turn. Solid: after it."
      />
    </Explorable>
  );
}
