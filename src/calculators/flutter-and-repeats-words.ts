import type { AnswerLine } from './answer-line.ts';
import type { Form } from './calculator-form.ts';
import { refuse } from './calculator-answer.ts';
import type { FormAnswer } from './calculator-answer.ts';
import { dampedRipple } from './damped-ripple.ts';
import type { RippleSample } from './damped-ripple.ts';
import { computeFlutterAndRepeats } from './flutter-and-repeats.ts';
import type { FlutterAnswer } from './flutter-and-repeats.ts';
import { parseFlutterAndRepeats } from './flutter-and-repeats-form.ts';
import type { FlutterField, FlutterTyped } from './flutter-and-repeats-form.ts';
import { formatExact, formatFixed, formatSignificant } from './format-number.ts';
import type { DecimalMark, NumberStyle } from './format-number.ts';
import { inUnit, pressureUnit } from './pressure-units.ts';
import { mostReadingsNeeded } from './readings-needed.ts';
import { formatPressure } from './format-pressure.ts';

export type FlutterDescribed = {
  /** What to do with the tap, and how long to wait. */
  readonly move: string;
  /** Whether the readings are enough. */
  readonly verdict: string;
  readonly needle: readonly AnswerLine[];
  readonly waits: readonly AnswerLine[];
  /** Standard uncertainties of one reading. */
  readonly uncertainties: readonly AnswerLine[];
  /** What several readings tell apart, at 95 %. */
  readonly readings: readonly AnswerLine[];
  readonly warnings: readonly string[];
  readonly announcement: string;
  /** For the drawing: three pulls of the take-off, in the unit that is shown. */
  readonly ripple: readonly RippleSample[];
  readonly rippleWords: string;
  readonly mark: DecimalMark;
  readonly unitSymbol: string;
};

/** Figures of flutter are known to two digits at best. */
const digits = 2;
/** An engine speed is read to three or four. */
const digitsOfSpeed = 3;
const drawnPulls = 3;
const drawnSamples = 120;

/** The answer in words and figures, with the reader's decimal mark. Rounding happens here, once. */
export function describeFlutterAndRepeats(given: FlutterTyped, answer: FlutterAnswer): FlutterDescribed {
  const unit = pressureUnit(given.unit);
  const written = (value: number, symbol: string, style: NumberStyle): string =>
    `${formatSignificant(value, symbol === 'Hz' ? digitsOfSpeed : digits, { mark: given.mark, ...style })}\u00a0${symbol}`;
  const typed = (pascals: number): string => formatPressure(pascals, unit.id, 6, { mark: given.mark });
  const line = (id: string, label: string, value: number, symbol: string, note?: string): AnswerLine => ({
    id,
    label,
    text: written(value, symbol, {}),
    copied: written(value, symbol, { minus: 'hyphen' }).replace('\u00a0', ' '),
    ...(note !== undefined && { note }),
  });
  const pressure = (id: string, label: string, pascals: number, note?: string): AnswerLine =>
    line(id, label, inUnit(pascals, unit), unit.symbol, note);
  const say = (pascals: number): string => written(inUnit(pascals, unit), unit.symbol, {});
  const seconds = (value: number): string => written(value, 's', {});
  const count = (id: string, label: string, value: number | null, note: string): AnswerLine => {
    const text = value === null ? `none up to ${formatFixed(mostReadingsNeeded, 0)}` : formatFixed(value, 0);
    return { id, label, text, copied: text, note };
  };
  const difference = typed(given.differencePa);
  const range = answer.goodSettlingS === null ? '' : rangeWords(answer.goodSettlingS, seconds);
  const move = moveWords(answer, range);
  const verdict = verdictWords(given, answer, typed);

  return {
    move: answer.waitS === 0 ? move : `${move} Wait ${seconds(answer.waitS)} after opening the line, then read.`,
    verdict,
    needle: [
      line('firing', 'The engine fires', answer.firingHz, 'Hz', `every ${formatSignificant(answer.firingIntervalDegrees, 3, { mark: given.mark })}° of the crank`),
      line('intake', 'This take-off is pulled', answer.intakeHz, 'Hz', `once in two turns, every ${written(1000 / answer.intakeHz, 'ms', {})}`),
      line('share', 'Of the swing is left', 100 * answer.shareLeft, '%'),
      pressure('left', 'The needle moves, either way', answer.flutterLeftPa, 'its middle is the reading'),
      ...(range === ''
        ? []
        : [
            {
              id: 'good-settling',
              label: 'Good settling time',
              text: range,
              copied: range.replaceAll('\u00a0', ' '),
              note: 'leaves two steps to one step of swing',
            },
          ]),
    ],
    waits: answer.waits.map(({ share, seconds: value }) => {
      const percent = formatExact(100 * share, { mark: given.mark });
      return line(`wait-${formatExact(100 * share)}`, `Until ${percent}\u00a0% of the way`, value, 's');
    }),
    uncertainties: [
      pressure('flutter-uncertainty', 'From the flutter', answer.flutterUncertaintyPa),
      pressure('scale-uncertainty', 'From the scale', answer.resolutionUncertaintyPa),
      pressure('reading-uncertainty', 'Both together', answer.readingUncertaintyPa),
    ],
    readings: [
      pressure('resolved', `${formatFixed(given.readings, 0)} of each tell apart`, answer.resolvedPa),
      count('needed', `Needed for ${difference}`, answer.needed, 'of each'),
      count('needed-to-see', 'To see it if it is there', answer.neededToSee, 'of each, nine times in ten'),
      pressure('finest', 'Never less than', answer.finestPa, 'the step of the scale forbids it'),
    ],
    warnings:
      answer.tap === 'still'
        ? ['A needle that stands fully still may be a shut tap or a blocked line, and then shows a trapped figure.']
        : [],
    announcement: `${move} ${verdict}`,
    ripple: dampedRipple(
      inUnit(given.openFlutterPa, unit),
      answer.intakeHz,
      given.timeConstantS,
      drawnPulls,
      drawnSamples,
    ),
    rippleWords: `With the tap open the needle swings by ${say(given.openFlutterPa)} either way; damped by ${say(answer.flutterLeftPa)}.`,
    mark: given.mark,
    unitSymbol: unit.symbol,
  };
} // prettier-ignore

