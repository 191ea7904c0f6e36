/** A limit that was passed. A bound that is itself forbidden is named `above` or `below`. */
export type Limit = {
  readonly min?: number;
  readonly max?: number;
  readonly above?: number;
  readonly below?: number;
};

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
  | { readonly kind: 'too-long'; readonly field?: string; readonly value: number; readonly limit: Limit }
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
  | {
      readonly kind: 'unknown-choice';
      readonly field: string;
      readonly typed: string;
      readonly known: readonly string[];
    }
  | { readonly kind: 'newer-version'; readonly field: string; readonly value: number; readonly limit: Limit }
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
  | { readonly kind: 'fixed-needed' }
  | { readonly kind: 'groups-needed'; readonly value: number };
