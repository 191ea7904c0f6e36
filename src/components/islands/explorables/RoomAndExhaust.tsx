import { useState } from 'preact/hooks';
import {
  airChangesLimits,
  carbonMonoxidePercentLimits,
  roomAndExhaust,
  roomCaution,
  roomExample,
  roomFinding,
  roomM3Limits,
  roomNotKnown,
} from '../../../calculators/index.ts';
import Warnings from '../calculator/Warnings.tsx';
import CurveFigure from './CurveFigure.tsx';
import Explorable from './Explorable.tsx';
import Slider from './Slider.tsx';

/** One engine in a room: how soon the mixed air is past what is published. It never says how long would be safe. */
export default function RoomAndExhaust() {
  const [room, setRoom] = useState(roomExample);
  const shown = roomAndExhaust(room);
  return (
    <Explorable
      id="room-and-exhaust"
      title="Try it: open the room"
      finding={roomFinding()}
      said={shown.said}
      before={<Warnings lines={[roomCaution]} />}
      controls={
        <>
          <Slider
            id="room-volume"
            label="Air in the room"
            value={room.volumeM3}
            text={shown.volume}
            limits={roomM3Limits}
            onChange={(volumeM3) => setRoom({ ...room, volumeM3 })}
          />
          <Slider
            id="room-changes"
            label="Changes of air"
            value={room.airChangesPerHour}
            text={shown.changes}
            limits={airChangesLimits}
            onChange={(airChangesPerHour) => setRoom({ ...room, airChangesPerHour })}
          />
          <Slider
            id="room-share"
            label="Carbon monoxide in the exhaust"
            value={room.carbonMonoxidePercent}
            text={shown.share}
            limits={carbonMonoxidePercentLimits}
            onChange={(carbonMonoxidePercent) => setRoom({ ...room, carbonMonoxidePercent })}
          />
        </>
      }
    >
      <CurveFigure
        curves={shown.curves}
        words={shown.plotWords}
        caption="Carbon monoxide in a room whose air is mixed through, on a logarithmic scale, with one invented engine of four cylinders."
      />
      <div class="not-known">
        <p>What this sum does not know:</p>
        <ul class="bullets">
          {roomNotKnown.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </div>
    </Explorable>
  );
}
