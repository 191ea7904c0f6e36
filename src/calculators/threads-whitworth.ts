import { inchFraction } from './inch-fraction.ts';
import type { ThreadTable } from './screw-thread.ts';
import { millimetresPerInch, pitchMmOfThreadsPerInch } from './thread-pitch.ts';

/**
 * Diameter in inches and threads per inch of the fine (BSF) and coarse (BSW) series with Whitworth's form of thread.
 * Source: BS 84, Parallel screw threads of Whitworth form, seen in copies.
 */
const bsf: readonly (readonly [size: string, threadsPerInch: number])[] = [
  ['3/16', 32],
  ['7/32', 28],
  ['1/4', 26],
  ['9/32', 26],
  ['5/16', 22],
  ['3/8', 20],
  ['7/16', 18],
  ['1/2', 16],
  ['9/16', 16],
  ['5/8', 14],
  ['11/16', 14],
  ['3/4', 12],
  ['7/8', 11],
  ['1', 10],
];
const bsw: typeof bsf = [
  ['1/16', 60],
  ['3/32', 48],
  ['1/8', 40],
  ['5/32', 32],
  ['3/16', 24],
  ['7/32', 24],
  ['1/4', 20],
  ['5/16', 18],
  ['3/8', 16],
  ['7/16', 14],
  ['1/2', 12],
  ['9/16', 12],
  ['5/8', 11],
  ['11/16', 11],
  ['3/4', 10],
  ['7/8', 9],
  ['1', 8],
];

const tableOf = (system: 'bsf' | 'bsw', heading: string, series: typeof bsf): ThreadTable => ({
  system,
  heading,
  flankAngleDegrees: 55,
  source: 'bs84',
  threads: series.map(([size, threadsPerInch]) => ({
    system,
    name: `${size} ${system.toUpperCase()}`,
    diameterMm: inchFraction(size) * millimetresPerInch,
    pitchMm: pitchMmOfThreadsPerInch(threadsPerInch),
    threadsPerInch,
  })),
});

export const bsfThreads = tableOf('bsf', 'British Standard Fine, BSF', bsf);
export const bswThreads = tableOf('bsw', 'British Standard Whitworth, BSW', bsw);
