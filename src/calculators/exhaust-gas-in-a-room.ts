import { alarmPoints } from './carbon-monoxide-alarms.ts';
import type { AlarmPoint } from './carbon-monoxide-alarms.ts';
import { mgPerM3PerPpm } from './carbon-monoxide-concentration.ts';
import { carbonMonoxideLimits, limitPpm } from './carbon-monoxide-limits.ts';
import type { CarbonMonoxideLimit } from './carbon-monoxide-limits.ts';
import { carboxyhaemoglobinPercent } from './carboxyhaemoglobin.ts';
import { cfkConstants } from './coburn-forster-kane-constants.ts';
import { cfkPeople } from './cfk-person.ts';
import type { Activity } from './cfk-person.ts';
import { engineCarbonMonoxide } from './engine-carbon-monoxide.ts';
import type { EngineGas, RunningEngine } from './engine-carbon-monoxide.ts';
import { standardAtmospherePa } from './exact-definitions.ts';
import type { DecimalMark } from './format-number.ts';
import { minutesToAverage } from './mixed-room-average.ts';
import { concentrationPpm, minutesToReach, mixedAir, steadyPpm } from './mixed-room.ts';
import type { MixedAir } from './mixed-room.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

export type GasSource =
  | { readonly kind: 'engine'; readonly engine: RunningEngine }
  | { readonly kind: 'flow'; readonly carbonMonoxideLPerMin: number };

export type ExhaustGasGiven = {
  readonly volumeM3: number;
  readonly airChangesPerHour: number;
  readonly source: GasSource;
  readonly kelvins: number;
  readonly runningMinutes: number;
  readonly initialPpm: number;
  readonly activity: Activity;
  /** How the plot is drawn, and the mark that numbers are written with. */
  readonly scale: 'linear' | 'logarithmic';
  readonly mark: DecimalMark;
};

export type LimitPassed = {
  readonly limit: CarbonMonoxideLimit;
  readonly ppm: number;
  /** Until the air itself holds as much, and until the average over the limit's time does; null: not within a day. */
  readonly airMinutes: number | null;
  readonly averageMinutes: number | null;
};

export type ExhaustGasAnswer = {
  readonly given: ExhaustGasGiven;
  readonly carbonMonoxideLPerMin: number;
  readonly engine: EngineGas | null;
  readonly air: MixedAir;
  readonly finalPpm: number;
  readonly finalMgPerM3: number;
  /** Null where it would only rise. */
  readonly steadyPpm: number | null;
  /** What is left so long after the source has stopped, with nothing opened. */
  readonly afterwards: { readonly minutes: number; readonly ppm: number };
  /** Concentration, and per cent carboxyhaemoglobin of the standard man, at times from 0 to the end. */
  readonly times: readonly number[];
  readonly ppm: readonly number[];
  readonly percent: Readonly<Record<Activity, readonly number[]>>;
  readonly limits: readonly LimitPassed[];
  /** When a household alarm must have sounded at the latest, and what the air then holds; null: it need not within a day. */
  readonly alarm: { readonly point: AlarmPoint; readonly minutes: number; readonly ppm: number } | null;
};

/** Ten per cent by volume: far beyond survival, and beyond an engine that has to breathe the same air. */
export const mostPpm = 100_000;

const samples = 120;
const dayMinutes = 1440;
const afterwardsMinutes = 60;

/**
 * Carbon monoxide in a room against time, the times at which published limits are passed, and carboxyhaemoglobin. The room
 * is mixed through, its outside air clean, its pressure the standard atmosphere, its engine or source steady.
 * Problems: those of `engineCarbonMonoxide`, `mixedAir`, `mgPerM3PerPpm` and `carboxyhaemoglobinPercent`; too-much-gas.
 */
