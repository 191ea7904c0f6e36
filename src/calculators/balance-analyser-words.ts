import type { AnswerLine } from './answer-line.ts';
import { carburettorLine, screwLine, setLines } from './balance-analyser-lines.ts';
import type { BalanceAnalysis } from './balance-analysis.ts';
import { decimalsForSignificant, formatExact, formatFixed } from './format-number.ts';
import type { DecimalMark } from './format-number.ts';
import { formatPressure } from './format-pressure.ts';
import { readingDecimals } from './format-reading.ts';
import { numberInWords } from './number-in-words.ts';
import type { BalanceQuestion } from './parse-balance-analyser.ts';
import { pressureFigures } from './pressure-figures.ts';
import { inUnit, pressureUnit } from './pressure-units.ts';
import { screwWords } from './screw-words.ts';
import { writeSessionLink } from './session-link.ts';

export type DescribedBalance = {
  readonly verdict: BalanceAnalysis['verdict'];
  /** The verdict with its chance. */
  readonly sentence: string;
  /** What to do now. */
  readonly advice: string;
  readonly announcement: string;
  /** At which confidence every ± holds: `95 %`. */
  readonly confidence: string;
  readonly set: readonly AnswerLine[];
  readonly screws: readonly AnswerLine[];
  readonly carburettors: readonly AnswerLine[];
  readonly warnings: readonly string[];
  /** What the strip plot draws, and the same in words. */
  readonly plot: {
    readonly marks: readonly {
      readonly number: number;
      readonly depressionPa: number;
      readonly halfWidthPa: number;
    }[];
    readonly tolerancePa: number;
    readonly reference?: number;
    readonly unit: string;
    readonly decimals: number;
    readonly mark: DecimalMark;
  };
  readonly plotWords: string;
  /** The keys of a link to the bench session. */
  readonly bench: Readonly<Record<string, string>>;
};

/** The analysis in words and digits. Rounding happens here, once: to the step of the gauge, or finer where a ± is finer. */
export function describeBalance(
  question: BalanceQuestion,
  analysis: BalanceAnalysis,
  readingsTyped: string,
): DescribedBalance {
  const { given, unit, mark, answers } = question;
  const smallestPa = Math.min(...analysis.carburettors.map((own) => own.expandedUncertaintyPa));
  const decimals = Math.min(
    6,
    Math.max(
      readingDecimals(given.gauge.resolutionPa, unit),
      decimalsForSignificant(inUnit(smallestPa, pressureUnit(unit)), 1),
    ),
  );
  const figures = pressureFigures(unit, decimals, mark);
  const both = { figures, finer: pressureFigures(unit, decimals + 1, mark), mark };
  const sentence = verdictSentence(question, analysis);
  const advice = adviceOf(analysis, given.generation === 'paired-screws');
  return {
    verdict: analysis.verdict,
    sentence,
    advice,
    announcement: `${sentence} ${advice}`,
    confidence: `${formatExact(100 * analysis.confidence, { mark })}\u00a0%`,
    set: setLines(question, analysis, both),
    screws: analysis.screws.map((screw) => screwLine(screw, analysis, both)),
    carburettors: analysis.carburettors.map((own) => carburettorLine(own, analysis, both)),
    warnings: warningsOf(question, analysis),
    plot: {
      marks: analysis.carburettors.map(({ carburettor, meanPa, expandedUncertaintyPa }) => ({
        number: carburettor,
        depressionPa: meanPa,
        halfWidthPa: expandedUncertaintyPa,
      })),
      tolerancePa: given.tolerancePa,
      ...(analysis.matchedTo.kind === 'carburettor' && { reference: analysis.matchedTo.carburettor }),
      ...{ unit, decimals, mark },
    },
    plotWords: `Depression: ${analysis.carburettors
      .map((own) => `carburettor ${own.carburettor}, ${figures.range(own.meanPa, own.expandedUncertaintyPa)}`)
      .join('; ')}.`,
    bench: writeSessionLink(answers, readingsTyped),
  };
}

function verdictSentence({ given, unit, mark }: BalanceQuestion, analysis: BalanceAnalysis): string {
  const tolerance = formatPressure(given.tolerancePa, unit, 4, { mark });
  const all = given.carburettors === 2 ? 'both' : `all ${numberInWords(given.carburettors)}`;
  const chance = verdictChance(analysis, mark);
  switch (analysis.verdict) {
    case 'within':
      return `Within ${tolerance}: the chance that ${all} are is ${chance}.`;
    case 'outside':
      return `Outside ${tolerance}: the chance that ${all} are within is ${chance}.`;
    case 'cannot-tell':
      return `Cannot tell: the chance that ${all} are within ${tolerance} is ${chance}.`;
  }
}

/** In whole per cent, with decimals only where rounding would carry it to the limit that decides, or over. */
function verdictChance({ chanceWithin, confidence, verdict }: BalanceAnalysis, mark: DecimalMark): string {
  const crosses = (decimals: number): boolean => {
    const rounded = Number(formatFixed(100 * chanceWithin, decimals));
    return verdict === 'cannot-tell' && !(rounded > 100 * (1 - confidence) && rounded < 100 * confidence);
  };
  let decimals = 0;
  while (decimals < 4 && crosses(decimals)) decimals += 1;
  return `${formatFixed(100 * chanceWithin, decimals, { mark })}\u00a0%`;
}

function adviceOf({ verdict, screws, more }: BalanceAnalysis, inOrder: boolean): string {
  if (verdict === 'within') return 'Leave the screws alone.';
  if (more !== null) {
    const read = `Read carburettor\u00a0${more.carburettor} again first.`;
    return more.rounds === null
      ? `${read} With this gauge even many more readings would hardly decide: damp the needle more, read a finer scale, or bring the set closer.`
      : `${read} If the readings go on as they began, ${numberInWords(more.rounds)} more of each will decide.`;
  }
  const real = screws.filter((screw) => screw.real);
  // Pairs come before what joins them; else the furthest off comes first.
  const [first] = inOrder
    ? real
    : real.toSorted((one, other) => Math.abs(other.differencePa) - Math.abs(one.differencePa));
  return first === undefined
    ? 'No single difference is larger than its uncertainty: read them again.'
    : `${first.direction === 'open' ? 'Open' : 'Close'} ${screwWords(first.moves)} first.`;
}

function warningsOf({ given, unit, mark }: BalanceQuestion, analysis: BalanceAnalysis): readonly string[] {
  const speeds = given.readings.flatMap(({ rpm }) => (rpm === undefined ? [] : [rpm]));
  const [slowest, fastest] = [Math.min(...speeds), Math.max(...speeds)];
  const still = analysis.carburettors
    .filter(({ meanPa }) => meanPa <= 0)
    .map(({ carburettor }) => carburettor);
  return [
    ...(speeds.length > 0 && slowest < fastest && given.speed === undefined
      ? [
          `The speeds differ, from ${formatExact(slowest, { mark })} to ${formatExact(fastest, { mark })} rpm, and nothing is corrected: part of the differences may be speed. Say what 100 rpm more change, or read again at one speed.`,
        ]
      : []),
    ...still.map(
      (number) =>
        `Carburettor ${number} shows ${formatPressure(0, unit)}. Is its line open, and does its cylinder draw at all?`,
    ),
  ];
}
