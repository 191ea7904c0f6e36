import type { Difference } from './balance-analysis.ts';
import { checkIndex, checkNumber } from './check-number.ts';
import { offsetInTurn, offsetTogether } from './gauge-offset.ts';
import type { GaugeReadings } from './gauge-offset.ts';
import { mean } from './mean.ts';
import type { Gauge } from './protocol.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

export type GaugeQuestion = {
  /** In turn: gauge after gauge on the take-off. In rounds: all at the same moment, or runs of a swap. */
  readonly read: 'in-turn' | 'in-rounds';
  /** Depressions in pascals, gauge by gauge, 2–8 gauges; in rounds, as many of each. */
  readonly readings: readonly GaugeReadings[];
  /** In rounds: readings behind each figure of a gauge, such as 2 of A and 1 of B in A-B-A. */
  readonly readingsPerRound: readonly number[];
  /** Step and swing of the gauges; of the worst of them, where they differ. */
  readonly gauge: Gauge;
  /** The gauge that the others are held against, counted from 1; null for the mean of all. */
  readonly reference: number | null;
  /** Permissible error of each gauge by class and span; null where it is not known. */
  readonly permissiblePa: readonly (number | null)[];
  readonly confidence: number;
};

export type GaugeOffset = Difference & {
  readonly gauge: number;
  readonly readings: number;
  readonly meanPa: number;
  readonly permissiblePa: number | null;
  /** How far it may be off what it is held against, when every gauge keeps to its class; null where that is not known. */
  readonly allowedPa: number | null;
  /** Null where the allowed offset is not known, and for the reference itself. */
  readonly keepsToClass: 'yes' | 'no' | 'cannot-tell' | null;
};

export type GaugeComparison = {
  readonly gauges: readonly GaugeOffset[];
  readonly reference: number | null;
  readonly referencePa: number;
  /** The largest offset that is real; null where none is. */
  readonly worst: GaugeOffset | null;
  /** The largest expanded uncertainty of an offset: for what is handed on. */
  readonly largestUncertaintyPa: number;
};

export const gaugeCountLimit = { min: 2, max: 8 } as const;

/**
 * How far each gauge reads off a reference or the mean of all, how sure that is, and whether its class allows it.
 *
 * Offsets and uncertainties: `gauge-offset.ts`. Allowed offset: the permissible errors of all gauges, each times the
 * weight that it has in the offset, since every one may be off by its own; a reference whose class is not known
 * is taken as right. Kept: |offset| + U within it; not kept: |offset| − U beyond it; else the readings cannot tell.
 * Problems: `not-finite`, `out-of-range` on the step and the swing; `index` for a reference that is none of the gauges.
 */
export function compareGauges(question: GaugeQuestion): Result<GaugeComparison> {
  const { readings, reference, gauge } = question;
  const problem =
    checkNumber('gauge.resolutionPa', gauge.resolutionPa, { min: 0 }) ??
    checkNumber('gauge.flutterPa', gauge.flutterPa, { min: 0 }) ??
    (reference === null ? undefined : checkIndex('reference', reference, readings.length));
  if (problem) return fail(problem);

  const meansPa = readings.map(mean);
  const weights = readings.map((_, i) =>
    reference === null ? 1 / readings.length : i + 1 === reference ? 1 : 0,
  );
  const gauges = readings.map((own, i): GaugeOffset => {
    const contrast = weights.map((weight, j) => (j === i ? 1 - weight : -weight));
    const offset = offsetOf(contrast, question);
    const allowedPa = allowedOffset(contrast, question);
    return {
      gauge: i + 1,
      readings: own.length * question.readingsPerRound[i]!,
      meanPa: meansPa[i]!,
      ...offset,
      permissiblePa: question.permissiblePa[i]!,
      allowedPa,
      keepsToClass: i + 1 === reference || allowedPa === null ? null : keepsTo(offset, allowedPa),
    };
  });
  const real = gauges.filter((each) => each.real);
  const [worst = null] = real.sort((a, b) => Math.abs(b.differencePa) - Math.abs(a.differencePa));
  return succeed({
    gauges,
    reference,
    referencePa: weights.reduce((sum, weight, i) => sum + weight * meansPa[i]!, 0),
    worst,
    largestUncertaintyPa: Math.max(...gauges.map(({ expandedUncertaintyPa }) => expandedUncertaintyPa)),
  });
}

const offsetOf = (contrast: readonly number[], question: GaugeQuestion): Difference =>
  question.read === 'in-turn'
    ? offsetInTurn(contrast, question.readings, question.gauge, question.confidence)
    : offsetTogether(
        contrast,
        question.readings,
        question.readingsPerRound,
        question.gauge,
        question.confidence,
      );

function allowedOffset(
  contrast: readonly number[],
  { permissiblePa, reference }: GaugeQuestion,
): number | null {
  let allowed = 0;
  for (const [i, weight] of contrast.entries()) {
    if (weight === 0) continue;
    const own = permissiblePa[i] ?? (i + 1 === reference ? 0 : null);
    if (own === null) return null;
    allowed += Math.abs(weight) * own;
  }
  return allowed;
}

function keepsTo({ differencePa, expandedUncertaintyPa }: Difference, allowedPa: number) {
  if (Math.abs(differencePa) + expandedUncertaintyPa <= allowedPa) return 'yes';
  return Math.abs(differencePa) - expandedUncertaintyPa > allowedPa ? 'no' : 'cannot-tell';
}
