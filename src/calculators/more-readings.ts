import { chanceOfRange } from './chance-of-range.ts';
import type { CarburettorMean } from './correct-readings.ts';
import type { Gauge } from './protocol.ts';
import { combine, meanUncertainty } from './reading-uncertainty.ts';

/** What would settle a set that the readings cannot tell, if they go on as they began. */
export type MoreReadings = {
  /** The carburettor whose next reading moves the chance furthest from one half. */
  readonly carburettor: number;
  /** Further rounds of all carburettors until the chance decides; null where even the most would not. */
  readonly rounds: number | null;
};

/** Further rounds that are looked at: more nobody reads while an engine gets hot (from memory). */
const mostRounds = 12;
const roundsTried = [1, 2, 3, 4, 6, 8, mostRounds] as const;

/**
 * Foresees further readings: the means stay, each carburettor's scatter too, and the uncertainty of a mean falls as
 * `meanUncertainty` says, down to what the step of the gauge leaves. The drift is left out of the foresight, because
 * further readings make it smaller too. A rule of our own (no source).
 */
export function moreReadings(
  means: readonly CarburettorMean[],
  gauge: Gauge,
  offsetUncertaintyPa: number,
  tolerancePa: number,
  confidence: number,
): MoreReadings {
  const chanceAfter = (further: (position: number) => number): number =>
    chanceOfRange(
      means.map(({ meanPa, count, scatter }, position) => {
        const more = further(position);
        const told = meanUncertainty(
          gauge,
          count + more,
          scatter && { ...scatter, degreesOfFreedom: scatter.degreesOfFreedom + more },
        );
        const { standardUncertaintyPa, degreesOfFreedom } = withOffset(told, offsetUncertaintyPa);
        return { centre: meanPa, scale: standardUncertaintyPa, degreesOfFreedom };
      }),
      tolerancePa,
    );
  const decisive = means.map((_, position) =>
    Math.abs(chanceAfter((each) => (each === position ? 1 : 0)) - 0.5),
  );
  const decides = (rounds: number): boolean => {
    const chance = chanceAfter(() => rounds);
    return chance >= confidence || chance <= 1 - confidence;
  };
  return {
    carburettor: decisive.indexOf(Math.max(...decisive)) + 1,
    rounds: decides(mostRounds) ? roundsTried.find(decides)! : null,
  };
}

/** An uncertainty with that of the gauge's own correction, which no repeat reading makes smaller. */
export const withOffset = <Value extends { standardUncertaintyPa: number; degreesOfFreedom: number }>(
  value: Value,
  offsetUncertaintyPa: number,
): Value => ({
  ...value,
  ...combine([
    { variancePa2: value.standardUncertaintyPa ** 2, degreesOfFreedom: value.degreesOfFreedom },
    { variancePa2: offsetUncertaintyPa ** 2, degreesOfFreedom: Infinity },
  ]),
});
