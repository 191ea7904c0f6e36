import type { ScrewThread, ThreadTable } from './screw-thread.ts';

/** The sizes that are made; the standard goes on to 25. */
const largestNumber = 16;

/**
 * The rule of the British Association thread, number n from 0 upwards: pitch p = 0.9ⁿ and diameter D = 6 p^1.2, in
 * millimetres, both unrounded. Source: BS 93, British Association (B.A.) screw threads, seen in copies.
 */
export const baPitchRuleMm = (number: number): number => 0.9 ** number;
export const baDiameterRuleMm = (number: number): number => 6 * baPitchRuleMm(number) ** 1.2;

/** The standard rounds both to two significant figures: 4BA is 0.66 mm on 3.6 mm, 10BA 0.35 mm on 1.7 mm. */
const asStandardised = (value: number): number => Number(value.toPrecision(2));

export const baThreads: ThreadTable = {
  system: 'ba',
  heading: 'British Association, BA',
  flankAngleDegrees: 47.5,
  source: 'bs93',
  threads: Array.from({ length: largestNumber + 1 }, (_, number): ScrewThread => ({
    system: 'ba',
    name: `${number}BA`,
    diameterMm: asStandardised(baDiameterRuleMm(number)),
    pitchMm: asStandardised(baPitchRuleMm(number)),
  })),
};
