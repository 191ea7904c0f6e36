/** A whole number from 0 to `most`, drawn by the browser, as text: for an exercise that nobody has had yet. */
export const drawSeed = (most: number): string => {
  const [drawn = 0] = crypto.getRandomValues(new Uint32Array(1));
  return String(drawn % (most + 1));
};
