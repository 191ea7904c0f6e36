/** The diameters that a thread of 60° has under its major diameter; all in the unit of the two that were given. */
export type ThreadDiameters = {
  /** d2: where groove and ridge are equally wide. */
  readonly pitchDiameter: number;
  /** d1 = D1: the bore of the nut. */
  readonly minorDiameter: number;
  /** d3: the root of the screw, where it is thinnest. */
  readonly rootDiameter: number;
};

/** Height of the triangle of 60° over one pitch: H/P = √3/2. */
export const triangleHeight = Math.sqrt(3) / 2;

/**
 * Basic diameters of an ISO metric or Unified thread. The triangle of height H = (√3/2) P loses H/8 at the crest and H/4
 * at the root, so d2 = d − 2·(3/8) H and d1 = d − 2·(5/8) H; the rounded root of the screw reaches H/12
 * deeper, d3 = d1 − H/6. Sources: ISO 68-1:1998, figure 1; ISO 724:1993, clause 4; for d3 ISO 965-1:1998. ASME B1.1 has the
 * same profile.
 *
 * @param majorDiameter the nominal diameter d, and the pitch P, in one unit of length
 */
export function threadDiameters(majorDiameter: number, pitch: number): ThreadDiameters {
  const height = triangleHeight * pitch;
  const minorDiameter = majorDiameter - (5 / 4) * height;
  return {
    pitchDiameter: majorDiameter - (3 / 4) * height,
    minorDiameter,
    rootDiameter: minorDiameter - height / 6,
  };
}

/**
 * Nominal stress area of a screw: the circle of the mean of d2 and d3, As = (π/4)((d2 + d3)/2)², which is
 * (π/4)(d − 0.9382 P)². In the square of the unit given. Source: ISO 898-1:2013, 9.1.6.1.
 */
export function tensileStressArea(majorDiameter: number, pitch: number): number {
  const { pitchDiameter, rootDiameter } = threadDiameters(majorDiameter, pitch);
  return (Math.PI / 4) * ((pitchDiameter + rootDiameter) / 2) ** 2;
}
