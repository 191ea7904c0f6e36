import type { TurnsLeft } from '../calculators/index.ts';

/** Where a screw stands between its two ends, in per cent from fully closed; the middle where both ends are reached. */
export const threadPlace = (left: TurnsLeft): string => {
  const whole = left.closing + left.opening;
  return `${whole === 0 ? 50 : Math.round((left.closing / whole) * 1000) / 10}%`;
};
