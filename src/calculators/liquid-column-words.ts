import type { AnswerLine } from './answer-line.ts';
import { columnHeightM, uprightPerReading } from './manometer.ts';
import { formatInches, formatLength } from './format-length.ts';
import { formatExact, formatFixed, formatSignificant } from './format-number.ts';
import type { NumberStyle } from './format-number.ts';
import { formatPressure } from './format-pressure.ts';
import { tallestLegM } from './liquid-column.ts';
import type { ColumnAnswer } from './liquid-column.ts';
import { columnWarnings, isRefused } from './liquid-column-warnings.ts';
import type { ColumnTyped } from './parse-liquid-column.ts';
import { pressureUnit } from './pressure-units.ts';

export type LiquidColumnDescribed = {
  /** What to do, in a sentence or two. */
  readonly verdict: string;
  /** What has to be known before anything is filled in. */
  readonly warnings: readonly string[];
  /** Why the catch pots are as large as they are. */
  readonly worstCase: string;
  readonly levels: readonly AnswerLine[];
  /** None for a liquid that is refused. */
  readonly build: readonly AnswerLine[];
  /** What the reading means, in the units of gauges; none where nothing was read. */
  readonly read: readonly AnswerLine[];
  /** For the drawing. */
  readonly kind: ColumnTyped['kind'];
  readonly sides: ColumnTyped['sides'];
  readonly levelWords: string;
  readonly announcement: string;
};

const readUnits = ['mmHg', 'inHg', 'kPa', 'mbar', 'cmHg', 'mmH2O', 'psi'] as const;

/** The answer in words and figures, with the reader's decimal mark. Rounding happens here, once. */
export function describeLiquidColumn(given: ColumnTyped, answer: ColumnAnswer): LiquidColumnDescribed {
  const style: NumberStyle = { mark: given.mark };
  const name = given.liquid?.name ?? 'this liquid';
  const pressure = (pascals: number): string => formatPressure(pascals, given.unit.id, 4, style);
  const line = (id: string, label: string, write: (style: NumberStyle) => string, note?: string): AnswerLine => ({
    id,
    label,
    text: write(style),
    copied: write({ ...style, minus: 'hyphen' }).replaceAll('\u00a0', ' '),
    ...(note !== undefined && { note }),
  });
  const length = (id: string, label: string, metres: number, note = ''): AnswerLine =>
    line(id, label, (each) => formatLength(metres, each), [formatInches(metres, style), note].filter(Boolean).join('; '));
  const volume = (id: string, label: string, cubicMetres: number, note: string): AnswerLine =>
    line(id, label, (each) => `${formatSignificant(cubicMetres * 1e6, 2, each)}\u00a0mL`, note);

  const unitHeightM = columnHeightM(given.kgPerM3, given.unit.pascals) / uprightPerReading(given.manometer);
  const isDifference = given.sides === 'difference';
  const shown = pressure(answer.shownPa);
  const sides = isDifference ? 'between two carburettors' : 'against the open air';
  const levelText = formatLength(answer.scaleM, style);
  const along = given.kind === 'inclined' ? 'along the tube' : 'high';
  const verdict = verdictWords({ given, answer, shown, sides, levelText, along, name, style });
  // A formula is good to four digits and more, a handbook’s round figure to three.
  const digits = given.liquid === null || given.liquid.density.kind === 'expansion' ? 3 : 4;
  const density = formatSignificant(given.kgPerM3, digits, style);
  const refused = given.liquid !== null && isRefused(given.liquid);
  const at = given.celsius === null ? 'as you gave it' : `at ${formatExact(Math.round(given.celsius * 100) / 100, style)}\u00a0°C`;
  const isUTube = given.kind === 'u-tube';
  const { readPa } = answer;
  const pots = answer.catchPots === 2 ? 'one in each line, in and out at the top' : 'in and out at the top';

  return {
    verdict,
    warnings: columnWarnings(given),
    worstCase: `If a line slips off or the throttle snaps shut, one side is pulled by ${pressure(given.depressionPa)} or more. That would stand ${formatLength(answer.openSideM, style)} high, so all of the liquid goes over: each catch pot must hold twice all of it, with its ways in and out at the top.`,
    levels: [
      length('level', `${shown} ${sides}`, answer.scaleM, along === 'high' ? 'between the levels' : along),
      line('per-unit', `1\u00a0${given.unit.symbol}`, (each) => `${formatSignificant(unitHeightM * 1000, 4, each)}\u00a0mm`, 'of reading'),
      line('per-millimetre', '1\u00a0mm of reading', (each) => formatPressure(given.unit.pascals / (unitHeightM * 1000), given.unit.id, 3, each)),
      ...(isDifference
        ? [length('open-side', `${pressure(given.depressionPa)} against the open air`, answer.openSideM, 'upright, for comparison')]
        : []),
      line('density', 'Density', (each) => `${formatSignificant(given.kgPerM3, digits, each)}\u00a0kg/m³`, at),
    ],
    build: refused ? [] : [
      length('leg', isUTube ? 'Each leg, bottom to top' : 'Tube out of the well', answer.legM, 'a quarter more than the level'),
      length('tube', 'Tube, all of it', answer.tubeM, isUTube ? 'with the bend' : 'with what dips into the well'),
      volume('liquid', isUTube ? 'Liquid, to half of each leg' : 'Liquid in the well', answer.liquidM3, `${formatSignificant(answer.liquidM3 * given.kgPerM3 * 1000, 2, style)}\u00a0g`),
      volume('catch', answer.catchPots === 2 ? 'Each of two catch pots holds' : 'The catch pot holds', answer.catchM3, pots),
    ],
    read:
      readPa === null
        ? []
        : readUnits.map((id) => line(`read-${id}`, pressureUnit(id).name, (each) => formatPressure(readPa, id, 4, each))),
    kind: given.kind,
    sides: given.sides,
    levelWords: given.kind === 'inclined' ? `L is ${levelText}, h is ${formatLength(answer.uprightM, style)}.` : `h is ${formatLength(answer.uprightM, style)}.`,
    announcement: `${verdict} Density ${density} kilograms per cubic metre.`,
  };
} // prettier-ignore

type VerdictParts = {
  readonly given: ColumnTyped;
  readonly answer: ColumnAnswer;
  readonly shown: string;
  readonly sides: string;
  readonly levelText: string;
  readonly along: string;
  readonly name: string;
  readonly style: NumberStyle;
};

function verdictWords(parts: VerdictParts): string {
  const { given, answer, shown, sides, levelText, along, name, style } = parts;
  if (given.liquid !== null && isRefused(given.liquid))
    return `Do not fill a column with ${name}. Take water. For comparison: ${shown} ${sides} would stand ${levelText} ${along}.`;
  const stands = `${shown} ${sides} stands ${levelText} ${along} in ${name}`;
  const leg = formatLength(answer.legM, style);
  switch (answer.fit) {
    case 'too-tall':
      return `${stands}: with its margin ${leg} of tube, and more than ${formatFixed(tallestLegM, 0)}\u00a0m does not stand on a bench. ${
        given.sides === 'depression'
          ? 'Join the column to two carburettors and read their difference.'
          : 'Balance more closely with a gauge first, then come back to the column.'
      }`;
    case 'hard-to-read':
      return `${stands}: too little to read well. Take a lighter liquid, or let the tube lean.`;
    case 'fits':
      return `${stands}. ${given.kind === 'u-tube' ? 'Make each leg' : 'Make the tube'} ${leg} long, and put a catch pot in ${answer.catchPots === 2 ? 'each line' : 'the line'} to the engine.`;
  }
}
