import { accountOf } from '../advisor/account.ts';
import { afterTurn, effectAt, engineOf, startingBelief } from '../advisor/belief.ts';
import { zeros } from '../advisor/matrix.ts';
import { describeTurnsInWords } from '../format-turns.ts';
import { nextStep } from '../next-step.ts';
import { numberInWords } from '../number-in-words.ts';
import type { SessionEvent, SetUp } from '../protocol.ts';
import { certain } from './certain.ts';
import { mmHgNumber, mmHgPa, mmHgWords } from './mmhg.ts';
import { widthAt95 } from '../width-at-95.ts';

/** What a turn of the invented engine really does, against the guess of the advice: in mmHg a turn. */
export const effectsMmHg = [70, 140, 210] as const;
export type EffectMmHg = (typeof effectsMmHg)[number];
export const effectMmHgExample = 70 satisfies EffectMmHg;

/** Invented: what the four show at first, on a dial of steps of 5 with a swing of 3. */
const startMmHg = [330, 240, 265, 205] as const;
const gaugeMmHg = { resolution: 5, flutter: 3, tolerance: 10 } as const;

/** So many turns are shown. */
export const learnedTurnsLimits = { min: 0, max: 5, step: 1 } as const;

/** What is believed of the effect of a turn once so many turns have been read. */
export type Learned = {
  readonly lowPa: number;
  readonly likelyPa: number;
  readonly highPa: number;
  readonly range: string;
  /** The same without its unit. */
  readonly figures: string;
  readonly said: string;
  readonly plotWords: string;
};

export type LearnedEffect = {
  readonly truePa: number;
  readonly trueWords: string;
  /** Every engine that can be chosen, in words. */
  readonly choices: Readonly<Record<EffectMmHg, string>>;
  readonly learned: readonly Learned[];
};

/** A session with an engine whose effect is known to us alone: after the first readings, and after each turn that was read. */
export function learnedEffect(effectMmHg: EffectMmHg): LearnedEffect {
  const pa = (value: number): number => value * mmHgPa;
  const setUp = exampleSetUp();
  const truth = engineThatAnswers(setUp, pa(effectMmHg));
  const dial = (depressionPa: number): number =>
    pa(gaugeMmHg.resolution) * Math.round(depressionPa / pa(gaugeMmHg.resolution));
  const events: SessionEvent[] = [];
  const learned: Learned[] = [];
  let nowPa: readonly number[] = startMmHg.map(pa);
  let last: Extract<SessionEvent, { kind: 'turn' }> | null = null;
  for (;;) {
    const { step } = certain(nextStep(setUp, events));
    if (step.kind === 'read') {
      events.push({
        kind: 'reading',
        carburettor: step.carburettor,
        depressionPa: dial(nowPa[step.carburettor - 1]!),
      });
      continue;
    }
    learned.push(
      describeLearned(
        setUp,
        events,
        learned.map(({ range }) => range),
        last,
        step.kind === 'turn' ? step.turns : null,
      ),
    );
    if (step.kind !== 'turn' || learned.length > learnedTurnsLimits.max) break;
    last = { kind: 'turn', screw: step.screw, turns: step.turns };
    nowPa = truth(nowPa, last.screw - 1, last.turns);
    events.push(last, { kind: 'reading', carburettor: step.read, depressionPa: dial(nowPa[step.read - 1]!) });
  }
  const words = (each: EffectMmHg) => mmHgWords(pa(each));
  return {
    truePa: pa(effectMmHg),
    trueWords: words(effectMmHg),
    choices: Object.fromEntries(effectsMmHg.map((each) => [each, words(each)])) as Record<EffectMmHg, string>,
    learned,
  };
}

/** The range that holds the effect with 95 %: it is even on a logarithmic scale, as the belief is. */
function describeLearned(
  setUp: SetUp,
  events: readonly SessionEvent[],
  before: readonly string[],
  last: { readonly turns: number } | null,
  nextTurns: number | null,
): Learned {
  const turnsRead = before.length;
  const { engine, belief } = accountOf(setUp, events);
  const at = effectAt(engine);
  const middle = belief.mean[at]!;
  const reach = widthAt95(Math.sqrt(belief.covariance[at]![at]!));
  const [lowPa, likelyPa, highPa] = [middle - reach, middle, middle + reach].map(Math.exp) as [
    number,
    number,
    number,
  ];
  const figures = `${mmHgNumber(lowPa)} to ${mmHgNumber(highPa)}`;
  const range = `${figures}\u00a0mmHg`;
  const asked =
    nextTurns === null
      ? 'No turn is needed any more.'
      : `The next turn asked for is ${describeTurnsInWords(Math.abs(nextTurns))}.`;
  const so =
    last === null
      ? 'Before any turn the effect is a guess,'
      : `After ${numberInWords(turnsRead)} ${turnsRead === 1 ? 'turn' : 'turns'}, the last of ${describeTurnsInWords(Math.abs(last.turns))}, the effect is believed to be`;
  return {
    lowPa,
    likelyPa,
    highPa,
    range,
    figures,
    said: `${so} about ${mmHgWords(likelyPa)} a turn, and with 95\u00a0% from ${range}. ${asked}`,
    plotWords: `Believed effect of a turn: ${[...before, range].map((each, k) => `after ${k}, ${each}`).join('; ')}.`,
  };
}

export function learnedFinding(): string {
  const { learned, trueWords } = learnedEffect(effectMmHgExample);
  const [guess, first] = learned;
  return `Nobody tells the session what a turn does. It starts at ${guess!.range} a turn; one small turn that has been read narrows that to ${first!.range}. This invented engine moves by ${trueWords} a turn.`;
}

function exampleSetUp(): SetUp {
  const pa = (value: number): number => value * mmHgPa;
  return {
    carburettors: startMmHg.length,
    // Everyone has an adjuster: each screw moves its own.
    screws: startMmHg.map((_, j) => ({ moves: startMmHg.map((__, i) => Number(i === j)) })),
    tolerancePa: pa(gaugeMmHg.tolerance),
    gauge: { resolutionPa: pa(gaugeMmHg.resolution), flutterPa: pa(gaugeMmHg.flutter) },
  };
}

/** The advisor's own relation of turns and depressions, with an effect that is known and without any doubt or drift. */
function engineThatAnswers(setUp: SetUp, effectPa: number) {
  const engine = engineOf(setUp);
  const { mean } = startingBelief({ ...setUp, effectPaPerTurn: effectPa });
  const covariance = zeros(mean.length, mean.length);
  return (nowPa: readonly number[], screw: number, turns: number): readonly number[] =>
    afterTurn(engine, { mean: [...nowPa, ...mean.slice(nowPa.length)], covariance }, screw, turns).mean.slice(
      0,
      nowPa.length,
    );
}
