/** Round numbers inside an interval, about `wanted` of them: steps of 1, 2 or 5 times a power of ten. */
export const ticksIn = (low: number, high: number, wanted: number): readonly number[] => {
  const rough = (high - low) / wanted;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((factor) => factor * power).find((size) => size >= rough) ?? 10 * power;
  const first = Math.ceil(low / step);
  const last = Math.floor(high / step);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, k) => (first + k) * step);
};
