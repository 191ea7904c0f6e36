import type { Exactness } from './pressure-unit.ts';

/** How figures in a unit become figures in the SI unit of its family. */
export type MeasureScale =
  /** SI = factor × figure. */
  | { readonly kind: 'proportional'; readonly factor: number }
  /** Scales that agree at 0 °C, where this one shows `atZeroCelsius`. */
  | { readonly kind: 'temperature'; readonly degreesPerKelvin: number; readonly atZeroCelsius: number }
  /** Counted per length, so that the finer is the larger: SI = factor / figure. */
  | { readonly kind: 'reciprocal'; readonly factor: number };

export type MeasureUnit = {
  /** Short name without spaces, single within its family: the key of links and settings. */
  readonly id: string;
  readonly symbol: string;
  /** As spoken, in the plural: “9 newton metres”. */
  readonly name: string;
  /** Other spellings that people type; see `spellingOf`. */
  readonly aliases: readonly string[];
  readonly scale: MeasureScale;
  readonly exactness: Exactness;
  /** What the scale is composed from, in words and digits. */
  readonly composition: string;
  readonly source: string;
};

/** What a family measures. A temperature and a difference of temperatures are two families. */
export type MeasureName =
  | 'length'
  | 'torque'
  | 'temperature'
  | 'temperature difference'
  | 'volume'
  | 'speed'
  | 'engine speed'
  | 'thread pitch'
  | 'density'
  | 'volume flow';

export type MeasureFamily = {
  readonly name: MeasureName;
  readonly units: readonly [MeasureUnit, ...MeasureUnit[]];
  /** The SI unit that every value is given in: `N·m`. */
  readonly siUnit: string;
  /** In the SI unit: what cannot be less, or must be more. None where a minus sign has a meaning. */
  readonly limit?: { readonly min: 0 } | { readonly above: 0 };
};
