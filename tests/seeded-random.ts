/** Numbers in 0…1 that are the same in every run: a linear congruential generator of 32 bits with a mixed output. */
export function seededRandom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** A standard normal number by the polar form of Box and Muller. */
export function seededNormal(random: () => number): () => number {
  return () => {
    for (;;) {
      const x = 2 * random() - 1;
      const y = 2 * random() - 1;
      const square = x * x + y * y;
      if (square > 0 && square < 1) return x * Math.sqrt((-2 * Math.log(square)) / square);
    }
  };
}
