import type { AmbientAnswer } from './ambient-pressure.ts';
import type { AnswerLine } from './answer-line.ts';
import { formatFixed, formatSignificant } from './format-number.ts';
import type { NumberStyle } from './format-number.ts';
import { formatPressure } from './format-pressure.ts';
import type { AmbientTyped } from './parse-ambient-pressure.ts';
import { pressureUnits } from './pressure-unit-table.ts';
import { inchesPerFoot, metresPerInch } from './exact-definitions.ts';

export type AmbientPressureDescribed = {
  readonly verdict: string;
  /** Whether the weather is in it. */
  readonly weather: string;
  readonly ambient: readonly AnswerLine[];
  readonly place: readonly AnswerLine[];
  /** What the reading from elsewhere would be here; none without one. */
  readonly carried: readonly AnswerLine[];
  readonly carriedWords: readonly string[];
  /** Keys of a link to the unit converter. */
  readonly converterLink: Readonly<Record<string, string>>;
  readonly announcement: string;
};

/** Digits of an ambient pressure: a barometer is read to a tenth of a hectopascal. */
const ambientDigits = 4;
const readingDigits = 3;

/** The answer in words and figures, with the reader's decimal mark. Rounding happens here, once. */
export function describeAmbientPressure(given: AmbientTyped, answer: AmbientAnswer): AmbientPressureDescribed {
  const style: NumberStyle = { mark: given.mark };
  const { ambientPa, carried } = answer;
  const line = (id: string, label: string, write: (style: NumberStyle) => string, note?: string): AnswerLine => ({
    id,
    label,
    text: write(style),
    copied: write({ ...style, minus: 'hyphen' }).replaceAll('\u00a0', ' '),
    ...(note !== undefined && { note }),
  });
  const pressure = (unitId: string, pascals: number = ambientPa): string => formatPressure(pascals, unitId, ambientDigits, style);
  const metres = (each: NumberStyle): string => `${formatFixed(answer.pressureAltitudeM, 0, each)}\u00a0m`;
  const feet = formatFixed(answer.pressureAltitudeM / (inchesPerFoot * metresPerInch), 0, style);
  const percent = (each: NumberStyle): string => `${formatSignificant(100 * answer.shareOfSeaLevel, 3, each)}\u00a0%`;
  const verdict = `The ambient pressure is ${pressure('hPa')} (${pressure('inHg')}): ${percent(style)} of the standard at sea level.`;

  const unit = given.unit?.id ?? 'mmHg';
  const reading = (id: string, label: string, pascals: number, note: string): AnswerLine =>
    line(id, label, (each) => formatPressure(pascals, unit, readingDigits, each), note);
  const typed = given.reading === null ? '' : formatPressure(given.reading.depressionPa, unit, 6, style);

  return {
    verdict,
    weather: weatherWords(given),
    ambient: pressureUnits
      .filter(({ rare }) => !rare)
      .map(({ id, symbol }) => line(`ambient-${id}`, symbol, (each) => formatPressure(ambientPa, id, ambientDigits, each))),
    place: [
      line('largest', 'Largest possible depression', (each) => formatPressure(answer.largestDepressionPa, unit, ambientDigits, each), 'nothing would be left in the intake'),
      line('share', 'Of the standard at sea level', percent),
      line('pressure-altitude', 'Height of this pressure in the standard', metres, `${feet}\u00a0ft`),
    ],
    carried:
      carried === null
        ? []
        : [
            reading('same-opening', 'Same opening, same speed', carried.sameOpeningPa, 'throttles and screws untouched'),
            ...(carried.sameChargePa === null
              ? []
              : [reading('same-charge', 'Speed set again by its screw', carried.sameChargePa, 'throttles a little further open')]),
            line(
              'there',
              'Ambient pressure there',
              (each) => formatPressure(carried.thereAmbientPa, 'hPa', ambientDigits, each),
            ),
            line('ratio', 'Intake over ambient pressure there', (each) => formatFixed(carried.pressureRatio, 3, each), carried.isChoked ? 'choked: the throttle passes all it can' : 'not choked'),
          ],
    carriedWords: carried === null ? [] : carriedWords(carried, typed, (pascals) => formatPressure(pascals, unit, readingDigits, style)),
    converterLink: {
      v: '1',
      ...(given.reading !== null && { typed: formatPressure(given.reading.depressionPa, unit, 6, { minus: 'hyphen' }).replaceAll('\u00a0', ' ') }),
      ambient: formatPressure(ambientPa, 'kPa', 5, { minus: 'hyphen' }).replaceAll('\u00a0', ' '),
    },
    announcement: `${verdict} No depression can be larger.`,
  };
} // prettier-ignore

function weatherWords({ place }: AmbientTyped): string {
  switch (place.from) {
    case 'altitude':
      return 'This is the standard air of the height. The weather of a day moves it by up to about 3 % either way; a barometer knows better.';
    case 'setting':
      return 'The weather of the day is in it, as far as the setting is that of a station near by.';
    case 'barometer':
      return 'This is what your barometer shows, if it shows the pressure of its own place. One that was set to the weather report shows that of the sea.';
  }
}

function carriedWords(
  { sameOpeningPa, sameChargePa }: NonNullable<AmbientAnswer['carried']>,
  typed: string,
  say: (pascals: number) => string,
): readonly string[] {
  const untouched = say(sameOpeningPa);
  const range =
    sameChargePa === null
      ? `${typed} there would be ${untouched} here with everything untouched. Set to the same speed, the engine would need all the air that there is: no such depression is left.`
      : `${typed} there would be about ${
          say(sameChargePa) === untouched
            ? untouched
            : [sameChargePa, sameOpeningPa]
                .toSorted((a, b) => a - b)
                .map(say)
                .join(' to ')
        } here.`;
  return [
    range,
    'It cannot know heat, mixture, wear, another gauge or another speed; so an old reading says what is plausible, and never what to set. Carburettors that were level there stay level.',
  ];
}
