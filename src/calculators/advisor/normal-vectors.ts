/**
 * Fixed antithetic standard normal vectors: 200 drawn once for each length by a fixed generator, and their negatives.
 * The generator is a 32-bit multiply-and-xorshift counter (public domain construction), the shaping is that of
 * G. E. P. Box and M. E. Muller, A note on the generation of random normal deviates, 1958, equation 1.
 */
const pairs = 200;
const drawn = new Map<number, readonly (readonly number[])[]>();

export const normalVectors = (length: number): readonly (readonly number[])[] => {
  const before = drawn.get(length);
  if (before) return before;
  const uniform = fixedUniform(0x9e3779b9 + length);
  const half = Array.from({ length: pairs }, () => Array.from({ length }, () => normalFrom(uniform)));
  const all = [...half, ...half.map((vector) => vector.map((entry) => -entry))];
  drawn.set(length, all);
  return all;
};

const normalFrom = (uniform: () => number): number =>
  Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());

const fixedUniform = (seed: number): (() => number) => {
  let counter = seed | 0;
  return () => {
    counter = (counter + 0x6d2b79f5) | 0;
    let mixed = Math.imul(counter ^ (counter >>> 15), counter | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
};
