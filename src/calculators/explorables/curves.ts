/** Curves on axes that keep still, and where on them one is. */
export type Curves = {
  readonly x: { readonly low: number; readonly high: number; readonly unit: string };
  readonly y: {
    readonly low: number;
    readonly high: number;
    readonly scale: 'linear' | 'logarithmic';
    readonly unit: string;
  };
  readonly curves: readonly {
    readonly name: string;
    readonly points: readonly (readonly [x: number, y: number])[];
    /** The value where one is; null if it is not marked. */
    readonly atY: number | null;
  }[];
  /** Lines across, with a name. */
  readonly levels: readonly { readonly name: string; readonly y: number }[];
  /** Where one is; null if the curves are not about a choice. */
  readonly atX: number | null;
};
