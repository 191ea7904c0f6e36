import type { BalanceAnalysis, BalanceReadings, Difference, ScrewBalance } from './balance-analysis.ts';
import { differenceOf, expand, uncertaintyOf, weighted } from './balance-difference.ts';
import { chanceOfRangeWithShared } from './chance-of-range.ts';
import { checkBalanceReadings } from './check-balance-readings.ts';
import { throttleAreaRatio } from './compressible-flow.ts';
import { atTargetSpeed, carburettorMeans } from './correct-readings.ts';
import { standardAtmospherePa } from './exact-definitions.ts';
import { screwsOf } from './linkage.ts';
import { matchedTo, referenceWeights, screwContrasts } from './matched-to.ts';
import { moreReadings, withOffset } from './more-readings.ts';
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
 * Problems: those of `checkBalanceReadings` and of `screwsOf`; `impossible-correction` for speed.
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
  const impossible = corrected.find(({ depressionPa }) => !(depressionPa >= 0 && depressionPa < ambientPa));
  if (impossible !== undefined) {
    const { carburettor, depressionPa } = impossible;
    return fail({ kind: 'impossible-correction', field: 'speed', carburettor, depressionPa });
  }
  const offsetPa = given.offsetUncertaintyPa ?? 0;
  const { means: asRead, drift } = carburettorMeans(corrected, carburettors, gauge, given.driftReference);
  const means = asRead.map((own) => withOffset(own, offsetPa));
  const meansPa = means.map(({ meanPa }) => meanPa);
  const reference = matchedTo(generation, meansPa, fixed);
  const weights = referenceWeights(reference, carburettors);
  const referencePa = weighted(weights, meansPa);
  const compare = (contrast: readonly number[]): Difference => differenceOf(contrast, means, confidence);
  const even = meansPa.map(() => 1 / carburettors);
  const highestPa = Math.max(...meansPa);
  const lowestPa = Math.min(...meansPa);
  const highest = meansPa.indexOf(highestPa);
  // The last of equals, so that a set that reads alike still compares two of it.
  const lowest = meansPa.lastIndexOf(lowestPa);
  const chanceWithin = chanceOfRangeWithShared(
    means.map(({ meanPa, standardUncertaintyPa, degreesOfFreedom }) => ({
      centre: meanPa,
      scale: standardUncertaintyPa,
      degreesOfFreedom,
    })),
    means.map(({ driftLoadingPa }) => driftLoadingPa),
    tolerancePa,
  );
  const verdict =
    chanceWithin >= confidence ? 'within' : chanceWithin <= 1 - confidence ? 'outside' : 'cannot-tell';

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
        deviation: compare(unit(position, carburettors).map((one, i) => one - weights[i]!)),
        areaRatio: ratio.ok ? ratio.value : null,
      };
    }),
    screws: screwContrasts(screws.value, weights).map((contrast, position) => {
      const difference = compare(contrast);
      return {
        screw: position + 1,
        moves: screws.value[position]!.moves,
        ...difference,
        direction: directionOf(difference.differencePa),
      };
    }),
    matchedTo: reference,
    referencePa,
    meanPa: weighted(even, meansPa),
    highest: highest + 1,
    lowest: lowest + 1,
    spreadPa: highestPa - lowestPa,
    spread: compare(meansPa.map((_, i) => Number(i === highest) - Number(i === lowest))),
    tolerancePa,
    confidence,
    chanceWithin,
    verdict,
    drift,
    more: verdict === 'cannot-tell' ? moreReadings(means, gauge, offsetPa, tolerancePa, confidence) : null,
  });
}

/** A smaller difference is the rounding of the sums, and no reason to turn anything. */
const roundingPa = 1e-6;

const directionOf = (differencePa: number): ScrewBalance['direction'] =>
  Math.abs(differencePa) < roundingPa ? 'none' : differencePa > 0 ? 'open' : 'close';

const unit = (position: number, length: number): number[] =>
  Array.from({ length }, (_, i) => (i === position ? 1 : 0));
