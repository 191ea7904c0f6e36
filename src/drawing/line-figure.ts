/**
 * A line drawing as plain data: strokes, circles and callout letters in the units of its view box.
 * One stroke weight; `detail` marks what is left out when the drawing is shown small.
 */

export type FigurePath = {
  readonly d: string;
  /** Not a part but a level, a group or a former place. */
  readonly dash?: true;
  /** Leader of a callout letter, or hatching. */
  readonly thin?: true;
  readonly detail?: true;
};

export type FigureCircle = {
  readonly cx: number;
  readonly cy: number;
  readonly r: number;
  readonly filled?: true;
  readonly detail?: true;
};

/** A letter at a place; its words stand beneath the drawing. */
export type Callout = {
  readonly letter: string;
  readonly x: number;
  readonly y: number;
  readonly words: string;
};

/** The number of a carburettor, or a word of one letter that needs no explanation. */
export type Label = { readonly text: string; readonly x: number; readonly y: number };

export type LineFigure = {
  readonly viewBox: string;
  /** What the drawing says, for those who do not see it. */
  readonly title: string;
  readonly paths: readonly FigurePath[];
  readonly circles: readonly FigureCircle[];
  readonly callouts: readonly Callout[];
  readonly labels: readonly Label[];
};

/** A rectangle as a path. */
export const box = (left: number, top: number, right: number, bottom: number): string =>
  `M${left} ${top}H${right}V${bottom}H${left}Z`;

/** A straight line as a path. */
export const line = (x1: number, y1: number, x2: number, y2: number): string => `M${x1} ${y1}L${x2} ${y2}`;

/** Slanted thread lines across a vertical screw. */
export const threadLines = (left: number, right: number, top: number, bottom: number): string => {
  const pitch = 6;
  const rise = 3;
  const count = Math.floor((bottom - top - rise) / pitch) + 1;
  return Array.from({ length: count }, (_, turn) =>
    line(left, top + turn * pitch + rise, right, top + turn * pitch),
  ).join('');
};
