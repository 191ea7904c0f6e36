/** A hexagon nut, in millimetres. The height is the tallest and the lowest that the standard allows. */
export type HexagonNut = {
  readonly size: string;
  readonly heightMaxMm: number;
  readonly heightMinMm: number;
  readonly acrossFlatsMm: number;
};

type Row = readonly [size: string, heightMaxMm: number, heightMinMm: number, acrossFlatsMm: number];

const nutsOf = (rows: readonly Row[]): readonly HexagonNut[] =>
  rows.map(([size, heightMaxMm, heightMinMm, acrossFlatsMm]) => ({
    size,
    heightMaxMm,
    heightMinMm,
    acrossFlatsMm,
  }));

/**
 * Hexagon nuts of regular height. Source: BS EN ISO 4032:2001, Hexagon nuts, style 1, tables 1 and 2, seen in copies.
 */
export const regularNuts = nutsOf([
  ['M1.6', 1.3, 1.05, 3.2],
  ['M2', 1.6, 1.35, 4],
  ['M2.5', 2, 1.75, 5],
  ['M3', 2.4, 2.15, 5.5],
  ['M3.5', 2.8, 2.55, 6],
  ['M4', 3.2, 2.9, 7],
  ['M5', 4.7, 4.4, 8],
  ['M6', 5.2, 4.9, 10],
  ['M8', 6.8, 6.44, 13],
  ['M10', 8.4, 8.04, 16],
  ['M12', 10.8, 10.37, 18],
  ['M14', 12.8, 12.1, 21],
  ['M16', 14.8, 14.1, 24],
  ['M18', 15.8, 15.1, 27],
  ['M20', 18, 16.9, 30],
  ['M22', 19.4, 18.1, 34],
  ['M24', 21.5, 20.2, 36],
  ['M27', 23.8, 22.5, 41],
  ['M30', 25.6, 24.3, 46],
  ['M33', 28.7, 27.4, 50],
  ['M36', 31, 29.4, 55],
]);

/**
 * Thin nuts, the usual lock nuts. Source: BS EN ISO 4035, Hexagon thin nuts, chamfered, tables 1 and 2, seen in two
 * copies that hold all sizes between them.
 */
export const thinNuts = nutsOf([
  ['M1.6', 1, 0.75, 3.2],
  ['M2', 1.2, 0.95, 4],
  ['M2.5', 1.6, 1.35, 5],
  ['M3', 1.8, 1.55, 5.5],
  ['M3.5', 2, 1.75, 6],
  ['M4', 2.2, 1.95, 7],
  ['M5', 2.7, 2.45, 8],
  ['M6', 3.2, 2.9, 10],
  ['M8', 4, 3.7, 13],
  ['M10', 5, 4.7, 16],
  ['M12', 6, 5.7, 18],
  ['M14', 7, 6.42, 21],
  ['M16', 8, 7.42, 24],
  ['M18', 9, 8.42, 27],
  ['M20', 10, 9.1, 30],
  ['M22', 11, 9.9, 34],
  ['M24', 12, 10.9, 36],
  ['M27', 13.5, 12.4, 41],
  ['M30', 15, 13.9, 46],
  ['M33', 16.5, 15.4, 50],
  ['M36', 18, 16.9, 55],
]);

/** Which heights of nut are tabulated. */
export type NutHeight = 'thin' | 'regular';

/** The nut of an ISO size, coarse or fine: `M5` and `M5x0.5` have the same; undefined where none is tabulated. */
export const hexagonNut = (height: NutHeight, threadName: string): HexagonNut | undefined => {
  const [size] = threadName.split('x');
  return (height === 'thin' ? thinNuts : regularNuts).find((nut) => nut.size === size);
};
