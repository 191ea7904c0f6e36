import { checkNumber } from './check-number.ts';
import { minutesPerHour } from './exact-definitions.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

/** A room whose air is mixed through at every moment, with clean air from outside and one source inside. */
export type MixedRoom = {
  readonly volumeM3: number;
  /** Room volumes of outside air an hour; 0 is a sealed room. */
  readonly airChangesPerHour: number;
  /** Pure gas that the source gives off, at the state of the room. */
  readonly sourceLPerMin: number;
  /** What is in the air already. */
  readonly initialPpm: number;
};

/** The one differential equation of the room: dC/dt = rate − clearing · C, with C = initial at 0 minutes. */
export type MixedAir = {
  readonly initialPpm: number;
  readonly ratePpmPerMin: number;
  readonly clearingPerMin: number;
};

/** A litre in a cubic metre is a thousandth, so a thousand parts per million. */
const ppmPerLitreInM3 = 1000;

/**
 * The mass balance of a mixed room: V dC/dt = G − Q C, with G the source and Q = V · air changes.
 * Source: the material balance of Earnest and others, American Industrial Hygiene Association Journal 58 (1997), 787–791.
 * Problems: `not-finite`, `out-of-range` (volume above 0, all else from 0).
 */
export function mixedAir(room: MixedRoom): Result<MixedAir> {
  const { volumeM3, airChangesPerHour, sourceLPerMin, initialPpm } = room;
  const problem =
    checkNumber('volumeM3', volumeM3, { above: 0 }) ??
    checkNumber('airChangesPerHour', airChangesPerHour, { min: 0 }) ??
    checkNumber('sourceLPerMin', sourceLPerMin, { min: 0 }) ??
    checkNumber('initialPpm', initialPpm, { min: 0 });
  if (problem) return fail(problem);
  return succeed({
    initialPpm,
    ratePpmPerMin: (ppmPerLitreInM3 * sourceLPerMin) / volumeM3,
    clearingPerMin: airChangesPerHour / minutesPerHour,
  });
}

/** Where the concentration goes in the end: G/Q; null in a sealed room with a source, where it only rises. */
export const steadyPpm = ({ initialPpm, ratePpmPerMin, clearingPerMin }: MixedAir): number | null => {
  if (clearingPerMin > 0) return ratePpmPerMin / clearingPerMin;
  return ratePpmPerMin > 0 ? null : initialPpm;
};

/** Concentration after some minutes, from 0: C₀ e^(−kt) + (G/V)(1 − e^(−kt))/k; C₀ + (G/V) t in a sealed room. */
export const concentrationPpm = (air: MixedAir, minutes: number): number =>
  air.initialPpm * Math.exp(-air.clearingPerMin * minutes) +
  air.ratePpmPerMin * clearedMinutes(air.clearingPerMin, minutes);

/** The integral of the concentration from 0, in ppm · min: what a dose is made of. */
export const exposurePpmMin = (air: MixedAir, minutes: number): number =>
  air.initialPpm * clearedMinutes(air.clearingPerMin, minutes) +
  air.ratePpmPerMin * clearedSquare(air.clearingPerMin, minutes);

/**
 * Minutes until the concentration first reaches a level: 0 where it is there already, null where it never is.
 * From (C − C₀)/(G/V − k C₀) = (1 − e^(−kt))/k; the same as t = −(V/Q) ln(1 − C Q/G) for C₀ = 0.
 */
export function minutesToReach(air: MixedAir, levelPpm: number): number | null {
  const { initialPpm, ratePpmPerMin, clearingPerMin } = air;
  if (initialPpm >= levelPpm) return 0;
  const risePpmPerMin = ratePpmPerMin - clearingPerMin * initialPpm;
  if (risePpmPerMin <= 0) return null;
  const sealedMinutes = (levelPpm - initialPpm) / risePpmPerMin;
  const share = clearingPerMin * sealedMinutes;
  if (share >= 1) return null;
  return share === 0 ? sealedMinutes : -Math.log1p(-share) / clearingPerMin;
}

/** (1 − e^(−kt))/k: the minutes that a source would have needed without clearing. */
const clearedMinutes = (perMin: number, minutes: number): number =>
  perMin === 0 ? minutes : -Math.expm1(-perMin * minutes) / perMin;

/** (t − (1 − e^(−kt))/k)/k = t² (1/2 − x/6 + x²/24 − …) with x = kt: the difference would lose digits at small x. */
const clearedSquare = (perMin: number, minutes: number): number => {
  const x = perMin * minutes;
  if (x > 0.02) return (minutes - clearedMinutes(perMin, minutes)) / perMin;
  // The first term left out, x⁶/20160, is 3e-15 of the sum at most.
  return minutes ** 2 * (1 / 2 - x / 6 + x ** 2 / 24 - x ** 3 / 120 + x ** 4 / 720 - x ** 5 / 5040);
};