export function computeExhaustGasInARoom(given: ExhaustGasGiven): Result<ExhaustGasAnswer> {
  const { source, runningMinutes } = given;
  const gas = gasOf(source);
  if (!gas.ok) return gas;
  const mixed = mixedAir({ ...given, sourceLPerMin: gas.value.carbonMonoxideLPerMin });
  if (!mixed.ok) return mixed;
  const air = mixed.value;
  const mgPerPpm = mgPerM3PerPpm({ kelvins: given.kelvins, pascals: standardAtmospherePa });
  if (!mgPerPpm.ok) return mgPerPpm;
  const finalPpm = concentrationPpm(air, runningMinutes);
  if (finalPpm > mostPpm)
    return fail({
      kind: 'too-much-gas',
      ppm: finalPpm,
      limit: { max: mostPpm },
    });
  const times = Array.from({ length: samples + 1 }, (_, k) => (k * runningMinutes) / samples);
  const blood = bloodAt(air, times);
  if (!blood.ok) return blood;
  const stopped = { ...air, initialPpm: finalPpm, ratePpmPerMin: 0 };
  return succeed({
    given,
    ...gas.value,
    air,
    finalPpm,
    finalMgPerM3: finalPpm * mgPerPpm.value,
    steadyPpm: steadyPpm(air),
    afterwards: { minutes: afterwardsMinutes, ppm: concentrationPpm(stopped, afterwardsMinutes) },
    times,
    ppm: times.map((minutes) => concentrationPpm(air, minutes)),
    percent: blood.value,
    limits: carbonMonoxideLimits.map((limit) => passed(air, limit, limitPpm(limit, mgPerPpm.value))),
    alarm: latestAlarm(air),
  });
}

function gasOf(source: GasSource): Result<Pick<ExhaustGasAnswer, 'carbonMonoxideLPerMin' | 'engine'>> {
  if (source.kind === 'flow')
    return succeed({ carbonMonoxideLPerMin: source.carbonMonoxideLPerMin, engine: null });
  const gas = engineCarbonMonoxide(source.engine);
  return gas.ok
    ? succeed({ carbonMonoxideLPerMin: gas.value.carbonMonoxideLPerMin, engine: gas.value })
    : gas;
}

/** The standard man who breathes the air of the room from 0 minutes on, in each activity. */
function bloodAt(air: MixedAir, times: readonly number[]): Result<ExhaustGasAnswer['percent']> {
  const ppmAt = (minutes: number): number => concentrationPpm(air, minutes);
  const percent = { rest: [] as readonly number[], 'light work': [] as readonly number[] };
  for (const activity of ['rest', 'light work'] as const) {
    const start = cfkConstants.startOfNonSmoker.value;
    const solved = carboxyhaemoglobinPercent(cfkPeople[activity], ppmAt, start, times);
    if (!solved.ok) return solved;
    percent[activity] = solved.value;
  }
  return succeed(percent);
}

const withinADay = (minutes: number | null): number | null =>
  minutes !== null && minutes <= dayMinutes ? minutes : null;

function passed(air: MixedAir, limit: CarbonMonoxideLimit, ppm: number): LimitPassed {
  const airMinutes = withinADay(minutesToReach(air, ppm));
  const averageMinutes =
    limit.averagingMinutes === null
      ? airMinutes
      : withinADay(minutesToAverage(air, limit.averagingMinutes, ppm));
  return { limit, ppm, airMinutes, averageMinutes };
}

/** The point whose latest time comes first, counted from when the air reaches it; a rising concentration stays above. */
function latestAlarm(air: MixedAir): ExhaustGasAnswer['alarm'] {
  const latest = alarmPoints.flatMap((point) => {
    const reached = minutesToReach(air, point.ppm);
    const minutes = withinADay(reached === null ? null : reached + point.latestMinutes);
    return minutes === null ? [] : [{ point, minutes, ppm: concentrationPpm(air, minutes) }];
  });
  return latest.toSorted((a, b) => a.minutes - b.minutes)[0] ?? null;
}
