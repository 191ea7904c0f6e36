import type { BalanceAnalysis, BalanceReadings, Difference, ScrewBalance } from './balance-analysis.ts';
import { differenceOf, expand, uncertaintyOf, weighted } from './balance-difference.ts';
import { chanceOfRangeWithShared } from './chance-of-range.ts';
import { checkBalanceReadings } from './check-balance-readings.ts';
import { throttleAreaRatio } from './compressible-flow.ts';
import { atTargetSpeed, carburettorMeans } from './correct-readings.ts';
import { conventionalMercuryDensity, standardAtmospherePa, standardGravity } from './exact-definitions.ts';
import { screwsOf } from './linkage.ts';
import { matchedTo, referenceWeights, screwContrasts } from './matched-to.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

/**
 * How well a set is balanced, how sure that is, and which way each screw has to go.
 *
 * Uncertainty of a mean: `meanUncertainty`. Expanded uncertainty: times Student's t at the confidence,
 * with the degrees of freedom of Welch and Satterthwaite (JCGM 100:2008, G.4.1). Chance: `chanceOfRange`;
 * within if it is at least the confidence, outside if it is at most 1 less the confidence, else the
 * readings cannot tell. The drift's own uncertainty is an error that all means share and is treated so.
 *
 * Problems: those of `checkBalanceReadings` and of `screwsOf`.
 */
export function analyseBalance(given: BalanceReadings): Result<BalanceAnalysis> {
  const { generation, carburettors, fixed, groups, gauge, tolerancePa } = given;
  const confidence = given.confidence ?? 0.95;
  const ambientPa = given.ambientPa ?? standardAtmospherePa;
  const screws = screwsOf(generation, carburettors, {
    ...(fixed !== undefined && { fixed }),
    ...(groups !== undefined && { groups }),
  });
  if (!screws.ok) return screws;
  const problem = checkBalanceReadings(given, confidence, ambientPa);
  if (problem !== undefined) return fail(problem);

  const corrected = atTargetSpeed(given.readings, given.speed);
  const { means, drift } = carburettorMeans(corrected, carburettors, gauge, given.driftReference);
  const meansPa = means.map(({ meanPa }) => meanPa);
  const reference = matchedTo(generation, meansPa, fixed);
  const weights = referenceWeights(reference, carburettors);
  const referencePa = weighted(weights, meansPa);
  const compare = (contrast: readonly number[]): Difference => differenceOf(contrast, means, confidence);
  const even = meansPa.map(() => 1 / carburettors);
  const highestPa = Math.max(...meansPa);
  const lowestPa = Math.min(...meansPa);
  const chanceWithin = chanceOfRangeWithShared(
    means.map(({ meanPa, standardUncertaintyPa, degreesOfFreedom }) => ({
      centre: meanPa,
      scale: standardUncertaintyPa,
      degreesOfFreedom,
    })),
    means.map(({ driftLoadingPa }) => driftLoadingPa),
    tolerancePa,
  );

  return succeed({
    carburettors: means.map((own, position) => {
      const { standardUncertaintyPa, degreesOfFreedom } = uncertaintyOf(unit(position, carburettors), means);
      const ratio = throttleAreaRatio(own.meanPa, referencePa, ambientPa);
      return {
        carburettor: position + 1,
        readings: own.count,
        meanPa: own.meanPa,
        standardUncertaintyPa,
        degreesOfFreedom: degreesOfFreedom === Infinity ? null : degreesOfFreedom,
        expandedUncertaintyPa: expand(standardUncertaintyPa, degreesOfFreedom, confidence),
        deviation: compare(unit(position, carburettors).map((one, i) => one - (weights[i] ?? 0))),
        areaRatio: ratio.ok ? ratio.value : null,
      };
    }),
    screws: screwContrasts(screws.value, weights).map((contrast, position) => {
      const difference = compare(contrast);
      return {
        screw: position + 1,
        moves: screws.value[position]?.moves ?? [],
        ...difference,
        direction: directionOf(difference.differencePa),
      };
    }),
    matchedTo: reference,
    referencePa,
    meanPa: weighted(even, meansPa),
    highest: meansPa.indexOf(highestPa) + 1,
    lowest: meansPa.indexOf(lowestPa) + 1,
    spreadPa: highestPa - lowestPa,
    tolerancePa,
    confidence,
    chanceWithin,
    verdict:
      chanceWithin >= confidence ? 'within' : chanceWithin <= 1 - confidence ? 'outside' : 'cannot-tell',
    drift,
  });
}

/** A smaller difference is the rounding of the sums, and no reason to turn anything. */
const roundingPa = 1e-6;

const directionOf = (differencePa: number): ScrewBalance['direction'] =>
  Math.abs(differencePa) < roundingPa ? 'none' : differencePa > 0 ? 'open' : 'close';

const unit = (position: number, length: number): number[] =>
  Array.from({ length }, (_, i) => (i === position ? 1 : 0));

const mmHg = (conventionalMercuryDensity * standardGravity) / 1000;

/**
 * Worked example, invented: four carburettors of which the second has no adjuster, read once each, the second
 * again at the end so that the drift shows. The gauge is marked every 5 mmHg and swings by 3 mmHg either way.
 */
export const balanceAnalyserExample: BalanceReadings = {
  generation: 'fixed-reference',
  carburettors: 4,
  fixed: 2,
  readings: [
    { carburettor: 2, depressionPa: 248 * mmHg },
    { carburettor: 1, depressionPa: 212 * mmHg },
    { carburettor: 3, depressionPa: 251 * mmHg },
    { carburettor: 4, depressionPa: 187 * mmHg },
    { carburettor: 2, depressionPa: 252 * mmHg },
  ],
  gauge: { resolutionPa: 5 * mmHg, flutterPa: 3 * mmHg },
  tolerancePa: 20 * mmHg,
  driftReference: 2,
};
