import { priors } from './advisor/priors.ts';
import { parseReading } from './bench-reading.ts';
import { formatSignificant } from './format-number.ts';
import { inUnit, pressureUnit } from './pressure-units.ts';
import type { Problem } from './problem.ts';
import type { Gauge } from './protocol.ts';
import { readingsOfList } from './reading-list.ts';
import { fail, succeed, type Result } from './result.ts';
import { sampleStandardDeviation } from './sample-standard-deviation.ts';

/** A two-minute test of the gauge on one carburettor, warm engine, speed brought back before every reading; as typed. */
export type GaugeTrialTyped = {
  /** Lowest and highest that the damped needle shows in ten seconds. */
  readonly swing: string;
  /** The same carburettor, five times or more. */
  readonly repeats: string;
  /** Just before and just after the nut is nipped, three pairs or more. */
  readonly locking: string;
};

export type GaugeTrial = Gauge & {
  /** Whether the readings scatter more than needle and scale explain, so that the swing was raised. */
  readonly raised: boolean;
  /** Slip of a screw on locking, one standard deviation; null where it was not tried. */
  readonly lockShiftTurns: number | null;
};

export type GaugeTrialField = keyof GaugeTrialTyped;

const fewestRepeats = 5;
const fewestPairs = 3;

/**
 * What the gauge can resolve, from the person's own readings.
 *
 * Resolution: the smallest step between two different readings. Flutter: half of highest less lowest; where the repeats
 * scatter more than both explain, the flutter that explains them, from s² = a²/3 + r²/12 (JCGM 100:2008, 4.3.7 and
 * F.2.2.1), because what is told to the advice must cover speed and eye as well. Slip on locking: the root mean square of
 * the changes, less what two readings differ by chance, over the effect of a turn (`effectPaPerTurn`, else the prior).
 * Problems, each with its field: those of `parseReading`; `too-few-readings`; `all-equal` where no two readings differ,
 * so that the step does not show.
 */
export const computeGaugeTrial = (
  typed: GaugeTrialTyped,
  unitId: string,
  ambientPa?: number,
  effectPaPerTurn: number = priors.effectPaPerTurn,
): Result<GaugeTrial> => {
  const swing = readingsIn(typed.swing, 'swing', 2, unitId, ambientPa);
  if (!swing.ok) return swing;
  const repeats = readingsIn(typed.repeats, 'repeats', fewestRepeats, unitId, ambientPa);
  if (!repeats.ok) return repeats;
  const locking =
    typed.locking.trim() === ''
      ? null
      : readingsIn(typed.locking, 'locking', 2 * fewestPairs, unitId, ambientPa);
  if (locking && !locking.ok) return locking;

  const resolutionPa = smallestStep([...repeats.value, ...swing.value, ...(locking?.value ?? [])]);
  if (resolutionPa === null) return fail({ kind: 'all-equal', field: 'swing' });
  const seenPa = (Math.max(...swing.value) - Math.min(...swing.value)) / 2;
  const explained = seenPa ** 2 / 3 + resolutionPa ** 2 / 12;
  const [first, second, ...others] = repeats.value;
  const scatter = sampleStandardDeviation([first!, second!, ...others]) ** 2;
  const raised = scatter > explained;
  const flutterPa = raised ? Math.sqrt(3 * (scatter - resolutionPa ** 2 / 12)) : seenPa;
  const lockShiftTurns = locking
    ? slip(locking.value, 2 * (flutterPa ** 2 / 3 + resolutionPa ** 2 / 12), effectPaPerTurn)
    : null;
  return succeed({ resolutionPa, flutterPa, raised, lockShiftTurns });
};

const slip = (readings: readonly number[], chanceVariance: number, effectPaPerTurn: number): number => {
  const squares: number[] = [];
  for (let k = 0; k + 1 < readings.length; k += 2) squares.push((readings[k + 1]! - readings[k]!) ** 2);
  const meanSquare = squares.reduce((sum, square) => sum + square, 0) / squares.length;
  return Math.sqrt(Math.max(0, meanSquare - chanceVariance)) / effectPaPerTurn;
};

/** The smallest difference between two readings that differ; null where all are equal. */
const smallestStep = (readings: readonly number[]): number | null => {
  const sorted = [...readings].sort((a, b) => a - b);
  const steps = sorted.slice(1).flatMap((reading, k) => {
    const step = reading - sorted[k]!;
    return step > tailPa ? [step] : [];
  });
  return steps.length === 0 ? null : Math.min(...steps);
};

/** Two readings closer than this are the same figure with the tail of its binary fraction. */
const tailPa = 1e-6;

const readingsIn = (
  typed: string,
  field: GaugeTrialField,
  fewest: number,
  unitId: string,
  ambientPa: number | undefined,
): Result<readonly number[]> => {
  const readings: number[] = [];
  for (const part of readingsOfList(typed)) {
    const reading = parseReading(part, unitId, { ambientPa });
    if (!reading.ok) return fail({ ...reading.problem, field } as Problem);
    readings.push(reading.value);
  }
  return readings.length < fewest
    ? fail({ kind: 'too-few-readings', field, value: readings.length, limit: { min: fewest } })
    : succeed(readings);
};

/** The result as the set-up's answers, in the gauge's unit, to the two digits that such a test can give. */
export const describeGaugeTrial = (
  { resolutionPa, flutterPa, lockShiftTurns }: GaugeTrial,
  unitId: string,
): { readonly resolution: string; readonly flutter: string; readonly lockShift: string } => {
  const short = (value: number): string => formatSignificant(value, 2, { minus: 'hyphen' });
  const unit = pressureUnit(unitId);
  return {
    resolution: short(inUnit(resolutionPa, unit)),
    flutter: short(inUnit(flutterPa, unit)),
    lockShift: lockShiftTurns === null ? '' : short(lockShiftTurns),
  };
};
