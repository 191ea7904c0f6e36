import { bisect } from './bisect.ts';
import { concentrationPpm, exposurePpmMin, minutesToReach } from './mixed-room.ts';
import type { MixedAir } from './mixed-room.ts';

/**
 * The time-weighted average of the last `windowMinutes`, as limits for work are averaged; before 0 the air was clean.
 * Minutes from 0, a window above 0. Exact: the integral of the exponential, see `exposurePpmMin`.
 */
export function averagePpm(air: MixedAir, windowMinutes: number, minutes: number): number {
  if (minutes <= windowMinutes) return exposurePpmMin(air, minutes) / windowMinutes;
  return concentrationPpm(averaged(air, windowMinutes), minutes - windowMinutes);
}

/**
 * Minutes until that average first reaches a level above 0; null where it never does. Within the first window it rises
 * with every breath; from there on it follows the room's own equation, because an average of dC/dt = rate − clearing · C
 * is the same equation of the average.
 */
export function minutesToAverage(air: MixedAir, windowMinutes: number, levelPpm: number): number | null {
  const dose = levelPpm * windowMinutes;
  if (exposurePpmMin(air, windowMinutes) >= dose)
    return bisect((minutes) => exposurePpmMin(air, minutes) - dose, 0, windowMinutes);
  const more = minutesToReach(averaged(air, windowMinutes), levelPpm);
  return more === null ? null : windowMinutes + more;
}

/** The average over a full window, as air of the same room that starts when the first window is full. */
const averaged = (air: MixedAir, windowMinutes: number): MixedAir => ({
  ...air,
  initialPpm: exposurePpmMin(air, windowMinutes) / windowMinutes,
});
