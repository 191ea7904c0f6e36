import { metresPerInch } from './exact-definitions.ts';

/** Exact: millimetres in an inch, 25.4. */
export const millimetresPerInch = metresPerInch * 1000;

/** Pitch of a thread that is counted to the inch: P = 25.4/n, in millimetres. */
export const pitchMmOfThreadsPerInch = (threadsPerInch: number): number =>
  millimetresPerInch / threadsPerInch;

/** Threads in an inch of a pitch: n = 25.4/P. */
export const threadsPerInchOfPitchMm = (pitchMm: number): number => millimetresPerInch / pitchMm;

/** How far a screw goes in so many turns: pitch × starts × turns, in millimetres. One turn goes the lead. */
export const screwAdvanceMm = (pitchMm: number, turns: number, starts = 1): number =>
  pitchMm * starts * turns;
