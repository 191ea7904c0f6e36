import type { BalanceReadings } from './balance-analysis.ts';
import { checkIndex, checkNumber, checkOptionalNumber } from './check-number.ts';
import { checkDepression, confidenceLimit } from './check-session.ts';
import type { Problem } from './problem.ts';

/**
 * The first thing that is wrong with readings to be analysed, or undefined; the number of carburettors
 * and the linkage have been checked. Problems: `not-finite`, `out-of-range`, `index`,
 * `depression-beyond-ambient`, `no-readings` of a carburettor, and `too-few-readings` of the drift reference.
 */
export function checkBalanceReadings(
  given: BalanceReadings,
  confidence: number,
  ambientPa: number,
): Problem | undefined {
  const { carburettors, readings, gauge, speed, driftReference } = given;
  const problem =
    checkNumber('gauge.resolutionPa', gauge.resolutionPa, { above: 0 }) ??
    checkNumber('gauge.flutterPa', gauge.flutterPa, { min: 0 }) ??
    checkNumber('tolerancePa', given.tolerancePa, { above: 0 }) ??
    checkNumber('confidence', confidence, confidenceLimit) ??
    checkNumber('ambientPa', ambientPa, { above: 0 }) ??
    checkOptionalNumber('offsetUncertaintyPa', given.offsetUncertaintyPa, { min: 0 }) ??
    checkOptionalNumber('speed.targetRpm', speed?.targetRpm, { above: 0 }) ??
    checkOptionalNumber('speed.sensitivityPaPerRpm', speed?.sensitivityPaPerRpm);
  if (problem !== undefined) return problem;
  for (const [position, reading] of readings.entries()) {
    const field = `readings.${position}`;
    const wrong =
      checkIndex(`${field}.carburettor`, reading.carburettor, carburettors) ??
      checkDepression(`${field}.depressionPa`, reading.depressionPa, ambientPa) ??
      checkOptionalNumber(`${field}.rpm`, reading.rpm, { min: 0 });
    if (wrong) return wrong;
  }
  const counts = Array.from(
    { length: carburettors },
    (_, position) => readings.filter(({ carburettor }) => carburettor === position + 1).length,
  );
  const missing = counts.indexOf(0);
  if (missing >= 0) return { kind: 'no-readings', field: `carburettors.${missing}` };
  if (driftReference === undefined) return undefined;
  const count = counts[driftReference - 1] ?? 0;
  return (
    checkIndex('driftReference', driftReference, carburettors) ??
    (count < 2
      ? { kind: 'too-few-readings', field: 'driftReference', value: count, limit: { min: 2 } }
      : undefined)
  );
}
