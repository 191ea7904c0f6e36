/** The pushes that a crank gets in one cycle, each as high as the air that its cylinder draws. */
import { line } from './line-figure.ts';
import type { LineFigure } from './line-figure.ts';

/** What each cylinder draws over the mean of all, in the order in which they fire, and the numbers of the cylinders. */
export type PowerStrokes = {
  readonly order: readonly number[];
  readonly before: readonly number[];
  readonly after: readonly number[];
};

const left = 40;
const width = 340;
const fullHeight = 58;
/** Differences of a few per cent would not be seen: they are drawn so many times as large, and the caption says so. */
export const enlarged = 4;

const curve = (shares: readonly number[], baseY: number): string => {
  const each = width / shares.length;
  return shares
    .map((share, k) => {
      const height = fullHeight * (1 + enlarged * (share - 1));
      const x = left + k * each;
      // A half sine by one cubic: its handles stand a third of the width in, and 4/3 of the height up.
      return `M${round(x)} ${baseY}C${round(x + each / 3)} ${round(baseY - (4 / 3) * height)} ${round(x + (2 * each) / 3)} ${round(baseY - (4 / 3) * height)} ${round(x + each)} ${baseY}`;
    })
    .join('');
};

/** Two rows of pushes: as found, and once the set is level. A dashed line marks the height of equal pushes. */
export function powerStrokesFigure({ order, before, after }: PowerStrokes): LineFigure {
  const [upperY, lowerY] = [96, 204];
  const each = width / order.length;
  return {
    viewBox: '0 0 400 236',
    title: `Two rows of ${order.length} pushes on the crank, one for each cylinder in the order in which they fire. Above, as found: the pushes differ in height, and the highest belongs to the cylinder with the lowest depression. Below, level: all reach the dashed line.`,
    paths: [
      ...[upperY, lowerY].flatMap((y) => [
        { d: line(left, y, left + width, y) },
        { d: line(left, y - fullHeight, left + width, y - fullHeight), dash: true as const },
        ...order.map((_, k) => ({
          d: line(left + k * each, y, left + k * each, y + 6),
          thin: true as const,
        })),
      ]),
      { d: curve(before, upperY) },
      { d: curve(after, lowerY) },
    ],
    circles: [],
    callouts: [
      {
        letter: 'A',
        x: 8,
        y: upperY - fullHeight / 2,
        words: 'as found: what each cylinder adds, by the air that it draws',
      },
      { letter: 'B', x: 8, y: lowerY - fullHeight / 2, words: 'once the set is level' },
    ],
    labels: [upperY, lowerY].flatMap((y) =>
      order.map((cylinder, k) => ({
        text: String(cylinder),
        x: round(left + (k + 0.5) * each - 4),
        y: y + 20,
      })),
    ),
  };
}

const round = (value: number): number => Math.round(value * 10) / 10;
