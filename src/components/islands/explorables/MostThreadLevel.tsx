import { useMemo, useState } from 'preact/hooks';
import { commonHoursLimits, mostThreadLevel, threadAtLevel } from '../../../calculators/index.ts';
import TravelDrawing from '../thread-travel-budget/TravelDrawing.tsx';
import Explorable from './Explorable.tsx';
import Slider from './Slider.tsx';

/** All adjusters together, and what is left of every thread. */
export default function MostThreadLevel() {
  const most = useMemo(mostThreadLevel, []);
  const [hours, setHours] = useState(most.hours);
  const shown = threadAtLevel(hours);
  return (
    <Explorable
      id="most-thread-level"
      title="Try it: choose the level"
      finding={most.finding}
      said={shown.said}
      controls={
        <>
          <Slider
            id="common-hours"
            label="All adjusters together"
            value={hours}
            text={shown.amount}
            limits={commonHoursLimits}
            onChange={setHours}
          />
          <p class="actions">
            <button type="button" class="button" onClick={() => setHours(0)}>
              Match the two closest
            </button>
            <button type="button" class="button" onClick={() => setHours(most.hours)}>
              Leave the most thread
            </button>
          </p>
        </>
      }
    >
      <figure class="figure">
        <TravelDrawing marks={shown.marks} words={shown.plotWords} />
        <figcaption>
          Each line is the thread of one adjuster, invented. Hollow: level with the two closest. Solid: at the
          level chosen. A mark beyond the end of its line has no thread.
        </figcaption>
      </figure>
    </Explorable>
  );
}
