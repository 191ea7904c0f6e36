import type { DecimalMark } from './format-number.ts';
import { formatReading } from './format-reading.ts';
import { describeTurns } from './format-turns.ts';
import type { SetUp } from './protocol.ts';
import { pressureUnit } from './pressure-units.ts';
import { joinedNumbers, membersWords } from './screw-words.ts';
import type { ComparedCarburettor, EffectRange, SessionComparison } from './session-comparison.ts';

export type DescribedComparison = {
  /** What moved between the two, and what became of the effect of a turn. */
  readonly sentences: readonly string[];
  readonly unit: string;
  readonly carburettors: readonly {
    readonly name: string;
    readonly found: ThenAndNow;
    readonly left: ThenAndNow;
    readonly moved: string;
  }[];
  readonly screws: readonly {
    readonly name: string;
    readonly turns: ThenAndNow;
    readonly effect: ThenAndNow;
  }[];
};

type ThenAndNow = { readonly then: string; readonly now: string };

/** Shown where nothing is known. */
const unknown = '–';

/** The comparison in the unit, the steps and the decimal mark of the later session. */
export const describeSessionComparison = (
  { carburettors, screws, effect }: SessionComparison,
  setUp: SetUp,
  unit: string,
  mark: DecimalMark,
): DescribedComparison => {
  const figure = (pascals: number): string =>
    formatReading(pascals, unit, setUp.gauge.resolutionPa, { mark });
  const signed = (pascals: number | null): string => (pascals === null ? unknown : withSign(figure(pascals)));
  const { symbol } = pressureUnit(unit);
  return {
    sentences: [
      movedWords(carburettors, (pascals) => `${withSign(figure(pascals))}\u00a0${symbol}`),
      effectWords(effect, (pascals) => figure(pascals), symbol),
    ],
    unit: symbol,
    carburettors: carburettors.map((one, i) => ({
      name: String(i + 1),
      found: { then: signed(one.foundThenPa), now: signed(one.foundNowPa) },
      left: { then: signed(one.leftThenPa), now: signed(one.leftNowPa) },
      moved: one.moved ? `${signed(one.moved.pa)} ± ${figure(one.moved.widthPa)}` : unknown,
    })),
    screws: screws.map((screw, j) => ({
      name: membersWords(setUp.screws[j]!.moves),
      turns: { then: withSign(describeTurns(screw.turnsThen)), now: withSign(describeTurns(screw.turnsNow)) },
      effect: { then: rangeWords(screw.effectThen, figure), now: rangeWords(screw.effectNow, figure) },
    })),
  };
};

/** With a plus before what is more than nothing. */
const withSign = (text: string): string => (/^−|^[0.,]+$/u.test(text) ? text : `+${text}`);

const rangeWords = (range: EffectRange | null, figure: (pascals: number) => string): string =>
  range ? `${figure(range.paPerTurn)} (${figure(range.lowestPa)}–${figure(range.highestPa)})` : unknown;

const movedWords = (
  carburettors: readonly ComparedCarburettor[],
  figure: (pascals: number) => string,
): string => {
  if (carburettors.some(({ moved }) => moved === null))
    return 'What moved between the two is not known: not every carburettor had been read at the end of the first, or before the first turn of the second.';
  const real = carburettors.flatMap(({ moved }, i) => (moved?.real ? [{ number: i + 1, pa: moved.pa }] : []));
  const [only] = real;
  if (!only) return 'Between the two nothing moved by more than the readings can tell.';
  if (real.length === 1)
    return `Between the two, carburettor\u00a0${only.number} moved by more than the readings can tell: ${figure(only.pa)} against the mean of all.`;
  return `Between the two, carburettors ${joinedNumbers(real.map(({ number }) => number))} moved by more than the readings can tell: ${real.map(({ pa }) => figure(pa)).join(', ')} against the mean of all.`;
};

const effectWords = (
  effect: SessionComparison['effect'],
  figure: (pascals: number) => string,
  symbol: string,
): string => {
  if (!effect) return 'One of them turned no screw, so there is no effect of a turn to compare.';
  const did = `One turn of a screw did about ${rangeWords(effect.then, figure)}\u00a0${symbol} then, and ${rangeWords(effect.now, figure)} now`;
  return effect.changed
    ? `${did}. That is more than chance: a screw was changed, a thread is worn, or the throttles are dirty.`
    : `${did}. That is no more than chance.`;
};
