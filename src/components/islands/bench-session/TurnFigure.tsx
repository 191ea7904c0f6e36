import { clockwiseTurns, describeClockMinutes, type OpeningDirection } from '../../../calculators/index.ts';
import { clockFace } from '../../../drawing/clock-face.ts';
import { handWords } from './words.ts';

/** How far to turn and which way, seen from the screwdriver's end. */
export function TurnFigure({ opens, turns }: { opens: OpeningDirection; turns: number }) {
  const face = clockFace(clockwiseTurns(opens, turns));
  const direction = handWords(opens, turns);
  const minutes = describeClockMinutes(turns);
  return (
    <figure class="turn">
      <svg
        viewBox="-56 -56 112 112"
        role="img"
        aria-label={`A clock face: ${direction} by ${minutes} from 12`}
      >
        <path class="mark" d={face.sweep} />
        <g class="line">
          <circle r="36" />
          <path d={face.ticks} />
          <path d={face.arrow} />
        </g>
      </svg>
      <figcaption>
        {direction === 'clockwise' ? 'clockwise' : 'anti\u00adclockwise'}
        <br />
        {minutes}
      </figcaption>
    </figure>
  );
}
