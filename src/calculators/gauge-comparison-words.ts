import type { AnswerLine } from './answer-line.ts';
import { balanceAnalyserFields } from './balance-analyser-form.ts';
import { initialForm } from './calculator-form.ts';
import { refuse } from './calculator-answer.ts';
import type { FormAnswer } from './calculator-answer.ts';
import { writeCalculatorLink } from './calculator-link.ts';
import { formatChance } from './format-chance.ts';
import { decimalsForSignificant, formatExact, formatFixed } from './format-number.ts';
import type { DecimalMark, NumberStyle } from './format-number.ts';
import { formatPressure } from './format-pressure.ts';
import { compareGauges } from './gauge-comparison.ts';
import type { GaugeComparison, GaugeOffset } from './gauge-comparison.ts';
import type { GaugeField, GaugeForm } from './gauge-comparison-form.ts';
import { parseGaugeComparison } from './parse-gauge-comparison.ts';
import type { GaugeTyped } from './parse-gauge-comparison.ts';
import { inUnit, pressureUnit } from './pressure-units.ts';

export type GaugeDescribed = {
  /** What the comparison shows, in a sentence. */
  readonly lead: string;
  readonly offsets: readonly AnswerLine[];
  /** What each class allows; empty where none is known. */
  readonly classes: readonly AnswerLine[];
  readonly corrected: readonly AnswerLine[];
  /** Keys of the link that takes the corrected readings to the balance analyser; null where they are not all there. */
  readonly analyserKeys: Readonly<Record<string, string>> | null;
  /** Why nothing can be handed on, where it cannot. */
  readonly handOver: string;
  readonly announcement: string;
  /** For the drawing, in the unit that is shown. */
  readonly marks: readonly {
    readonly gauge: number;
    readonly offset: number;
    readonly halfWidth: number;
    readonly label: string;
  }[];
  readonly plotWords: string;
  readonly mark: DecimalMark;
  readonly heldAgainst: string;
  readonly unitSymbol: string;
};

/** Names a gauge: by its number, in a swap also by its letter. */
const nameOf = (gauge: number, { way }: GaugeTyped): string =>
  way === 'abba' || way === 'aba' ? `Gauge ${gauge} (${gauge === 1 ? 'A' : 'B'})` : `Gauge ${gauge}`;

/** The comparison in words and figures, to the digits of its own uncertainty. Rounding happens here, once. */
export function describeGaugeComparison(given: GaugeTyped, comparison: GaugeComparison): GaugeDescribed {
  const unit = pressureUnit(given.unit);
  const { gauges, reference } = comparison;
  // Two digits of the uncertainty say how many decimals an offset deserves (GUM 7.2.6).
  const decimals = Math.min(
    6,
    decimalsForSignificant(inUnit(comparison.largestUncertaintyPa, unit), 2),
  );
  const plain = (pascals: number, style: NumberStyle = {}): string =>
    formatFixed(inUnit(pascals, unit), decimals, { mark: given.mark, ...style });
  const signed = (pascals: number, style: NumberStyle = {}): string =>
    `${pascals > 0 && !/^0[.,]?0*$/u.test(plain(pascals)) ? '+' : ''}${plain(pascals, style)}`;
  const say = (pascals: number): string => `${plain(pascals)}\u00a0${unit.symbol}`;
  const heldAgainst = reference === null ? 'the mean of all' : nameOf(reference, given).replace('G', 'g');
  const confidence = formatChance(given.confidence);
  const reals = gauges.filter(({ real }) => real);

  const offsets = gauges.map((each): AnswerLine => {
    const { gauge, differencePa, expandedUncertaintyPa, readings, meanPa } = each;
    const mean = `mean ${say(meanPa)} of ${formatFixed(readings, 0)}`;
    if (gauge === reference)
      return { id: `offset-${gauge}`, label: nameOf(gauge, given), text: 'reference', copied: 'reference', note: mean };
    return {
      id: `offset-${gauge}`,
      label: nameOf(gauge, given),
      text: `${signed(differencePa)} ± ${say(expandedUncertaintyPa)}`,
      copied: `${signed(differencePa, { minus: 'hyphen' })} ± ${plain(expandedUncertaintyPa)} ${unit.symbol}`,
      note: `${mean}; ${each.real ? 'real' : 'may be chance'}`,
    };
  });
  const corrected = given.engine.map(({ carburettor, depressionPa, typed }, position): AnswerLine => {
    const own = gauges[carburettor - 1];
    const text = own === undefined ? 'no gauge compared' : say(depressionPa - own.differencePa);
    return {
      id: `corrected-${position + 1}`,
      label: `Carburettor ${carburettor}`,
      text,
      copied: text.replace('\u00a0', ' ').replace('−', '-'),
      note: `read as ${typed}`,
    };
  });
  const handedOn = handOver(given, comparison, plain);
  const lead = leadWords(given, comparison, say, heldAgainst, confidence);
  return {
    lead,
    offsets,
    classes: gauges.flatMap((each) => classLine(each, given, say)),
    corrected,
    ...handedOn,
    announcement: `${lead} ${reals.length} of ${gauges.length} offsets are real.`,
    marks: gauges.map(({ gauge, differencePa, expandedUncertaintyPa }) => ({
      gauge,
      offset: inUnit(differencePa, unit),
      halfWidth: inUnit(expandedUncertaintyPa, unit),
      label: gauge === reference ? 'reference' : `${signed(differencePa)} ± ${plain(expandedUncertaintyPa)}`,
    })),
    plotWords: `Offsets from ${heldAgainst}, with their ± at ${confidence}. The table says the same.`,
    heldAgainst,
    mark: given.mark,
    unitSymbol: unit.symbol,
  };
} // prettier-ignore

