/** The questions that lead to a kind of linkage, as a drawing: four stations on the left, where each answer ends on the right. */
import { box, line } from './line-figure.ts';
import type { Callout, LineFigure } from './line-figure.ts';

const stationX = 120;
const stationY = [34, 94, 154, 214] as const;
const radius = 16;
const endX = 270;
const stopX = 44;
const stopY = 274;

/** Where a station's own answer ends; the last station has two. */
const ends: readonly {
  readonly letter: string;
  readonly y: number;
  readonly from: number;
  readonly words: string;
}[] = [
  { letter: 'A', y: 34, from: 34, words: 'question 1, one cable for each: separate cables' },
  { letter: 'B', y: 94, from: 94, words: 'question 2, an air screw in every body: bypass screws' },
  { letter: 'C', y: 154, from: 154, words: 'question 3, between neighbours: screws between neighbours' },
  {
    letter: 'D',
    y: 198,
    from: 214,
    words: 'question 4, as many screws as carburettors: ganged, all adjustable',
  },
  { letter: 'E', y: 232, from: 214, words: 'question 4, one screw fewer: ganged, one fixed' },
];

const arrow = (x: number, y: number): string => `M${x - 7} ${y - 5}L${x} ${y}L${x - 7} ${y + 5}`;

/** An octagon, as on the road: stop. */
const stop = (x: number, y: number, r: number): string => {
  const short = r * (Math.SQRT2 - 1);
  return `M${x - short} ${y - r}H${x + short}L${x + r} ${y - short}V${y + short}L${x + short} ${y + r}H${x - short}L${x - r} ${y + short}V${y - short}Z`;
};

export const linkagePath: LineFigure = {
  viewBox: '0 0 400 306',
  title:
    'Four questions one beneath the other. Each leads to the right to a kind of linkage, or down to the next question. From each a dashed line leads to the left and down to a stop sign: none of these.',
  paths: [
    ...ends.map(({ y, from }) => ({ d: `${line(stationX + radius, from, endX, y)}${arrow(endX, y)}` })),
    ...ends.map(({ y }) => ({ d: box(endX, y - 14, endX + 40, y + 14) })),
    ...stationY
      .slice(1)
      .map((y, above) => ({ d: line(stationX, (stationY[above] ?? 0) + radius, stationX, y - radius) })),
    ...stationY.map((y) => ({ d: line(stationX - radius, y, stopX, y), dash: true as const })),
    { d: line(stopX, stationY[0], stopX, stopY - 18), dash: true },
    { d: stop(stopX, stopY, 18) },
  ],
  circles: stationY.map((cy) => ({ cx: stationX, cy, r: radius })),
  callouts: [
    ...ends.map(({ letter, y, words }): Callout => ({ letter, x: endX + 15, y: y + 5, words })),
    {
      letter: 'F',
      x: stopX - 4,
      y: stopY + 5,
      words: 'neither, both, or not sure: none of these; stop and read the service manual',
    },
  ],
  labels: stationY.map((y, index) => ({ text: String(index + 1), x: stationX - 4, y: y + 5 })),
};
