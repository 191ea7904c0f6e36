import { minutesPerHour, secondsPerMinute } from './exact-definitions.ts';
import { formatFixed } from './format-number.ts';

/**
 * A time in words, cut to the whole second below an hour and to the whole minute above: `36 s`, `4 min 49 s`, `2 h 5 min`.
 * Cut, not rounded, because what it tells is how soon something is passed. Minutes from 0.
 */
export function formatDuration(minutes: number): string {
  // A millionth of a second against the tail of the binary fraction, as in `formatRunningTime`.
  const seconds = Math.floor(minutes * secondsPerMinute + 1e-6);
  if (seconds < 1) return minutes > 0 ? 'under 1 s' : 'at once';
  const whole = Math.floor(seconds / secondsPerMinute);
  const parts =
    whole < minutesPerHour
      ? [
          [whole, 'min'],
          [seconds - whole * secondsPerMinute, 's'],
        ]
      : [
          [Math.floor(whole / minutesPerHour), 'h'],
          [whole - Math.floor(whole / minutesPerHour) * minutesPerHour, 'min'],
        ];
  return (parts as [number, string][])
    .filter(([count]) => count > 0)
    .map(([count, unit]) => `${formatFixed(count, 0)}\u00a0${unit}`)
    .join(' ');
}
