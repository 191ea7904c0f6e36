/** The systems of screw threads that are tabulated here. */
export const threadSystems = ['iso-coarse', 'iso-fine', 'unc', 'unf', 'ba', 'bsf', 'bsw'] as const;

export type ThreadSystem = (typeof threadSystems)[number];

/** One thread: a size of a system with its pitch. Lengths in millimetres. */
export type ScrewThread = {
  readonly system: ThreadSystem;
  /** As it is written on a drawing, in plain characters: `M5`, `M8x0.75`, `#10 UNF`, `1/4 BSF`, `2BA`. */
  readonly name: string;
  readonly diameterMm: number;
  readonly pitchMm: number;
  /** Where the standard counts threads to the inch instead of giving a pitch. */
  readonly threadsPerInch?: number;
};

/** A system with all its threads and where they come from. */
export type ThreadTable = {
  readonly system: ThreadSystem;
  /** For a heading: `ISO metric, coarse`. */
  readonly heading: string;
  /** Angle of the thread's flanks to each other. */
  readonly flankAngleDegrees: number;
  /** Key of the bibliography. */
  readonly source: string;
  readonly threads: readonly ScrewThread[];
};
