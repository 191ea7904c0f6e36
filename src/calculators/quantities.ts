/**
 * Brands for the few quantities that are easily taken for one another. A brand costs nothing at run time;
 * it stops a depression from being passed where an absolute pressure is meant. Everything else is a plain
 * number with its unit in its name.
 */
declare const quantity: unique symbol;

type Branded<Name extends string> = number & { readonly [quantity]: Name };

/** Pressure counted from perfect vacuum, in pascals. */
export type AbsolutePressurePa = Branded<'absolute pressure'>;

/** How far a pressure is below the ambient pressure, in pascals: what a vacuum gauge shows. */
export type DepressionPa = Branded<'depression'>;

export const absolutePressurePa = (pascals: number): AbsolutePressurePa => pascals as AbsolutePressurePa;
export const depressionPa = (pascals: number): DepressionPa => pascals as DepressionPa;

/** Absolute pressure that remains under a depression. */
export const absoluteUnder = (ambient: AbsolutePressurePa, depression: DepressionPa): AbsolutePressurePa =>
  absolutePressurePa(ambient - depression);

/** Depression of an absolute pressure; negative above the ambient pressure. */
export const depressionOf = (ambient: AbsolutePressurePa, absolute: AbsolutePressurePa): DepressionPa =>
  depressionPa(ambient - absolute);
