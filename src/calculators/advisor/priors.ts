import { conventionalMercuryDensity, standardAtmospherePa, standardGravity } from '../exact-definitions.ts';

/**
 * What the estimator believes before the first reading, and the margins that it keeps.
 * Origin of every figure here: chosen by simulation on mean-value engines (the page "Method" tells how),
 * stated in conventional millimetres of mercury because that is how gauges of the trade are marked.
 */

/** Conventional millimetre of mercury, 13595.1 kg/m³ × 9.80665 m/s² × 1 mm (ISO 80000-4; NIST SP 811). */
const mmHg = (conventionalMercuryDensity * standardGravity) / 1000;

export const priors = {
  depressionPa: 300 * mmHg,
  depressionOwnSdPa: 120 * mmHg,
  depressionCommonSdPa: 100 * mmHg,
  effectPaPerTurn: 140 * mmHg,
  effectLogSd: 0.6,
  /** Around an effect that was learned in an earlier session. */
  learnedEffectLogSd: 0.15,
  unevennessLogSd: 0.1,
  /** Furthest that the two logarithms may go from where they began, eight and ten standard deviations. */
  effectLogReach: 5,
  unevennessLogReach: 1,
  speedEffectPaPerRpm: -0.05 * mmHg,
  speedEffectSdPaPerRpm: 0.05 * mmHg,
  warmUpSdPaPerMinute: 2 * mmHg,
} as const;

export const defaults = {
  confidence: 0.95,
  /** Standard atmosphere at sea level (ISO 2533). */
  ambientPa: standardAtmospherePa,
  lockShiftTurns: 0.02,
} as const;

export const margins = {
  /** Between two events where no times are given. */
  minutesBetweenEvents: 0.4,
  /** A day: a longer gap is a slip, and its square would swamp the covariance. */
  mostMinutesBetweenEvents: 1440,
  /** Common drift with every turn. */
  driftSdPa: 0.5 * mmHg,
  /** Share of a predicted change that is not believed. */
  modelError: 0.07,
  /** A reading is doubtful beyond 4 standard deviations: 4² = 16. */
  doubtfulNormalisedSquare: 16,
  /** Two doubtful readings closer than this agree with each other: something did change. */
  agreementPa: 15 * mmHg,
  somethingChangedSdPa: 20 * mmHg,
  wideningPseudoCount: 5,
  spareTurns: 0.1,
  /** A minute on a clock face. */
  turnStep: 1 / 60,
  carefulTurns: 1 / 4,
  /** However well known the effect seems: a reading that was wrong can make it seem tiny, and the turn huge. */
  largestTurns: 1,
  carefulEffectLogSd: 0.3,
  knownEffectLogSd: 0.1,
  negligiblePa: 2 * mmHg,
  readAfterTurnSdPa: 3 * mmHg,
  visitsPerCarburettor: 12,
} as const;
