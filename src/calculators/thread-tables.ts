import type { ScrewThread, ThreadSystem, ThreadTable } from './screw-thread.ts';
import { baThreads } from './threads-ba.ts';
import { isoCoarseThreads, isoFineThreads } from './threads-iso.ts';
import { uncThreads, unfThreads } from './threads-unified.ts';
import { bsfThreads, bswThreads } from './threads-whitworth.ts';

/** Every system that is tabulated, in the order in which they are offered. */
export const threadTables: readonly ThreadTable[] = [
  isoCoarseThreads,
  isoFineThreads,
  uncThreads,
  unfThreads,
  baThreads,
  bsfThreads,
  bswThreads,
];

/** The threads of all systems. */
export const screwThreads: readonly ScrewThread[] = threadTables.flatMap(({ threads }) => threads);

/** The threads of one system, in the order of its table. */
export const threadsOf = (system: ThreadSystem): readonly ScrewThread[] =>
  screwThreads.filter((thread) => thread.system === system);

/** The thread of a name as the tables write it; undefined for any other text. */
export const threadNamed = (name: string): ScrewThread | undefined =>
  screwThreads.find((thread) => thread.name === name);
