import { carbonMonoxideLimits } from '../carbon-monoxide-limits.ts';
import { engineCarbonMonoxide } from '../engine-carbon-monoxide.ts';
import { formatDuration } from '../format-duration.ts';
import { formatExact, formatSignificant } from '../format-number.ts';
import { concentrationPpm, minutesToReach, mixedAir } from '../mixed-room.ts';
import type { MixedAir } from '../mixed-room.ts';
import { notKnown, runOutdoors } from '../exhaust-gas-cautions.ts';
import { certain } from './certain.ts';
import type { Curves } from './curves.ts';

export const roomM3Limits = { min: 20, max: 300, step: 5 } as const;
export const airChangesLimits = { min: 0, max: 30, step: 0.5 } as const;
export const carbonMonoxidePercentLimits = { min: 1, max: 8, step: 0.5 } as const;

export type RoomChosen = {
  readonly volumeM3: number;
  readonly airChangesPerHour: number;
  readonly carbonMonoxidePercent: number;
};

/** Invented, as in the calculator: a small garage with its door shut, and one engine on its stand. */
export const roomExample: RoomChosen = { volumeM3: 45, airChangesPerHour: 0.5, carbonMonoxidePercent: 5 };
export const roomEngineExample = {
  displacementM3: 750e-6,
  rpm: 2000,
  turnsPerFilling: 2,
  volumetricEfficiency: 0.3,
} as const;
const muchAirChanges = 20;
const drawnMinutes = 20;
const lowestDrawnPpm = 10;
const highestDrawnPpm = 20_000;

/** Levels that hold at every moment: no average to wait for. */
const levels = carbonMonoxideLimits
  .filter(({ averagingMinutes, unit }) => averagingMinutes === null && unit === 'ppm')
  .toSorted((a, b) => a.value - b.value);

export type RoomShown = {
  /** Minutes until each level, in the order of the levels; null where this sum never reaches it. */
  readonly minutes: readonly (number | null)[];
  readonly finalPpm: number;
  readonly volume: string;
  readonly changes: string;
  readonly share: string;
  readonly said: string;
  readonly curves: Curves;
  readonly plotWords: string;
};

export const roomCaution = runOutdoors;
export const roomNotKnown = notKnown.air;

/** How the mixed air of a room fills with carbon monoxide, and how soon it is past each published ceiling. */
export function roomAndExhaust(chosen: RoomChosen): RoomShown {
  const air = airOf(chosen);
  const minutes = levels.map(({ value }) => minutesToReach(air, value));
  const finalPpm = concentrationPpm(air, drawnMinutes);
  // Closer together at the start, where the curve is steep.
  const times = Array.from({ length: 61 }, (_, k) => drawnMinutes * (k / 60) ** 2);
  const passed = levels.map(({ value, body, meaning }, i) => {
    const after = minutes[i];
    const what = `${formatExact(value)}\u00a0ppm (${body}: ${meaning})`;
    return after == null
      ? `By this sum it never reaches ${what}, which is no permission`
      : `It is past ${what} after ${formatDuration(after)}`;
  });
  const end = `${ppmWords(finalPpm)} after ${formatExact(drawnMinutes)}\u00a0min`;
  return {
    minutes,
    finalPpm,
    volume: `${formatExact(chosen.volumeM3)}\u00a0m³`,
    changes: `${formatExact(chosen.airChangesPerHour)} an hour`,
    share: `${formatExact(chosen.carbonMonoxidePercent)}\u00a0%`,
    said: `This sum has ${end}. ${passed.join('. ')}.`,
    curves: {
      x: { low: 0, high: drawnMinutes, unit: 'min' },
      y: { low: lowestDrawnPpm, high: highestDrawnPpm, scale: 'logarithmic', unit: 'ppm' },
      curves: [
        { name: '', points: times.map((time) => [time, concentrationPpm(air, time)] as const), atY: null },
      ],
      levels: levels.map(({ value, body }) => ({ name: `${formatExact(value)} ppm, ${body}`, y: value })),
      atX: null,
    },
    plotWords: `Carbon monoxide in the mixed air against time: ${end}.`,
  };
}

export function roomFinding(): string {
  const [shut, open] = [roomExample.airChangesPerHour, muchAirChanges].map((airChangesPerHour) => {
    const level = levels.at(0)!;
    const after = minutesToReach(airOf({ ...roomExample, airChangesPerHour }), level.value);
    return { level: `${formatExact(level.value)}\u00a0ppm`, after: formatDuration(after!) };
  });
  return `One engine brings the air of a small garage past ${shut!.level}, a ceiling for work, in ${shut!.after} with ${formatExact(roomExample.airChangesPerHour)} changes of air an hour, and in ${open!.after} with ${formatExact(muchAirChanges)}: letting air in buys seconds, and no permission.`;
}

function airOf({ volumeM3, airChangesPerHour, carbonMonoxidePercent }: RoomChosen): MixedAir {
  const { carbonMonoxideLPerMin: sourceLPerMin } = certain(
    engineCarbonMonoxide({ ...roomEngineExample, carbonMonoxideShare: carbonMonoxidePercent / 100 }),
  );
  return certain(mixedAir({ volumeM3, airChangesPerHour, sourceLPerMin, initialPpm: 0 }));
}

const ppmWords = (ppm: number): string => `${formatSignificant(ppm, 2)}\u00a0ppm`;
