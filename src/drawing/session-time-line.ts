/** A session from the cold engine to the sign-off, as a line of time: what is done, when the engine runs, how warm it is. */
import { box, line } from './line-figure.ts';
import type { LineFigure } from './line-figure.ts';

type Stretch = { readonly fromMinute: number; readonly toMinute: number };

/**
 * The parts of a session. Origin: warming up from common practice; the rest is from memory, rough, and another for
 * every engine.
 */
export const sessionParts: readonly (Stretch & { readonly letter: string; readonly words: string })[] = [
  {
    letter: 'A',
    fromMinute: 0,
    toMinute: 30,
    words: 'engine cold and off: hoses, gauge, thread left (half an hour, from memory)',
  },
  {
    letter: 'B',
    fromMinute: 30,
    toMinute: 37,
    words: 'warm up, fan on (5 to 8 minutes, common practice)',
  },
  {
    letter: 'C',
    fromMinute: 37,
    toMinute: 42,
    words: 'damp, and read every cylinder once (5 minutes, from memory)',
  },
  {
    letter: 'D',
    fromMinute: 42,
    toMinute: 75,
    words: 'turn, lock, speed back, read; again and again, with pauses (half an hour, from memory)',
  },
  {
    letter: 'E',
    fromMinute: 75,
    toMinute: 83,
    words: 'sign-off: every cylinder once more with the nuts tight, then the idle (from memory)',
  },
  {
    letter: 'F',
    fromMinute: 83,
    toMinute: 90,
    words: 'let it cool, close up, write the record (from memory; the road test follows)',
  },
];

/** When the engine runs: never longer at a time than the session’s reminder to rest. */
export const runningStretches: readonly Stretch[] = [
  { fromMinute: 30, toMinute: 45 },
  { fromMinute: 55, toMinute: 70 },
  { fromMinute: 75, toMinute: 83 },
];

/** Minutes in which an engine warms and cools by 63 %: for the shape of the curve alone, from memory. */
const warmingMinutes = 4;
const coolingMinutes = 25;

const viewBox = '0 0 420 168';
const left = 22;
const right = 402;
const endMinute = sessionParts.at(-1)!.toMinute;
const xOf = (minute: number): number => round(left + ((right - left) * minute) / endMinute);

const cold = 62;
const hot = 14;

/** Warmth from 0, cold, to 1, fully warm, at every minute. */
export function warmthByMinute(): readonly number[] {
  const warmth = [0];
  for (let minute = 0; minute < endMinute; minute++) {
    const runs = runningStretches.some(
      ({ fromMinute, toMinute }) => minute >= fromMinute && minute < toMinute,
    );
    const before = warmth[minute]!;
    warmth.push(
      runs ? 1 - (1 - before) * Math.exp(-1 / warmingMinutes) : before * Math.exp(-1 / coolingMinutes),
    );
  }
  return warmth;
}

const hatching = ({ fromMinute, toMinute }: Stretch): string => {
  const [from, to] = [xOf(fromMinute), xOf(toMinute)];
  const slant = 14;
  const count = Math.floor((to - from - slant) / 6) + 1;
  return Array.from({ length: count }, (_, k) => line(from + 6 * k, 122, from + 6 * k + slant, 108)).join('');
};

export const sessionTimeLine: LineFigure = {
  viewBox,
  title:
    'A line of ninety minutes in six parts: half an hour of preparation with the engine cold and off, warming up, first readings, half an hour of adjusting with pauses, sign-off, closing up. A curve above shows the engine warming while it runs and cooling in the pauses. A row beneath shows the three stretches in which it runs.',
  paths: [
    {
      d: warmthByMinute()
        .map(
          (warmth, minute) =>
            `${minute === 0 ? 'M' : 'L'}${xOf(minute)} ${round(cold - warmth * (cold - hot))}`,
        )
        .join(''),
    },
    ...sessionParts.map(({ fromMinute, toMinute }) => ({ d: box(xOf(fromMinute), 74, xOf(toMinute), 98) })),
    ...runningStretches.flatMap((stretch) => [
      { d: box(xOf(stretch.fromMinute), 108, xOf(stretch.toMinute), 122) },
      { d: hatching(stretch), thin: true as const },
    ]),
    { d: line(left, 134, right, 134) },
    {
      d: Array.from({ length: endMinute / 10 + 1 }, (_, k) => line(xOf(10 * k), 134, xOf(10 * k), 140)).join(
        '',
      ),
    },
  ],
  circles: [],
  callouts: [
    ...sessionParts.map(({ letter, fromMinute, toMinute, words }) => ({
      letter,
      x: (xOf(fromMinute) + xOf(toMinute)) / 2 - 4,
      y: 91,
      words,
    })),
    { letter: 'G', x: xOf(18), y: 54, words: 'how warm the engine is (the shape alone, no scale)' },
    { letter: 'H', x: xOf(24), y: 120, words: 'hatched: the engine runs; between, it rests and cools' },
  ],
  labels: [0, 30, 60, 90].map((minute) => ({
    text: String(minute),
    x: xOf(minute) - (minute === 0 ? 4 : 8),
    y: 156,
  })),
};

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
