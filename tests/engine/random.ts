/** A seeded generator of plain random numbers for tests: xorshift128 (G. Marsaglia, Xorshift RNGs, 2003, section 4). */
export type Random = {
  readonly uniform: (low: number, high: number) => number;
  readonly normal: (sd: number) => number;
  readonly integer: (low: number, high: number) => number;
  readonly pick: <Value>(values: readonly Value[]) => Value;
};

export const randomFrom = (seed: number): Random => {
  let [x, y, z, w] = [123456789 ^ seed, 362436069 + seed * 7919, 521288629 ^ (seed * 104729), 88675123];
  const next = (): number => {
    const t = x ^ (x << 11);
    [x, y, z] = [y, z, w];
    w = w ^ (w >>> 19) ^ t ^ (t >>> 8);
    return (w >>> 0) / 4294967296;
  };
  for (let k = 0; k < 20; k++) next();
  const uniform = (low: number, high: number): number => low + (high - low) * next();
  return {
    uniform,
    /** The sum of twelve uniform numbers less 6: near enough normal, and bounded at 6 sd. */
    normal: (sd) => {
      let sum = -6;
      for (let k = 0; k < 12; k++) sum += next();
      return sd * sum;
    },
    integer: (low, high) => Math.floor(uniform(low, high + 1)),
    pick: (values) => values[Math.floor(next() * values.length)]!,
  };
};
