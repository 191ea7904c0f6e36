import { millimetresPerInch, pitchMmOfThreadsPerInch } from './thread-pitch.ts';
import type { ThreadTable } from './screw-thread.ts';
import { inchFraction } from './inch-fraction.ts';

/**
 * Size and threads per inch of the Unified coarse and fine series. Source: ASME B1.1, Unified inch screw threads,
 * tables of the coarse (UNC) and fine (UNF) thread series, seen in copies.
 */
const unc: readonly (readonly [size: string, threadsPerInch: number])[] = [
  ['#1', 64],
  ['#2', 56],
  ['#3', 48],
  ['#4', 40],
  ['#5', 40],
  ['#6', 32],
  ['#8', 32],
  ['#10', 24],
  ['#12', 24],
  ['1/4', 20],
  ['5/16', 18],
  ['3/8', 16],
  ['7/16', 14],
  ['1/2', 13],
  ['9/16', 12],
  ['5/8', 11],
  ['3/4', 10],
  ['7/8', 9],
  ['1', 8],
];
const unf: typeof unc = [
  ['#0', 80],
  ['#1', 72],
  ['#2', 64],
  ['#3', 56],
  ['#4', 48],
  ['#5', 44],
  ['#6', 40],
  ['#8', 36],
  ['#10', 32],
  ['#12', 28],
  ['1/4', 28],
  ['5/16', 24],
  ['3/8', 24],
  ['7/16', 20],
  ['1/2', 20],
  ['9/16', 18],
  ['5/8', 18],
  ['3/4', 16],
  ['7/8', 14],
  ['1', 12],
];

/** Basic diameter of a numbered size, in inches: 0.060 + 0.013 n (ASME B1.1). */
export const numberedSizeInch = (number: number): number => 0.06 + 0.013 * number;

const diameterInch = (size: string): number =>
  size.startsWith('#') ? numberedSizeInch(Number(size.slice(1))) : inchFraction(size);

const tableOf = (system: 'unc' | 'unf', heading: string, series: typeof unc): ThreadTable => ({
  system,
  heading,
  flankAngleDegrees: 60,
  source: 'asme-b1-1',
  threads: series.map(([size, threadsPerInch]) => ({
    system,
    name: `${size} ${system.toUpperCase()}`,
    diameterMm: diameterInch(size) * millimetresPerInch,
    pitchMm: pitchMmOfThreadsPerInch(threadsPerInch),
    threadsPerInch,
  })),
});

export const uncThreads = tableOf('unc', 'Unified coarse, UNC', unc);
export const unfThreads = tableOf('unf', 'Unified fine, UNF', unf);