const rangeWords = (
  { from, to }: { from: number; to: number },
  seconds: (value: number) => string,
): string => (from === 0 ? `up to ${seconds(to)}` : `${seconds(from)} to ${seconds(to)}`);

function moveWords({ tap }: FlutterAnswer, range: string): string {
  switch (tap) {
    case 'calm':
      return 'Leave the tap open: the needle stays within one step of the scale.';
    case 'still':
      return 'Open the tap a little, until the needle just still moves.';
    case 'just-moving':
      return 'Leave the tap so: the needle just still moves.';
    case 'lively':
      return `Close the tap a little, until the needle takes ${range} to settle.`;
  }
}

function verdictWords(
  { readings, differencePa, resolutionPa }: FlutterTyped,
  { needed, finestPa }: FlutterAnswer,
  typed: (pascals: number) => string,
): string {
  const difference = typed(differencePa);
  if (needed === null)
    return differencePa <= finestPa
      ? `No number of readings tells ${difference} apart: a step of ${typed(resolutionPa)} forbids it.`
      : `More than ${formatFixed(mostReadingsNeeded, 0)} readings of each would be needed for ${difference}.`;
  const enough = formatFixed(needed, 0);
  return needed <= readings
    ? `${enough} readings of each are enough for ${difference}.`
    : `Take ${enough} readings of each to tell ${difference} apart.`;
}

/** Reads the form, computes and describes; or says what is wrong with which field. */
export function answerFlutterAndRepeats(
  form: Form<FlutterField>,
): FormAnswer<FlutterDescribed, FlutterField> {
  const words = (field: FlutterField) => ({
    typed: form[field],
    formatPressure: (pascals: number) => formatPressure(pascals, form.unit),
  });
  const parsed = parseFlutterAndRepeats(form);
  if (!parsed.ok) return refuse(parsed.problems, words);
  const computed = computeFlutterAndRepeats(parsed.value);
  return computed.ok
    ? { ok: true, answer: describeFlutterAndRepeats(parsed.value, computed.value) }
    : refuse([{ field: 'cylinders', problem: computed.problem }], words);
}
