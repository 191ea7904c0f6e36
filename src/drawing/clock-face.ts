/** How far to turn, as a sweep on a clock face seen from the screwdriver's end. Units of the view box −56 … 56. */
export type ClockFace = {
  /** The filled sweep from 12; whole turns fill the face. */
  readonly sweep: string;
  readonly ticks: string;
  /** Arrow outside the face, along the sweep. */
  readonly arrow: string;
};

const faceRadius = 36;
const tickRadius = 42;
const arrowRadius = 49;
/** Shortest arrow, in degrees, that still shows a direction. */
const shortestArrow = 24;
/** Where the arrow leaves 12, so that it does not touch the first tick. */
const arrowStart = 6;
const longestArrow = 330;
/** Degrees that the rounding of the drawing hides: a sweep that ends where it began would vanish. */
const unseen = 0.2;
const headLength = 8;
const headSpread = 32;

/** @param clockwiseTurns turns as the hand makes them, positive clockwise */
export const clockFace = (clockwiseTurns: number): ClockFace => {
  const side = clockwiseTurns < 0 ? -1 : 1;
  const degrees = Math.abs(clockwiseTurns) * 360;
  const rest = degrees % 360;
  const isWhole = degrees > 360 - unseen && Math.min(rest, 360 - rest) < unseen;
  const sweepDegrees = isWhole ? 360 : rest;
  const tipDegrees = Math.min(Math.max(degrees, shortestArrow), longestArrow);
  return {
    sweep: sweepDegrees >= 360 ? disc : sector(side * sweepDegrees),
    ticks: Array.from(
      { length: 12 },
      (_, hour) => `M${at(faceRadius, hour * 30)}L${at(tickRadius, hour * 30)}`,
    ).join(''),
    arrow: `M${at(arrowRadius, side * arrowStart)}${arc(arrowRadius, side * arrowStart, side * tipDegrees)}${head(side, side * tipDegrees)}`,
  };
};

const disc = `M0 ${-faceRadius}A${faceRadius} ${faceRadius} 0 1 1 -0.01 ${-faceRadius}Z`;

const sector = (degrees: number): string => `M0 0V${-faceRadius}${arc(faceRadius, 0, degrees)}Z`;

const arc = (radius: number, from: number, to: number): string => {
  const large = Math.abs(to - from) > 180 ? 1 : 0;
  const clockwise = to > from ? 1 : 0;
  return `A${radius} ${radius} 0 ${large} ${clockwise} ${at(radius, to)}`;
};

/** Two strokes back from the tip, spread about the way the arrow comes. */
const head = (side: number, tip: number): string => {
  const [x, y] = point(arrowRadius, tip);
  const back = tip - side * 90;
  const end = (spread: number): string => {
    const [dx, dy] = point(headLength, back + spread);
    return `${round(x + dx)} ${round(y + dy)}`;
  };
  return `M${end(-headSpread)}L${at(arrowRadius, tip)} ${end(headSpread)}`;
};

/** A point at so many degrees clockwise from 12. */
const point = (radius: number, degrees: number): [number, number] => {
  const angle = (degrees * Math.PI) / 180;
  return [radius * Math.sin(angle), -radius * Math.cos(angle)];
};

const at = (radius: number, degrees: number): string => point(radius, degrees).map(round).join(' ');

const round = (value: number): string => String(Math.round(value * 10) / 10 + 0);
