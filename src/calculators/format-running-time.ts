/** Minutes as a clock shows them, minutes and seconds, cut to the second that has passed: 9.1 is `9:06`. */
export function formatRunningTime(minutes: number): string {
  if (!Number.isFinite(minutes)) throw new RangeError(`not a finite time: ${minutes}`);
  // A millionth of a second against the tail of the binary fraction: 9.1 × 60 is 545.9999….
  const seconds = Math.max(0, Math.floor(minutes * 60 + 1e-6));
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
}