function leadWords(
  given: GaugeTyped,
  { worst, reference }: GaugeComparison,
  say: (pascals: number) => string,
  heldAgainst: string,
  confidence: string,
): string {
  if (worst === null)
    return `No gauge differs from ${heldAgainst} by more than its ± at ${confidence}. A correction would be chance.`;
  const way = worst.differencePa > 0 ? 'high' : 'low';
  const size = say(Math.abs(worst.differencePa));
  const whom = reference === null ? `against ${heldAgainst}` : `beside ${heldAgainst}`;
  return `${nameOf(worst.gauge, given)} reads ${size} ${way} ${whom}.`;
}

const keptWords = {
  yes: 'the offset is within what the classes allow',
  no: 'the offset is beyond what the classes allow',
  'cannot-tell': 'the readings cannot tell whether the classes allow the offset',
} as const;

function classLine(
  { gauge, permissiblePa, allowedPa, keepsToClass }: GaugeOffset,
  given: GaugeTyped,
  say: (pascals: number) => string,
): readonly AnswerLine[] {
  if (permissiblePa === null) return [];
  const text = `± ${say(permissiblePa)}`;
  const against =
    allowedPa === null || keepsToClass === null ? '' : `${keptWords[keepsToClass]}, ± ${say(allowedPa)}`;
  return [
    {
      id: `class-${gauge}`,
      label: nameOf(gauge, given),
      text,
      copied: text.replace('\u00a0', ' '),
      ...(against !== '' && { note: against }),
    },
  ];
}

function handOver(
  given: GaugeTyped,
  { gauges, largestUncertaintyPa }: GaugeComparison,
  plain: (pascals: number, style: NumberStyle) => string,
): Pick<GaugeDescribed, 'analyserKeys' | 'handOver'> {
  const { engine } = given;
  if (engine.length === 0)
    return { analyserKeys: null, handOver: 'Give readings of the carburettors to have them corrected.' };
  const missing = gauges.find(({ gauge }) => !engine.some(({ carburettor }) => carburettor === gauge));
  const stranger = engine.find(({ carburettor }) => carburettor > gauges.length);
  if (missing ?? stranger)
    return {
      analyserKeys: null,
      handOver:
        'To hand them on, give a reading of each carburettor that has one of these gauges, and of no other.',
    };
  const unit = pressureUnit(given.unit);
  const ascii = { minus: 'hyphen', mark: 'point' } as const;
  const typed = (pascals: number): string => formatExact(inUnit(pascals, unit), ascii);
  const readings = engine.map(({ carburettor, depressionPa, rpm }) => {
    const corrected = plain(depressionPa - gauges[carburettor - 1]!.differencePa, ascii);
    return `${carburettor}: ${corrected}${rpm === undefined ? '' : ` @ ${formatExact(rpm, ascii)}`}`;
  });
  return {
    analyserKeys: writeCalculatorLink(balanceAnalyserFields, {
      ...initialForm(balanceAnalyserFields),
      readings: readings.join(', '),
      unit: given.unit,
      carburettors: String(gauges.length),
      generation: 'all-adjustable',
      fixed: 'none',
      drift: 'none',
      resolution: typed(given.gauge.resolutionPa),
      flutter: typed(given.gauge.flutterPa),
      offsetUncertainty: plain(largestUncertaintyPa, ascii),
    }),
    handOver: 'The corrections go with their largest ±. Say there which linkage you have, and the tolerance.',
  };
}

/** Reads the form, compares and describes; or says what is wrong with which field. */
export function answerGaugeComparison(form: GaugeForm): FormAnswer<GaugeDescribed, GaugeField> {
  const words = (field: GaugeField) => ({
    typed: form[field],
    formatPressure: (pascals: number) => formatPressure(pascals, form.unit),
  });
  const parsed = parseGaugeComparison(form);
  if (!parsed.ok) return refuse(parsed.problems, words);
  const compared = compareGauges(parsed.value);
  return compared.ok
    ? { ok: true, answer: describeGaugeComparison(parsed.value, compared.value) }
    : refuse([{ field: 'reference', problem: compared.problem }], words);
}
