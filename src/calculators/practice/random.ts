/**
 * A generator whose whole state is one whole number of 32 bits, so that a state of the engine can hold it.
 * Source: the mixing of SplitMix (G. L. Steele, D. Lea and C. H. Flood, Fast splittable pseudorandom number
 * generators, 2014), in 32 bits; from memory. Good enough to draw invented engines, and for nothing else.
 */
export type RandomState = number;

/** The state for a seed and, for each purpose, a stream of its own. */
export const randomState = (seed: number, stream = 0): RandomState =>
  (Math.imul(seed >>> 0, 0x9e3779b1) ^ Math.imul(stream + 1, 0x85ebca6b)) >>> 0;

/** A number from 0 to just below 1, and the state after it. */
export function nextUniform(state: RandomState): readonly [number, RandomState] {
  const next = (state + 0x9e3779b9) >>> 0;
  let mixed = Math.imul(next ^ (next >>> 16), 0x21f0aaad);
  mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97);
  return [((mixed ^ (mixed >>> 15)) >>> 0) / 2 ** 32, next];
}

/** A standard normal number by the cosine form of Box and Muller, and the state after it. */
export function nextNormal(state: RandomState): readonly [number, RandomState] {
  const [first, between] = nextUniform(state);
  const [second, after] = nextUniform(between);
  return [Math.sqrt(-2 * Math.log(1 - first)) * Math.cos(2 * Math.PI * second), after];
}

/** Draws one after another from one stream: for making an engine, where nothing has to be kept. */
export function drawsFrom(seed: number, stream: number) {
  let state = randomState(seed, stream);
  const uniform = (low: number, high: number): number => {
    const [value, next] = nextUniform(state);
    state = next;
    return low + (high - low) * value;
  };
  const index = (count: number): number => Math.floor(uniform(0, count));
  return { uniform, index };
}
