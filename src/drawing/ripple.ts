import { formatExact, formatSignificant } from '../calculators/index.ts';
import type { DecimalMark, RippleSample } from '../calculators/index.ts';
import { ticksIn } from './ticks.ts';

/** Places in per cent of the width (`…X`) and pixels (`…Y`); the paths in a frame of their own that is stretched. */
export type RippleDrawing = {
  readonly height: number;
  readonly frame: {
    readonly x: number;
    readonly width: number;
    readonly y: number;
    readonly height: number;
  };
  /** In a view box of 0 0 1000 100. */
  readonly before: string;
  readonly after: string;
  readonly middleY: number;
  readonly levels: readonly { readonly y: number; readonly label: string }[];
  readonly ticks: readonly { readonly x: number; readonly label: string }[];
};

const frame = { x: 14, width: 84, y: 8, height: 120 };
const viewWidth = 1000;
const viewHeight = 100;
/** Free space above and beneath the larger swing, in view units. */
const margin = 4;

/** The needle with the tap open and damped, against time: one scale for both, so that what is left can be seen. */
export function rippleDrawingOf(samples: readonly RippleSample[], mark: DecimalMark): RippleDrawing {
  const end = samples.at(-1)?.timeS ?? 0;
  const swing = Math.max(...samples.map(({ before, after }) => Math.max(Math.abs(before), Math.abs(after))));
  const scale = swing === 0 ? 0 : (viewHeight / 2 - margin) / swing;
  const path = (of: (sample: RippleSample) => number): string =>
    samples
      .map((sample, k) => {
        const x = round((sample.timeS / end) * viewWidth);
        return `${k === 0 ? 'M' : 'L'}${x} ${round(viewHeight / 2 - scale * of(sample))}`;
      })
      .join('');
  const middleY = frame.y + frame.height / 2;
  const levelY = (value: number): number => round(middleY - (scale * value * frame.height) / viewHeight);
  const label = (value: number): string => formatSignificant(value, 2, { mark });
  const milliseconds = ticksIn(0, end * 1000, 4);
  return {
    height: frame.y + frame.height + 42,
    frame,
    before: path(({ before }) => before),
    after: path(({ after }) => after),
    middleY,
    levels:
      swing === 0
        ? [{ y: middleY, label: '0' }]
        : [
            { y: levelY(swing), label: `+${label(swing)}` },
            { y: middleY, label: '0' },
            { y: levelY(-swing), label: label(-swing) },
          ],
    ticks: milliseconds.map((value) => ({
      x: round(frame.x + (value / (end * 1000)) * frame.width),
      label: formatExact(value, { mark }),
    })),
  };
}

const round = (value: number): number => Math.round(value * 100) / 100;
