import { amplitudeRatio, timeConstantOfRatio, waitingTimeS } from './first-order-lag.ts';
import { firingFrequencyHz, fourStrokeCycleDegrees, intakeFrequencyHz } from './firing-frequency.ts';
import {
  differenceUncertainty,
  finestDifference,
  readingsNeeded,
  resolvableDifference,
} from './readings-needed.ts';
import type { ReadingScatter } from './readings-needed.ts';
import { succeed } from './result.ts';
import type { Result } from './result.ts';
import { resolutionUncertainty, rootSumOfSquares, standardUncertaintyOf } from './standard-uncertainty.ts';
import type { Distribution } from './standard-uncertainty.ts';

export type FlutterQuestion = {
  readonly cylinders: number;
  readonly rpm: number;
  /** Swing of the needle with the tap open, either way from its middle. */
  readonly openFlutterPa: number;
  /** How a reading falls within the swing that is left. */
  readonly distribution: Distribution;
  /** Of needle, hose and tap as they will be used; 0 for no damping at all. */
  readonly timeConstantS: number;
  readonly resolutionPa: number;
  /** Readings of each carburettor that somebody is ready to take, from 2. */
  readonly readings: number;
  readonly differencePa: number;
};

/**
 * What the tap should do. `calm`: the needle stays within one step even with the tap open. `still`: it moves by less
 * than a step, and cannot be told from a shut tap. `just-moving`: by one to two steps. `lively`: by more, so that the
 * swing outweighs the scale. At one step either way round both contribute the same to a reading.
 */
export type TapPosition = 'calm' | 'still' | 'just-moving' | 'lively';

export type FlutterAnswer = {
  readonly firingHz: number;
  readonly firingIntervalDegrees: number;
  /** Of the one take-off that the gauge is on. */
  readonly intakeHz: number;
  readonly shareLeft: number;
  /** Either way from the middle. */
  readonly flutterLeftPa: number;
  /** Until the needle has gone 99 % of its way. */
  readonly waitS: number;
  /** Until the needle has gone 90 %, 99 % and 99.9 % of its way. */
  readonly waits: readonly { readonly share: number; readonly seconds: number }[];
  readonly tap: TapPosition;
  /** Settling times (99 %) that leave two steps and one step of swing; null where the needle is calm. */
  readonly goodSettlingS: { readonly from: number; readonly to: number } | null;
  /** Standard uncertainties of one reading. */
  readonly flutterUncertaintyPa: number;
  readonly resolutionUncertaintyPa: number;
  readonly readingUncertaintyPa: number;
  /** Of the difference of two means, with its degrees of freedom (null where nothing limits them). */
  readonly differenceUncertaintyPa: number;
  readonly degreesOfFreedom: number | null;
  /** The smallest difference that the readings resolve at 95 %. */
  readonly resolvedPa: number;
  /** What no number of readings gets below. */
  readonly finestPa: number;
  /** Readings of each carburettor for the difference; null where no number is enough. */
  readonly needed: number | null;
  /** The same, to see nine times in ten a difference that is really there. */
  readonly neededToSee: number | null;
};

export const flutterConfidence = 0.95;
/** A usual chance to see what is there: common practice, no source. */
export const flutterPower = 0.9;
export const settledShare = 0.99;

/**
 * What flutter, damping and scale do to readings, and how many it takes to tell two carburettors apart.
 *
 * The ripple is a sine at the take-off's own intake frequency; the damping a first-order lag (`first-order-lag.ts`); the
 * count of readings `readings-needed.ts`. The swing left is a half-width (GUM 4.3.7, 4.3.9), the step a full width
 * (F.2.2.1). Problems: those of `firingFrequencyHz` and of `readingsNeeded` but for `below-the-step`, which is an answer.
 */
export function computeFlutterAndRepeats(question: FlutterQuestion): Result<FlutterAnswer> {
  const { cylinders, rpm, openFlutterPa, timeConstantS, resolutionPa, readings, differencePa } = question;
  const intake = intakeFrequencyHz(rpm);
  if (!intake.ok) return intake;
  const firing = firingFrequencyHz(rpm, cylinders);
  if (!firing.ok) return firing;

  const shareLeft = amplitudeRatio(intake.value, timeConstantS);
  const flutterLeftPa = openFlutterPa * shareLeft;
  const flutterUncertaintyPa = standardUncertaintyOf(question.distribution, flutterLeftPa);
  const resolutionUncertaintyPa = resolutionUncertainty(resolutionPa);
  const scatter: ReadingScatter = { scatterPa: flutterUncertaintyPa, resolutionPa };
  const confidence = flutterConfidence;
  const needed = readingsNeeded(scatter, differencePa, { confidence });
  if (!needed.ok && needed.problem.kind !== 'below-the-step') return needed;
  const neededToSee = readingsNeeded(scatter, differencePa, { confidence, power: flutterPower });
  const difference = differenceUncertainty(scatter, readings);

  return succeed({
    firingHz: firing.value,
    firingIntervalDegrees: fourStrokeCycleDegrees / cylinders,
    intakeHz: intake.value,
    shareLeft,
    flutterLeftPa,
    waitS: waitingTimeS(settledShare, timeConstantS),
    waits: [0.9, settledShare, 0.999].map((share) => ({
      share,
      seconds: waitingTimeS(share, timeConstantS),
    })),
    tap: tapPosition(openFlutterPa, flutterLeftPa, resolutionPa),
    goodSettlingS: goodSettling(openFlutterPa, resolutionPa, intake.value),
    flutterUncertaintyPa,
    resolutionUncertaintyPa,
    readingUncertaintyPa: rootSumOfSquares([flutterUncertaintyPa, resolutionUncertaintyPa]),
    differenceUncertaintyPa: difference.standardUncertaintyPa,
    degreesOfFreedom: Number.isFinite(difference.degreesOfFreedom) ? difference.degreesOfFreedom : null,
    resolvedPa: resolvableDifference(scatter, readings, { confidence }),
    finestPa: finestDifference(resolutionPa, { confidence }),
    needed: needed.ok ? needed.value : null,
    neededToSee: neededToSee.ok ? neededToSee.value : null,
  });
}

function tapPosition(openFlutterPa: number, flutterLeftPa: number, resolutionPa: number): TapPosition {
  const steps = (2 * flutterLeftPa) / resolutionPa;
  if (2 * openFlutterPa <= resolutionPa) return 'calm';
  if (steps < 1) return 'still';
  return steps <= 2 ? 'just-moving' : 'lively';
}

/** The time constants that leave two steps and one step, as the time a needle takes to settle. */
function goodSettling(openFlutterPa: number, resolutionPa: number, intakeHz: number) {
  const settling = (steps: number): number => {
    const ratio = (steps * resolutionPa) / (2 * openFlutterPa);
    return ratio >= 1 ? 0 : waitingTimeS(settledShare, timeConstantOfRatio(ratio, intakeHz));
  };
  return 2 * openFlutterPa <= resolutionPa ? null : { from: settling(2), to: settling(1) };
}
