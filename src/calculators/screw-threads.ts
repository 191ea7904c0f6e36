/** A size of the ISO metric thread series, in millimetres. */
export type MetricThread = {
  readonly size: string;
  readonly diameterMm: number;
  readonly coarsePitchMm: number;
  /** From the coarsest down. */
  readonly finePitchesMm: readonly number[];
};

/**
 * Sizes of the ISO general purpose metric thread that adjusters, stop screws and lock nuts have, with
 * their coarse and fine pitches. Source: ISO 261:1998, ISO general purpose metric screw threads:
 * General plan, table 2, choices 1 and 2.
 */
export const metricThreads: readonly MetricThread[] = [
  { size: 'M2', diameterMm: 2, coarsePitchMm: 0.4, finePitchesMm: [0.25] },
  { size: 'M2.5', diameterMm: 2.5, coarsePitchMm: 0.45, finePitchesMm: [0.35] },
  { size: 'M3', diameterMm: 3, coarsePitchMm: 0.5, finePitchesMm: [0.35] },
  { size: 'M3.5', diameterMm: 3.5, coarsePitchMm: 0.6, finePitchesMm: [0.35] },
  { size: 'M4', diameterMm: 4, coarsePitchMm: 0.7, finePitchesMm: [0.5] },
  { size: 'M5', diameterMm: 5, coarsePitchMm: 0.8, finePitchesMm: [0.5] },
  { size: 'M6', diameterMm: 6, coarsePitchMm: 1, finePitchesMm: [0.75] },
  { size: 'M8', diameterMm: 8, coarsePitchMm: 1.25, finePitchesMm: [1, 0.75] },
  { size: 'M10', diameterMm: 10, coarsePitchMm: 1.5, finePitchesMm: [1.25, 1, 0.75] },
  { size: 'M12', diameterMm: 12, coarsePitchMm: 1.75, finePitchesMm: [1.5, 1.25, 1] },
];
