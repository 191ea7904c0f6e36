import { formatFixed } from './format-number.ts';
import { describeTurnSize } from './format-turns.ts';
import { faultWords } from './practice-engine-faults.ts';
import {
  depressionFigure,
  describeClock,
  describeDepression,
  describeEntry,
  describeSpeed,
  describeTemperature,
  screwOf,
} from './practice-engine-words.ts';
import type { PracticeFigures } from './practice-engine-words.ts';
import type { PracticeEngine } from './practice/engine.ts';
import type { Replay, ReplayStep } from './practice/replay.ts';
import type { PracticeReview } from './practice/review.ts';
import type { PracticeRun } from './practice/run.ts';
import { pressureUnit } from './pressure-units.ts';

export type TruthRow = {
  readonly carburettor: number;
  /** Opening at first and now, against the mean of all: `+3 %`; depression at first and now. */
  readonly figures: readonly string[];
};

/** A figure of the review. */
export type ReviewLine = { readonly id: string; readonly label: string; readonly text: string };

export type DescribedReview = {
  readonly lead: string;
  readonly lines: readonly ReviewLine[];
  readonly rows: readonly TruthRow[];
  /** Every reading and every turn, with the true spread after it. */
  readonly course: readonly { readonly clock: string; readonly words: string; readonly spread: string }[];
  /** What was wrong beside the balance. */
  readonly fault: string;
  /** The strip for those who do not see it. */
  readonly stripWords: string;
};

const count = (value: number, one: string, many: string): string =>
  `${formatFixed(value, 0)} ${value === 1 ? one : many}`;

/** How far an opening is off the mean of all: `+3 %`, `−12 %`, `0 %`. */
function describeOpening(relative: number): string {
  const text = formatFixed((relative - 1) * 100, 0);
  return `${relative > 1 && text !== '0' ? '+' : ''}${text}\u00a0%`;
}

/** The truth about a run, in words and figures. */
export function describeReview(
  { engine }: PracticeRun,
  review: PracticeReview,
  figures: PracticeFigures,
): DescribedReview {
  const pressure = (pascals: number): string => describeDepression(engine, pascals, figures);
  const figure = (pascals: number): string => depressionFigure(engine, pascals, figures);
  const { first, now, within } = review;
  const nuts = review.nutsTight ? '' : ' A nut is still loose.';
  const line = (id: string, label: string, text: string): ReviewLine => ({ id, label, text });
  return {
    lead: `${within ? 'Within' : 'Not within'} the tolerance: highest and lowest truly lie ${pressure(now.spreadPa)} apart, and ${pressure(engine.tolerancePa)} is allowed.${nuts}`,
    lines: [
      line('spread-first', 'True spread at first', pressure(first.spreadPa)),
      line('spread-now', 'True spread now', pressure(now.spreadPa)),
      line('readings', 'Readings written down', formatFixed(review.readings, 0)),
      line(
        'turns',
        'Turns of screws',
        review.moves === 0
          ? 'none'
          : `${describeTurnSize(review.turns)} in ${count(review.moves, 'movement', 'movements')}`,
      ),
      line('time', 'Engine’s time', describeClock(review.seconds)),
      line('hottest', 'Hottest', describeTemperature(review.hottestK)),
      line(
        'too-hot',
        'Time too hot',
        review.tooHotSeconds === 0 ? 'none' : describeClock(review.tooHotSeconds),
      ),
    ],
    rows: now.openings.map((opening, i) => ({
      carburettor: i + 1,
      figures: [
        describeOpening(first.openings[i]!),
        describeOpening(opening),
        figure(first.depressionsPa[i]!),
        figure(now.depressionsPa[i]!),
      ],
    })),
    course: review.course.map(({ entry, spreadPa }) => ({
      clock: describeClock(entry.seconds),
      // Readings, turns and nuts all have words.
      words: describeEntry(engine, entry, figures)!,
      spread: figure(spreadPa),
    })),
    fault:
      review.fault === null
        ? 'Nothing but the balance was wrong.'
        : `${faultWords[review.fault].name}. ${faultWords[review.fault].shows}`,
    stripWords: stripWordsOf(now.depressionsPa, engine, figures),
  };
}

const stripWordsOf = (
  depressionsPa: readonly number[],
  engine: PracticeEngine,
  figures: PracticeFigures,
): string =>
  `True depressions: ${depressionsPa
    .map((pascals, i) => `carburettor ${i + 1}, ${depressionFigure(engine, pascals, figures)}`)
    .join('; ')} ${pressureUnit(figures.unit).symbol}.`;

export type DescribedReplayStep = {
  readonly words: string;
  readonly spread: string;
  readonly stripWords: string;
};

/** A step of the advice on the same engine. */
export const describeReplayStep = (
  engine: PracticeEngine,
  { event, depressionsPa, spreadPa }: ReplayStep,
  figures: PracticeFigures,
): DescribedReplayStep => ({
  words:
    event.kind === 'reading'
      ? `Read ${event.carburettor}: ${describeDepression(engine, event.depressionPa, figures)} at ${describeSpeed(event.rpm ?? engine.targetRpm)}`
      : `${event.turns > 0 ? 'Open' : 'Close'} ${screwOf(engine, event.screw)} by ${describeTurnSize(event.turns)}, and lock it`,
  spread: describeDepression(engine, spreadPa, figures),
  stripWords: stripWordsOf(depressionsPa, engine, figures),
});

/** What the advice would have done, in a sentence; while it is worked out, how far it has come. */
export function describeReplay(
  engine: PracticeEngine,
  { phase, steps, state, hottestK }: Replay,
  figures: PracticeFigures,
): string {
  if (phase === 'warming')
    return `Working it out: the engine warms up, ${describeTemperature(state.metalK)}.`;
  if (phase === 'working') return `Working it out: ${count(steps.length, 'step', 'steps')} so far.`;
  const readings = steps.filter(({ event }) => event.kind === 'reading').length;
  const work = `${count(readings, 'reading', 'readings')} and ${count(steps.length - readings, 'turn', 'turns')}, ${describeClock(state.seconds)} of the engine’s time, ${describeTemperature(hottestK)} at most`;
  const apart = describeDepression(engine, steps.at(-1)!.spreadPa, figures);
  return phase === 'done'
    ? `The advice called it done after ${work}. Highest and lowest then truly lay ${apart} apart.`
    : `The advice stopped after ${work}, because it could not go on. Highest and lowest then truly lay ${apart} apart.`;
}
