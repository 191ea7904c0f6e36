import { flutterConfidence, flutterPower, settledShare } from '../flutter-and-repeats.ts';
import { accuracyClasses } from '../accuracy-class.ts';
import { gaugeConfidence } from '../parse-gauge-comparison.ts';
import { squaredDivisors } from '../standard-uncertainty.ts';
import { coverageFactorAt95 } from '../width-at-95.ts';
import { realFrom } from '../wrong-way.ts';
import { describeConstants } from './constant.ts';
import type { ConstantGroup } from './constant.ts';

export const statisticsConstants: ConstantGroup = {
  title: 'Statistics and gauges',
  constants: [...describeConstants(
    { coverageFactorAt95, gaugeConfidence, flutterConfidence, flutterPower, settledShare, realFrom },
    {
      coverageFactorAt95: ['1', 'standard deviations that hold 95 % of normal values', 'conventional', 'gum'],
      gaugeConfidence: ['1', 'chance of the intervals of a gauge comparison', 'common practice'],
      flutterConfidence: ['1', 'chance that a difference called real is real', 'common practice'],
      flutterPower: ['1', 'chance to see a difference that is there', 'common practice'],
      settledShare: ['1', 'share of its way after which a needle counts as settled', 'common practice'],
      realFrom: ['standard deviations', 'change of a reading that is called real', 'from memory'],
    },
  ),
  ...describeConstants(
    squaredDivisors,
    {
      rectangular: ['1', 'square of half-width over uncertainty: anywhere alike', 'exact', 'gum'],
      triangular: ['1', 'the same: more often near the middle', 'exact', 'gum'],
      'u-shaped': ['1', 'the same: a sine', 'exact', 'jcgm-101'],
    },
    'squaredDivisors.',
  ),
  ...describeConstants(
    { accuracyClasses },
    { accuracyClasses: ['% of the span', 'classes of accuracy of gauges', 'conventional', 'en837'] },
  ),
  ],
}; // prettier-ignore
