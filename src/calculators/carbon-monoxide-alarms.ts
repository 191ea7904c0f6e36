/** When a household alarm must sound in air that stays at a concentration: not before, and not after. */
export type AlarmPoint = {
  readonly ppm: number;
  readonly earliestMinutes: number;
  readonly latestMinutes: number;
};

/** UL 2034, Single and Multiple Station Carbon Monoxide Alarms, alarm points; seen in summaries of it. */
export const alarmPoints: readonly AlarmPoint[] = [
  { ppm: 70, earliestMinutes: 60, latestMinutes: 240 },
  { ppm: 150, earliestMinutes: 10, latestMinutes: 50 },
  { ppm: 400, earliestMinutes: 4, latestMinutes: 15 },
];
