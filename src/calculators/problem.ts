import type { BracketOrder } from './bracketed-difference.ts';
import type { MeasureName } from './measure-unit.ts';

/** A limit that was passed. A bound that is itself forbidden is named `above` or `below`. */
export type Limit = {
  readonly min?: number;
  readonly max?: number;
  readonly above?: number;
  readonly below?: number;
};

/** A limit that has only a largest value. */
export type Most = { readonly max: number };

/** Everything that can be wrong with what was given, as plain JSON. `field` is a dotted path such as `gauge.resolutionPa`. */
export type Problem =
  | { readonly kind: 'empty'; readonly field?: string }
  | { readonly kind: 'not-a-number'; readonly field?: string; readonly typed: string }
  | {
      readonly kind: 'ambiguous-number';
      readonly field?: string;
      readonly typed: string;
      readonly readings: readonly [number, number];
    }
  | {
      readonly kind: 'unknown-unit';
      readonly field?: string;
      readonly typed: string;
      readonly unit: string;
      readonly known: readonly string[];
    }
  /** A unit without a number. */
  | { readonly kind: 'number-missing'; readonly field?: string; readonly typed: string }
  | { readonly kind: 'zero-denominator'; readonly field?: string; readonly typed: string }
  /** Written rightly, but too large (1e309) or too small (1e-400) to be counted with; `limit` is on its size. */
  | {
      readonly kind: 'beyond-counting';
      readonly field?: string;
      readonly typed: string;
      readonly limit: Limit;
    }
  | { readonly kind: 'too-long'; readonly field?: string; readonly value: number; readonly limit: Most }
  | { readonly kind: 'not-finite'; readonly field: string }
  | { readonly kind: 'out-of-range'; readonly field: string; readonly value: number; readonly limit: Limit }
  | { readonly kind: 'carburettor-count'; readonly value: number; readonly limit: Limit }
  | {
      readonly kind: 'column-length';
      readonly field: string;
      readonly value: number;
      readonly limit: Limit;
    }
  | { readonly kind: 'index'; readonly field: string; readonly value: number; readonly limit: Limit }
  | {
      readonly kind: 'depression-beyond-ambient';
      readonly field?: string;
      readonly depressionPa: number;
      readonly limit: Limit;
    }
  | { readonly kind: 'negative-depression'; readonly field?: string; readonly depressionPa: number }
  | { readonly kind: 'absolute-below-zero'; readonly field?: string; readonly absolutePa: number }
  | {
      readonly kind: 'gauge-below-vacuum';
      readonly field?: string;
      readonly gaugePa: number;
      readonly limit: Limit;
    }
  /** A temperature that cannot be. */
  | { readonly kind: 'below-absolute-zero'; readonly field?: string; readonly typed: string }
  /** What cannot be negative, as a volume, or must be more than 0, as the pitch of a thread. */
  | {
      readonly kind: 'impossible-measure';
      readonly field?: string;
      readonly typed: string;
      readonly measure: MeasureName;
      readonly limit: Limit;
    }
  /** A well whose bore is no larger than that of the tube. */
  | { readonly kind: 'well-too-narrow'; readonly field: string; readonly typed: string }
  /** A measure beyond its bounds, which are counted in the unit of `symbol`. */
  | {
      readonly kind: 'measure-out-of-range';
      readonly field?: string;
      readonly typed: string;
      readonly symbol: string;
      readonly limit: Limit;
    }
  | {
      readonly kind: 'unknown-choice';
      readonly field: string;
      readonly typed: string;
      readonly known: readonly string[];
    }
  /** A nut of a thread that the tables do not hold. */
  | { readonly kind: 'nut-unknown'; readonly field?: string; readonly typed: string }
  /** A name that is no thread of the tables. */
  | {
      readonly kind: 'unknown-thread';
      readonly field?: string;
      readonly typed: string;
      readonly known: readonly string[];
    }
  | { readonly kind: 'newer-version'; readonly field: string; readonly value: number; readonly limit: Most }
  | { readonly kind: 'no-screws' }
  | { readonly kind: 'no-readings'; readonly field?: string }
  /** Readings that never differ do not show the step of their scale. */
  | { readonly kind: 'all-equal'; readonly field: string }
  | {
      readonly kind: 'too-few-readings';
      readonly field: string;
      readonly value: number;
      readonly limit: Limit;
    }
  /** A count that is not a whole number. */
  | { readonly kind: 'not-whole'; readonly field: string; readonly typed: string }
  /** Readings that are not whole runs through A, B, A or A, B, B, A. */
  | {
      readonly kind: 'bracket-length';
      readonly field: string;
      readonly value: number;
      readonly order: BracketOrder;
    }
  /** Gauges that were read together, of which one has fewer or more readings than the first. */
  | {
      readonly kind: 'unequal-lists';
      readonly field: string;
      readonly value: number;
      readonly expected: number;
    }
  /** An equation whose steps became too many or too small, at a time in minutes. */
  | { readonly kind: 'no-solution'; readonly field?: string; readonly at: number; readonly steps: number }
  /** More carbon monoxide in a room than its mass balance is made for. */
  | { readonly kind: 'too-much-gas'; readonly field?: string; readonly ppm: number; readonly limit: Most }
  /** A difference that the step of the scale hides from any number of readings. */
  | {
      readonly kind: 'below-the-step';
      readonly field: string;
      readonly value: number;
      readonly limit: Limit;
    }
  | {
      readonly kind: 'too-many-readings';
      readonly field: string;
      readonly value: number;
      readonly limit: Most;
    }
  /** What a correction for speed makes of a reading that was possible. */
  | {
      readonly kind: 'impossible-correction';
      readonly field: string;
      readonly carburettor: number;
      readonly depressionPa: number;
    }
  | { readonly kind: 'fixed-needed' }
  | { readonly kind: 'groups-needed'; readonly value: number };
