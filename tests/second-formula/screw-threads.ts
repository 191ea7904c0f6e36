/** Slow answers to the computed quantities of screw threads: a walk along the flank, fractions of whole numbers, small steps. */

/** Halves the interval in which a rising function crosses zero until nothing is left between its ends. */
function crossing(rising: (x: number) => number, low: number, high: number): number {
  let [below, above] = [low, high];
  for (let step = 0; step < 200; step += 1) {
    const middle = (below + above) / 2;
    if (rising(middle) < 0) below = middle;
    else above = middle;
  }
  return (below + above) / 2;
}

/** Diameter at which the ridge of a 60° thread is so wide, as a share of its pitch. The flat of the crest is P/8 wide. */
function diameterWhereRidgeIs(share: number, major: number, pitch: number): number {
  const flank = Math.tan(Math.PI / 6);
  const ridge = (depth: number): number => pitch / 8 + 2 * flank * depth;
  return major - 2 * crossing((depth) => ridge(depth) - share * pitch, 0, major);
}

/** d2: ridge and groove are equal. */
export const slowPitchDiameter = (major: number, pitch: number): number =>
  diameterWhereRidgeIs(1 / 2, major, pitch);
/** d1: the flat at the root is P/4 wide, so the ridge 3/4 P. */
export const slowMinorDiameter = (major: number, pitch: number): number =>
  diameterWhereRidgeIs(3 / 4, major, pitch);
/** d3: H/12 deeper on each side the groove is P/12 narrower, P/6. */
export const slowRootDiameter = (major: number, pitch: number): number =>
  diameterWhereRidgeIs(5 / 6, major, pitch);

/** The circle of the mean of d2 and d3, as a polygon whose corners are doubled, after Archimedes. */
export function slowStressArea(major: number, pitch: number): number {
  const radius = (slowPitchDiameter(major, pitch) + slowRootDiameter(major, pitch)) / 4;
  let [side, corners] = [Math.SQRT2, 4];
  for (let doubling = 0; doubling < 24; doubling += 1) {
    side = side / Math.sqrt(2 + Math.sqrt(4 - side * side));
    corners *= 2;
  }
  return (corners * side * radius * radius * Math.sqrt(4 - side * side)) / 4;
}

const digits = 10n ** 24n;
/** A fraction of whole numbers, cut after 24 decimals. */
const decimal = (over: bigint, under: bigint): number => Number((over * digits) / under) / Number(digits);

/** 254/(10 n) millimetres; n in hundredths of a thread. */
export const slowPitchOfCount = (hundredthsPerInch: number): number =>
  decimal(2540n, BigInt(hundredthsPerInch));

/** Inches: begin at 60 thousandths and go up by 13 for every number. */
export function slowNumberedSize(number: number): number {
  let thousandths = 60n;
  for (let step = 0; step < number; step += 1) thousandths += 13n;
  return decimal(thousandths, 1000n);
}

/** 9ⁿ/10ⁿ. */
export const slowBaPitch = (number: number): number => decimal(9n ** BigInt(number), 10n ** BigInt(number));

/** D = 6 p^(6/5): the x with x⁵ = p⁶, six times. */
export function slowBaDiameter(number: number): number {
  const pitch = slowBaPitch(number);
  return 6 * crossing((x) => x ** 5 - pitch ** 6, 0, 1);
}

/** A screw that is turned in ten thousand small steps. */
export function slowAdvance(pitch: number, turns: number): number {
  const steps = 10_000;
  let gone = 0;
  for (let step = 0; step < steps; step += 1) gone += (pitch * turns) / steps;
  return gone;
}
