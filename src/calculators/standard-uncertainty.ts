/** How the values are thought to lie between the two limits: evenly, most in the middle, or most at the ends. */
export type Distribution = 'rectangular' | 'triangular' | 'u-shaped';

/**
 * Square of half-width over standard uncertainty. Sources: JCGM 100:2008 (GUM), 4.3.7 rectangular, 4.3.9 triangular;
 * JCGM 101:2008, 6.4.6, arc sine: what a sine shows that is looked at without regard to its phase.
 */
export const squaredDivisors: Readonly<Record<Distribution, number>> = {
  rectangular: 3,
  triangular: 6,
  'u-shaped': 2,
};

/** Standard uncertainty of a value that lies within ±`halfWidth`, from 0, in the unit of the half-width. */
export const standardUncertaintyOf = (distribution: Distribution, halfWidth: number): number =>
  halfWidth / Math.sqrt(squaredDivisors[distribution]);

/**
 * Standard uncertainty of an indication that moves in steps: u = d/√12 = 0.29 d, in the unit of the step.
 * Source: JCGM 100:2008 (GUM), F.2.2.1.
 */
export const resolutionUncertainty = (step: number): number => step / Math.sqrt(12);

/** Standard uncertainty of a sum of independent parts: the root of the sum of their squares. Source: GUM 5.1.2, eq. 10. */
export const rootSumOfSquares = (parts: readonly number[]): number => Math.hypot(...parts);
