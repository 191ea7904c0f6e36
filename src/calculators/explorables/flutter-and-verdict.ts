import { defaults } from '../advisor/priors.ts';
import type { BalanceAnalysis } from '../balance-analysis.ts';
import { chanceOfRange } from '../chance-of-range.ts';
import { formatChance } from '../format-chance.ts';
import { readingStandardUncertaintyPa } from '../reading-uncertainty.ts';
import { widthAt95 } from '../width-at-95.ts';
import type { DrawnReadings } from './drawn-readings.ts';
import { mmHgNumber, mmHgPa, mmHgWords } from './mmhg.ts';

/** What is told of the needle, each way, and how far the readings lie apart, in mmHg. */
export const swingMmHgLimits = { min: 0, max: 20, step: 1 } as const;
export const spreadMmHgLimits = { min: 0, max: 40, step: 1 } as const;

export type ToldSwing = { readonly swingMmHg: number; readonly spreadMmHg: number };

/** Invented: four readings about 250 mmHg, each at a share of the spread, on a dial of steps of 2 within 20. */
export const toldSwingExample: ToldSwing = { swingMmHg: 3, spreadMmHg: 10 };
const sharesOfSpread = [-0.5, 0.25, 0.5, -0.125] as const;
const dialExample = {
  middleMmHg: 250,
  resolutionMmHg: 2,
  toleranceMmHg: 20,
  lowMmHg: 200,
  highMmHg: 300,
} as const;

export type VerdictShown = DrawnReadings &
  Pick<BalanceAnalysis, 'verdict' | 'chanceWithin'> & { readonly swing: string; readonly spread: string };

const verdicts = {
  within: 'the set is within the tolerance',
  'cannot-tell': 'nobody can tell whether the set is within the tolerance',
  outside: 'the set is outside the tolerance',
} as const;

/** The same readings under a swing: the chance and the verdict of the balance analyser, computed as it does. */
export function verdictUnderSwing({ swingMmHg, spreadMmHg }: ToldSwing): VerdictShown {
  const pa = (value: number): number => value * mmHgPa;
  const tolerancePa = pa(dialExample.toleranceMmHg);
  const meansPa = sharesOfSpread.map((share) => pa(dialExample.middleMmHg + share * spreadMmHg));
  const scale = readingStandardUncertaintyPa({
    resolutionPa: pa(dialExample.resolutionMmHg),
    flutterPa: pa(swingMmHg),
  });
  const chanceWithin = chanceOfRange(
    meansPa.map((centre) => ({ centre, scale, degreesOfFreedom: Infinity })),
    tolerancePa,
  );
  const halfWidthPa = widthAt95(scale);
  const verdict = verdictOf(chanceWithin);
  const swing = mmHgWords(pa(swingMmHg));
  const spread = mmHgWords(pa(spreadMmHg));
  return {
    verdict,
    chanceWithin,
    swing,
    spread,
    said: `A swing of ${swing} each way, readings ${spread} apart: ${verdicts[verdict]}. The chance that it is within ${mmHgWords(tolerancePa)} is ${formatChance(chanceWithin)}.`,
    plot: {
      marks: meansPa.map((depressionPa, i) => ({ number: i + 1, depressionPa, halfWidthPa })),
      tolerancePa,
      unit: 'mmHg',
      decimals: 0,
      mark: 'point',
      scalePa: [pa(dialExample.lowMmHg), pa(dialExample.highMmHg)],
      middlePa: pa(dialExample.middleMmHg),
    },
    plotWords: `Depression: ${meansPa.map((meanPa, i) => `carburettor ${i + 1}, ${mmHgNumber(meanPa)} ± ${mmHgWords(halfWidthPa)}`).join('; ')}.`,
  };
}

const verdictOf = (chance: number): BalanceAnalysis['verdict'] =>
  chance >= defaults.confidence ? 'within' : chance <= 1 - defaults.confidence ? 'outside' : 'cannot-tell';

/** What the example teaches: the chance that a calm and a lively needle leave of the same readings. */
export function flutterFinding(): string {
  const [calm, lively] = [toldSwingExample.swingMmHg, 4 * toldSwingExample.swingMmHg].map((swingMmHg) => {
    const { chanceWithin } = verdictUnderSwing({ ...toldSwingExample, swingMmHg });
    return {
      swing: mmHgWords(swingMmHg * mmHgPa),
      chance: formatChance(chanceWithin),
    };
  });
  return `Flutter moves no reading, but it decides what the readings are worth. Of the same four the chance that they are within is ${calm!.chance} at a swing of ${calm!.swing} each way, and ${lively!.chance} at ${lively!.swing}.`;
}
