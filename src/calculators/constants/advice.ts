import { defaults, margins, priors } from '../advisor/priors.ts';
import { benchDefaults } from '../bench-defaults.ts';
import { comparedWidening } from '../session-comparison.ts';
import { shortOfThreadTurns } from '../short-of-thread.ts';
import { describeConstants } from './constant.ts';
import type { ConstantGroup } from './constant.ts';

/** What the advice believes at first, and the margins that it keeps; in pascals, chosen in millimetres of mercury. */
export const adviceConstants: ConstantGroup = {
  title: 'Advice and bench session',
  constants: [
    ...describeConstants(
      priors,
      {
        depressionPa: ['Pa', 'depression before the first reading', 'simulation', 'simulation'],
        depressionOwnSdPa: ['Pa', 'how far one carburettor may be from it', 'simulation', 'simulation'],
        depressionCommonSdPa: ['Pa', 'how far all together may be from it', 'simulation', 'simulation'],
        effectPaPerTurn: ['Pa per turn', 'effect of a screw before the first turn', 'simulation', 'simulation'],
        effectLogSd: ['1', 'doubt about its logarithm', 'simulation', 'simulation'],
        learnedEffectLogSd: ['1', 'the same after an earlier session', 'simulation', 'simulation'],
        unevennessLogSd: ['1', 'how far the screws differ, in logarithms', 'simulation', 'simulation'],
        effectLogReach: ['1', 'furthest that the first logarithm may go', 'simulation', 'simulation'],
        unevennessLogReach: ['1', 'furthest that the second may go', 'simulation', 'simulation'],
        speedEffectPaPerRpm: ['Pa per rpm', 'what speed does to a reading', 'simulation', 'simulation'],
        speedEffectSdPaPerRpm: ['Pa per rpm', 'doubt about it', 'simulation', 'simulation'],
        warmUpSdPaPerMinute: ['Pa per minute', 'drift of a warming engine', 'simulation', 'simulation'],
      },
      'priors.',
    ),
    ...describeConstants(
      margins,
      {
        minutesBetweenEvents: ['min', 'between two events without times', 'simulation', 'simulation'],
        mostMinutesBetweenEvents: ['min', 'longest gap that is believed: a day', 'from memory'],
        driftSdPa: ['Pa', 'common drift with every turn', 'simulation', 'simulation'],
        modelError: ['1', 'share of a predicted change that is not believed', 'simulation', 'simulation'],
        doubtfulNormalisedSquare: ['1', 'beyond this square of deviations a reading is doubtful', 'simulation', 'simulation'],
        agreementPa: ['Pa', 'two doubtful readings this close agree', 'simulation', 'simulation'],
        somethingChangedSdPa: ['Pa', 'how far things may then have changed', 'simulation', 'simulation'],
        wideningPseudoCount: ['readings', 'how slowly the doubt about readings is learned', 'simulation', 'simulation'],
        spareTurns: ['turns', 'thread that is never used up', 'simulation', 'simulation'],
        turnStep: ['turns', 'finest turn that is asked for: a minute on a clock face', 'simulation', 'simulation'],
        carefulTurns: ['turns', 'largest turn while the effect is little known', 'simulation', 'simulation'],
        largestTurns: ['turns', 'largest turn at all', 'simulation', 'simulation'],
        carefulEffectLogSd: ['1', 'doubt above which an effect is little known', 'simulation', 'simulation'],
        knownEffectLogSd: ['1', 'doubt below which it is well known', 'simulation', 'simulation'],
        negligiblePa: ['Pa', 'difference that is left alone', 'simulation', 'simulation'],
        readAfterTurnSdPa: ['Pa', 'doubt after a turn from which a new reading is asked for', 'simulation', 'simulation'],
        visitsPerCarburettor: ['1', 'visits after which the advice gives up', 'simulation', 'simulation'],
      },
      'margins.',
    ),
    ...describeConstants(
      defaults,
      {
        confidence: ['1', 'chance at which a set is called done', 'common practice'],
        ambientPa: ['Pa', 'ambient pressure that is taken', 'conventional', 'iso2533'],
        lockShiftTurns: ['turns', 'slip of a screw on locking, one standard deviation', 'simulation', 'simulation'],
      },
      'defaults.',
    ),
    ...describeConstants(
      benchDefaults,
      {
        resolutionMmHg: ['mmHg', 'step of a dial, offered first', 'from memory'],
        flutterMmHg: ['mmHg', 'swing of a damped needle, offered first', 'from memory'],
        tolerancePressureMmHg: ['mmHg', 'tolerance, offered first', 'simulation', 'simulation'],
        targetRpm: ['rpm', 'engine speed, offered first', 'common practice', 'practice'],
        restAfterMinutes: ['min', 'running before a rest', 'from memory'],
        reminderMinutes: ['min', 'before the rest, when the reminder begins', 'from memory'],
        unwatchedMinutes: ['min', 'gap after which the person is asked whether the engine ran', 'from memory'],
        flutterWithoutTachometerMmHg: ['mmHg', 'swing where the speed is held by ear', 'simulation', 'simulation'],
        trialTurns: ['turns', 'first turn of a screw whose direction is not known', 'from memory'],
      },
      'benchDefaults.',
    ),
    ...describeConstants(
      { shortOfThreadTurns },
      { shortOfThreadTurns: ['turns', 'less than this left is short of thread', 'from memory'] },
    ),
    ...describeConstants(
      { comparedWidening },
      { comparedWidening: ['1', 'widening of the ranges when two sessions are compared', 'simulation', 'simulation'] },
    ),
  ],
}; // prettier-ignore
