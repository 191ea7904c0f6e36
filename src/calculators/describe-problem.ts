import { formatExact, formatSignificant } from './format-number.ts';
import { formatPressure } from './format-pressure.ts';
import { numberInWords } from './number-in-words.ts';
import type { Limit, Problem } from './problem.ts';
import { withArticle } from './with-article.ts';

export type ProblemWords = {
  /** Name of the field, set in front where the sentence does not stand beside it: “Swing of the needle: …”. */
  readonly label?: string;
  /** What was typed, to be quoted where the problem itself does not hold it. */
  readonly typed?: string;
  /** Pressures in the reader's unit; kilopascals unless told otherwise. */
  readonly formatPressure?: (pascals: number) => string;
};

/** Longest quotation of what was typed. */
const longestQuote = 40;

/**
 * The words of a problem: one or two sentences that quote what was given and name the limit. Plain text.
 * Every kind has its words here and nowhere else.
 */
export function describeProblem(problem: Problem, words: ProblemWords = {}): string {
  const sentence = sentenceOf(problem, words);
  if (words.label === undefined) return sentence;
  return `${words.label}: ${sentence.charAt(0).toLowerCase()}${sentence.slice(1)}`;
}

function sentenceOf(problem: Problem, words: ProblemWords): string {
  const pressure = words.formatPressure ?? ((pascals: number) => formatPressure(pascals, 'kPa'));
  const youWrote = (typed: string): string => `you wrote ${quote(typed)}`;
  switch (problem.kind) {
    case 'empty':
      return 'Give a number, such as 212 or 9 1/2; nothing is written here.';
    case 'not-a-number':
      return `Give one number, such as 212, 12.5 or 9 1/2; ${youWrote(problem.typed)}.`;
    case 'ambiguous-number': {
      const [grouped, decimal] = problem.readings;
      return `The comma in ${quote(problem.typed)} can be read two ways. Say which is meant: ${formatExact(grouped)} (${readAloud(grouped)}) or ${formatExact(decimal)}.`;
    }
    case 'unknown-unit':
      return `${quote(problem.unit)} is not a unit that is known here. Give one of ${list(problem.known, 'or')}.`;
    case 'number-missing':
      return `Give a number before the unit; ${youWrote(problem.typed)}.`;
    case 'zero-denominator':
      return `Nothing can be divided by 0: give a fraction such as 1/2; ${youWrote(problem.typed)}.`;
    case 'beyond-counting':
      return `Give a number of a size ${limitWords(problem.limit, formatExact)}; ${youWrote(problem.typed)}.`;
    case 'too-long':
      return `Give at most ${formatExact(problem.limit.max)} characters; there are ${formatExact(problem.value)}.`;
    case 'not-finite':
      return `Give a finite number; this one (${problem.field}) is not.`;
    case 'out-of-range': {
      // Fields whose name ends in Pa hold pascals, which nobody types.
      const format = problem.field.endsWith('Pa')
        ? pressure
        : problem.field.endsWith('Mm')
          ? (millimetres: number) => `${formatExact(millimetres)} mm`
          : formatExact;
      const given = words.typed === undefined ? `you gave ${format(problem.value)}` : youWrote(words.typed);
      return `Give a number ${limitWords(problem.limit, format)}; ${given}.`;
    }
    case 'carburettor-count':
      return `Give a number of carburettors ${limitWords(problem.limit, formatExact)}; you gave ${formatExact(problem.value)}.`;
    case 'column-length':
      return `Give a number of entries ${limitWords(problem.limit, formatExact)}, one for each carburettor; there are ${formatExact(problem.value)}.`;
    case 'index':
      return `There is no number ${formatExact(problem.value)} here: give a whole number ${limitWords(problem.limit, formatExact)}.`;
    case 'depression-beyond-ambient':
      return `A depression cannot exceed the ambient pressure: give one ${limitWords(problem.limit, pressure)}; you gave ${pressure(problem.depressionPa)}.`;
    case 'negative-depression':
      return `A depression is counted downwards from the ambient pressure and cannot be below 0; you gave ${pressure(problem.depressionPa)}. A reading with a minus sign is a signed gauge pressure.`;
    case 'absolute-below-zero':
      return `An absolute pressure is counted from perfect vacuum and cannot be below 0; you gave ${pressure(problem.absolutePa)}.`;
    case 'gauge-below-vacuum':
      return `This is below perfect vacuum: give a gauge pressure ${limitWords(problem.limit, pressure)} (the ambient pressure with a minus sign); you gave ${pressure(problem.gaugePa)}.`;
    case 'below-absolute-zero':
      return `Nothing is colder than absolute zero, −273.15 °C (−459.67 °F, 0 K); ${youWrote(problem.typed)}.`;
    case 'impossible-measure':
      return `Give ${withArticle(problem.measure)} ${limitWords(problem.limit, formatExact)}; ${youWrote(problem.typed)}.`;
    case 'well-too-narrow':
      return `Give a well that is wider than the tube; ${youWrote(problem.typed)}.`;
    case 'measure-out-of-range':
      return `Give one ${limitWords(problem.limit, (value) => `${formatExact(value)}\u00a0${problem.symbol}`)}; ${youWrote(problem.typed)}.`;
    case 'unknown-choice':
      return `Give ${list(problem.known, 'or')}; ${youWrote(problem.typed)}.`;
    case 'nut-unknown':
      return `The tables here hold no nut for ${problem.typed}. Measure the nut and give its height.`;
    case 'unknown-thread':
      return `${quote(problem.typed)} is not a thread of the tables here. Give one such as ${list(problem.known, 'or')}, or measure the pitch.`;
    case 'newer-version':
      return `This was written by a newer version of this site (${formatExact(problem.value)}; this page reads up to ${formatExact(problem.limit.max)}). Open it with a page that is up to date.`;
    case 'no-screws':
      return 'Give at least one balance screw; there is none.';
    case 'all-equal':
      return 'All readings are the same, so the finest step does not show. Damp the needle less, or give step and swing yourself.';
    case 'no-readings': {
      const position = /^carburettors\.(\d+)$/u.exec(problem.field ?? '')?.[1];
      return position === undefined
        ? 'Give at least one reading; there is none.'
        : `Give at least one reading of carburettor ${Number(position) + 1}; there is none.`;
    }
    case 'too-few-readings':
      return `Give a number of readings ${limitWords(problem.limit, formatExact)}; there ${problem.value === 1 ? 'is' : 'are'} ${formatExact(problem.value)}.`;
    case 'not-whole':
      return `Give a whole number; ${youWrote(problem.typed)}.`;
    case 'bracket-length':
      return problem.order === 'aba'
        ? `Give the readings in the order A, B, A: three, or six, or nine; there are ${formatExact(problem.value)}.`
        : `Give the readings in the order A, B, B, A: four, or eight, or twelve; there are ${formatExact(problem.value)}.`;
    case 'unequal-lists':
      return `Gauges that are read together have one reading each a round: give ${formatExact(problem.expected)}, as for gauge 1; there are ${formatExact(problem.value)}.`;
    case 'no-solution':
      return `The sum came to no end at ${formatSignificant(problem.at, 3)} minutes. Give less gas, or a shorter time.`;
    case 'too-much-gas':
      return `This would put more than ${formatExact(problem.limit.max)} ppm of carbon monoxide into the room, many times what kills; the engine itself would stop for want of oxygen before. Give less gas, a larger room or a shorter time.`;
    case 'below-the-step':
      return `No number of readings tells ${pressure(problem.value)} apart on this scale: give a difference ${limitWords(problem.limit, pressure)}.`;
    case 'too-many-readings':
      return `Give at most ${formatExact(problem.limit.max)} readings; there are ${formatExact(problem.value)}.`;
    case 'impossible-correction':
      return `Corrected for speed, a reading of carburettor ${problem.carburettor} would be ${pressure(problem.depressionPa)}: no depression is below 0 or reaches the ambient pressure. Give what 100 rpm really change.`;
    case 'fixed-needed':
      return 'Say which carburettor has no adjuster.';
    case 'groups-needed':
      return `Say which carburettors each screw moves: there is no usual layout for ${formatExact(problem.value)}.`;
    default:
      return neverKind(problem);
  }
}

