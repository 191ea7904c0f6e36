import type { ScrewThread, ThreadTable } from './screw-thread.ts';

/** A size of the ISO metric thread with all its pitches, in millimetres. */
export type IsoSize = {
  readonly diameterMm: number;
  /** Null for the few sizes that have fine pitches alone. */
  readonly coarsePitchMm: number | null;
  /** From the coarsest down. */
  readonly finePitchesMm: readonly number[];
};

/**
 * The general plan of the ISO metric thread from M1 to M24. Source: ISO 261:1998, ISO general purpose metric
 * screw threads: General plan, table 2, seen in copies of it that agree.
 */
export const isoSizes: readonly IsoSize[] = [
  { diameterMm: 1, coarsePitchMm: 0.25, finePitchesMm: [0.2] },
  { diameterMm: 1.1, coarsePitchMm: 0.25, finePitchesMm: [0.2] },
  { diameterMm: 1.2, coarsePitchMm: 0.25, finePitchesMm: [0.2] },
  { diameterMm: 1.4, coarsePitchMm: 0.3, finePitchesMm: [0.2] },
  { diameterMm: 1.6, coarsePitchMm: 0.35, finePitchesMm: [0.2] },
  { diameterMm: 1.8, coarsePitchMm: 0.35, finePitchesMm: [0.2] },
  { diameterMm: 2, coarsePitchMm: 0.4, finePitchesMm: [0.25] },
  { diameterMm: 2.2, coarsePitchMm: 0.45, finePitchesMm: [0.25] },
  { diameterMm: 2.5, coarsePitchMm: 0.45, finePitchesMm: [0.35] },
  { diameterMm: 3, coarsePitchMm: 0.5, finePitchesMm: [0.35] },
  { diameterMm: 3.5, coarsePitchMm: 0.6, finePitchesMm: [0.35] },
  { diameterMm: 4, coarsePitchMm: 0.7, finePitchesMm: [0.5] },
  { diameterMm: 4.5, coarsePitchMm: 0.75, finePitchesMm: [0.5] },
  { diameterMm: 5, coarsePitchMm: 0.8, finePitchesMm: [0.5] },
  { diameterMm: 5.5, coarsePitchMm: null, finePitchesMm: [0.5] },
  { diameterMm: 6, coarsePitchMm: 1, finePitchesMm: [0.75] },
  { diameterMm: 7, coarsePitchMm: 1, finePitchesMm: [0.75] },
  { diameterMm: 8, coarsePitchMm: 1.25, finePitchesMm: [1, 0.75] },
  { diameterMm: 9, coarsePitchMm: 1.25, finePitchesMm: [1, 0.75] },
  { diameterMm: 10, coarsePitchMm: 1.5, finePitchesMm: [1.25, 1, 0.75] },
  { diameterMm: 11, coarsePitchMm: 1.5, finePitchesMm: [1, 0.75] },
  { diameterMm: 12, coarsePitchMm: 1.75, finePitchesMm: [1.5, 1.25, 1] },
  { diameterMm: 14, coarsePitchMm: 2, finePitchesMm: [1.5, 1.25, 1] },
  { diameterMm: 15, coarsePitchMm: null, finePitchesMm: [1.5, 1] },
  { diameterMm: 16, coarsePitchMm: 2, finePitchesMm: [1.5, 1] },
  { diameterMm: 17, coarsePitchMm: null, finePitchesMm: [1.5, 1] },
  { diameterMm: 18, coarsePitchMm: 2.5, finePitchesMm: [2, 1.5, 1] },
  { diameterMm: 20, coarsePitchMm: 2.5, finePitchesMm: [2, 1.5, 1] },
  { diameterMm: 22, coarsePitchMm: 2.5, finePitchesMm: [2, 1.5, 1] },
  { diameterMm: 24, coarsePitchMm: 3, finePitchesMm: [2, 1.5, 1] },
];

export const isoCoarseThreads: ThreadTable = {
  system: 'iso-coarse',
  heading: 'ISO metric, coarse',
  flankAngleDegrees: 60,
  source: 'iso261',
  threads: isoSizes.flatMap(({ diameterMm, coarsePitchMm }): ScrewThread[] =>
    coarsePitchMm === null
      ? []
      : [{ system: 'iso-coarse', name: `M${diameterMm}`, diameterMm, pitchMm: coarsePitchMm }],
  ),
};

export const isoFineThreads: ThreadTable = {
  system: 'iso-fine',
  heading: 'ISO metric, fine',
  flankAngleDegrees: 60,
  source: 'iso261',
  threads: isoSizes.flatMap(({ diameterMm, finePitchesMm }) =>
    finePitchesMm.map((pitchMm): ScrewThread => ({
      system: 'iso-fine',
      name: `M${diameterMm}x${pitchMm}`,
      diameterMm,
      pitchMm,
    })),
  ),
};
