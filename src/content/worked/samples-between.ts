/** Evenly spread values from one end to the other, both among them: where a graph takes its formula. */
export const samplesBetween = (low: number, high: number, parts: number): readonly number[] =>
  Array.from({ length: parts + 1 }, (_, k) => low + ((high - low) * k) / parts);
