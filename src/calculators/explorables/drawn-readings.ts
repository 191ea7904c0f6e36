import type { DecimalMark } from '../format-number.ts';

/** Readings on one scale that keeps still, and what they say in words. Rounding has happened. */
export type DrawnReadings = {
  readonly plot: {
    readonly marks: readonly {
      readonly number: number;
      readonly depressionPa: number;
      /** Half the length of the whisker; 0 where nothing is uncertain. */
      readonly halfWidthPa: number;
      readonly beforePa?: number;
      readonly afterPa?: number;
    }[];
    readonly tolerancePa: number;
    readonly unit: string;
    readonly decimals: number;
    readonly mark: DecimalMark;
    readonly scalePa: readonly [low: number, high: number];
    /** Middle of the tolerance; the middle reading if left out. */
    readonly middlePa?: number;
  };
  readonly plotWords: string;
  /** What the choice shows, in one or two sentences. */
  readonly said: string;
};