/** “from 2 to 8”, “above 0 and at most 0.5”, “of at least 1”. Zero needs no unit. */
export function limitWords(
  { min, max, above, below }: Limit,
  formatOther: (value: number) => string,
): string {
  const format = (value: number): string => (value === 0 ? '0' : formatOther(value));
  if (min !== undefined && max !== undefined)
    return min === max ? `of exactly ${format(min)}` : `from ${format(min)} to ${format(max)}`;
  const low =
    above !== undefined ? `above ${format(above)}` : min !== undefined ? `of at least ${format(min)}` : '';
  const high =
    below !== undefined ? `below ${format(below)}` : max !== undefined ? `at most ${format(max)}` : '';
  return [low, high].filter(Boolean).join(' and ');
}

/** In quotation marks, on one line, cut where it grows long. */
function quote(typed: string): string {
  const line = typed.trim().replace(/\s+/gu, ' ');
  const characters = [...line];
  return `“${characters.length > longestQuote ? `${characters.slice(0, longestQuote).join('')}…` : line}”`;
}

const list = (items: readonly string[], word: 'and' | 'or'): string =>
  items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')} ${word} ${items.at(-1)}`;

/** The two readings of an ambiguous comma, for the buttons that ask: the grouped one in words, the decimal one in digits. */
export const describeReadings = ([grouped, decimal]: readonly [number, number]): readonly [
  string,
  string,
] => [readAloud(grouped), formatExact(decimal)];

const readAloud = (value: number): string =>
  Number.isInteger(value) && Math.abs(value) < 1e6 ? numberInWords(value) : formatSignificant(value, 4);

function neverKind(problem: never): never {
  throw new Error(`a problem without words: ${JSON.stringify(problem)}`);
}
