/** `exact`: by definition. `conventional`: exact by a convention about the liquid. `measured`: rests on a measured density. */
export type Exactness = 'exact' | 'conventional' | 'measured';

export type PressureUnit = {
  /** Short name without spaces: the key of links, settings and records. */
  readonly id: string;
  readonly symbol: string;
  /** As spoken, in the plural: “9 inches of mercury”. */
  readonly name: string;
  /** Other spellings that people type. Case, spaces, dots and brackets do not matter; see `findPressureUnit`. */
  readonly aliases: readonly string[];
  /** One of this unit, in pascals. */
  readonly pascals: number;
  readonly exactness: Exactness;
  /** What the factor is composed from, in words and digits. */
  readonly composition: string;
  readonly source: string;
  /** A column whose temperature has to be named, or that no gauge shows; listed apart. */
  readonly rare: boolean;
};
