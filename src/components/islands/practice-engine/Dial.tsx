import type { RefObject } from 'preact';
import { needleTransform } from '../../../drawing/practice-dial.ts';
import type { PracticeDial } from '../../../drawing/practice-dial.ts';

interface Props {
  readonly dial: PracticeDial;
  /** Where the needle is first drawn. */
  readonly depressionPa: number;
  /** What moves the needle from then on. */
  readonly needle?: RefObject<SVGPathElement>;
  readonly words: string;
}

/** The gauge: a line drawing with one moving part. */
export function Dial({ dial, depressionPa, needle, words }: Props) {
  return (
    <svg class="dial" viewBox={dial.viewBox} role="img" aria-label={words}>
      <g class="line">
        <path d={dial.arc} />
        <path d={dial.long} />
      </g>
      <path class="thin" d={dial.middle} />
      <path class="thin" d={dial.short} />
      {dial.labels.map(({ x, y, text }) => (
        <text key={text} x={x} y={y} text-anchor="middle">
          {text}
        </text>
      ))}
      <text x={dial.unit.x} y={dial.unit.y} text-anchor="middle">
        {dial.unit.text}
      </text>
      <path
        class="mark needle"
        d={dial.needle}
        transform={needleTransform(dial, depressionPa)}
        {...(needle && { ref: needle })}
      />
      <circle class="mark" r={dial.hub} />
    </svg>
  );
}
