import { matchedTo, referenceWeights } from '../matched-to.ts';
import { numberInWords } from '../number-in-words.ts';
import { joinedNumbers } from '../screw-words.ts';
import type { DrawnReadings } from './drawn-readings.ts';
import { mmHgNumber, mmHgPa, mmHgWords } from './mmhg.ts';

/** The reading of carburettor 4, in mmHg. */
export const fourthMmHgLimits = { min: 150, max: 350, step: 2 } as const;
/** Invented: three that read much alike, and one that does not. */
export const fourthMmHgExample = 190;
const firstThreeMmHg = [252, 248, 244] as const;
const toleranceMmHg = 10;
const drawnMmHgLimits = { min: 130, max: 370 } as const;

export const references = ['mean', 'closest-two'] as const;
export type ReferenceChosen = (typeof references)[number];

export type ReferenceShown = DrawnReadings & {
  readonly fourth: string;
  /** What each reference is, and how many have to be turned to it. */
  readonly levelsPa: Readonly<Record<ReferenceChosen, number>>;
  readonly turned: Readonly<Record<ReferenceChosen, readonly number[]>>;
  readonly rows: readonly {
    readonly carburettor: string;
    readonly reading: string;
    readonly mean: string;
    readonly 'closest-two': string;
  }[];
};

/** Four readings against their mean and against the two that read closest. */
export function meanOrTwoClosest(fourthMmHg: number, chosen: ReferenceChosen): ReferenceShown {
  const pa = (value: number): number => value * mmHgPa;
  const readingsPa = [...firstThreeMmHg, fourthMmHg].map(pa);
  const against = (kind: ReferenceChosen) => {
    const reference = matchedTo(
      kind === 'mean' ? 'separate-cables' : 'all-adjustable',
      readingsPa,
      undefined,
    );
    const weights = referenceWeights(reference, readingsPa.length);
    const levelPa = weights.reduce((sum, weight, i) => sum + weight * readingsPa[i]!, 0);
    const offPa = readingsPa.map((reading) => reading - levelPa);
    const turned = offPa.flatMap((off, i) => (2 * Math.abs(off / mmHgPa) > toleranceMmHg ? [i + 1] : []));
    const members = weights.flatMap((weight, i) => (weight > 0 ? [i + 1] : []));
    return { levelPa, offPa, turned, members };
  };
  const both = { mean: against('mean'), 'closest-two': against('closest-two') };
  const asked = ({ offPa, turned }: typeof both.mean, i: number): string => {
    const off = `${mmHgNumber(Math.abs(offPa[i]!))} ${offPa[i]! < 0 ? 'lower' : 'higher'}`;
    return turned.includes(i + 1) ? `${off}: ${offPa[i]! < 0 ? 'close' : 'open'}` : 'leave';
  };
  const count = ({ turned }: typeof both.mean): string =>
    `${countWords(turned)} ${turned.length < 2 ? 'has' : 'have'}`;
  const closest = `carburettors ${joinedNumbers(both['closest-two'].members)}`;
  return {
    fourth: mmHgWords(pa(fourthMmHg)),
    levelsPa: { mean: both.mean.levelPa, 'closest-two': both['closest-two'].levelPa },
    turned: { mean: both.mean.turned, 'closest-two': both['closest-two'].turned },
    said: `To the mean, ${mmHgWords(both.mean.levelPa)}, ${count(both.mean)} to be turned. To the two closest, ${closest} at ${mmHgWords(both['closest-two'].levelPa)}, ${count(both['closest-two'])}.`,
    rows: readingsPa.map((reading, i) => ({
      carburettor: String(i + 1),
      reading: mmHgNumber(reading),
      mean: asked(both.mean, i),
      'closest-two': asked(both['closest-two'], i),
    })),
    plot: {
      marks: readingsPa.map((depressionPa, i) => ({
        number: i + 1,
        depressionPa,
        halfWidthPa: 0,
        ...(both[chosen].turned.includes(i + 1) && { afterPa: both[chosen].levelPa }),
      })),
      tolerancePa: pa(toleranceMmHg),
      unit: 'mmHg',
      decimals: 0,
      mark: 'point',
      scalePa: [pa(drawnMmHgLimits.min), pa(drawnMmHgLimits.max)],
      middlePa: both[chosen].levelPa,
    },
    plotWords: `Readings of ${readingsPa.map(mmHgNumber).join(', ')} mmHg, and the way of each to ${chosen === 'mean' ? 'the mean' : 'the two closest'}, ${mmHgWords(both[chosen].levelPa)}.`,
  };
}

export function referenceFinding(): string {
  const { turned } = meanOrTwoClosest(fourthMmHgExample, 'mean');
  const words = (kind: ReferenceChosen): string => countWords(turned[kind]);
  return `One carburettor that is far out pulls the mean with it: to the mean, ${words('mean')} have to be turned; to the two closest, ${words('closest-two')}. Neither way asks how much thread is left.`;
}

const countWords = ({ length }: readonly number[]): string =>
  length === 0 ? 'none' : `${length > firstThreeMmHg.length ? 'all ' : ''}${numberInWords(length)}`;
