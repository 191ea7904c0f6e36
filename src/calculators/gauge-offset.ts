import { expand, weighted } from './balance-difference.ts';
import type { Difference } from './balance-analysis.ts';
import { mean } from './mean.ts';
import type { AtLeastOne } from './mean.ts';
import type { Gauge } from './protocol.ts';
import { combine, meanUncertainty } from './reading-uncertainty.ts';
import type { Uncertainty } from './reading-uncertainty.ts';
import { sampleStandardDeviation } from './sample-standard-deviation.ts';

/** Readings of one gauge, in pascals: at least one. */
export type GaugeReadings = AtLeastOne;

const scatterOf = ([first, second, ...others]: readonly number[]) =>
  first === undefined || second === undefined
    ? undefined
    : {
        standardDeviationPa: sampleStandardDeviation([first, second, ...others]),
        degreesOfFreedom: others.length + 1,
      };

const differenceWith = (
  differencePa: number,
  { standardUncertaintyPa, degreesOfFreedom }: Uncertainty,
  confidence: number,
): Difference => {
  const expandedUncertaintyPa = expand(standardUncertaintyPa, degreesOfFreedom, confidence);
  return { differencePa, expandedUncertaintyPa, real: Math.abs(differencePa) > expandedUncertaintyPa };
};

/**
 * A weighted sum of the means of gauges that were read one after the other, each with its own scatter: u² = Σ c² u²,
 * degrees of freedom by Welch and Satterthwaite (JCGM 100:2008, 5.1.2 and G.4.1). Each mean as in `meanUncertainty`.
 */
export function offsetInTurn(
  contrast: readonly number[],
  readings: readonly GaugeReadings[],
  gauge: Gauge,
  confidence: number,
): Difference {
  const means = readings.map((own) => meanUncertainty(gauge, own.length, scatterOf(own)));
  const uncertainty = combine(
    means.map(({ standardUncertaintyPa, degreesOfFreedom }, i) => ({
      variancePa2: (contrast[i]! * standardUncertaintyPa) ** 2,
      degreesOfFreedom,
    })),
  );
  return differenceWith(weighted(contrast, readings.map(mean)), uncertainty, confidence);
}

/**
 * The same of gauges that were read together in rounds, so that what the engine does falls out of every round: the scatter
 * is that of the weighted sum from round to round, with one degree of freedom less than there are rounds.
 *
 * u² = s²/n + Σ c² (a²/(3 m n) + r²/12): flutter a differs from reading to reading, `readingsPerRound` m of them behind
 * each figure; the rounding of the scale, r, is shared by readings that fall on the same mark (GUM 4.2.3, 4.3.7, F.2.2.1).
 * Every gauge has a figure for every round: the caller has checked it.
 */
export function offsetTogether(
  contrast: readonly number[],
  rounds: readonly GaugeReadings[],
  readingsPerRound: readonly number[],
  gauge: Gauge,
  confidence: number,
): Difference {
  const sums = rounds[0]!.map((_, round) =>
    weighted(
      contrast,
      rounds.map((own) => own[round]!),
    ),
  );
  const scatter = scatterOf(sums);
  const told = contrast.reduce((sum, c, i) => {
    const flutter = gauge.flutterPa ** 2 / 3 / (readingsPerRound[i]! * sums.length);
    return sum + c ** 2 * (flutter + gauge.resolutionPa ** 2 / 12);
  }, 0);
  const uncertainty = combine([
    { variancePa2: told, degreesOfFreedom: Infinity },
    {
      variancePa2: (scatter?.standardDeviationPa ?? 0) ** 2 / sums.length,
      degreesOfFreedom: scatter?.degreesOfFreedom ?? Infinity,
    },
  ]);
  const differencePa = weighted(contrast, rounds.map(mean));
  return differenceWith(differencePa, uncertainty, confidence);
}
