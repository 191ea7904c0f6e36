import type { AnswerLine } from './answer-line.ts';
import type { BalanceAnalysis, CarburettorBalance, ScrewBalance } from './balance-analysis.ts';
import { expand } from './balance-difference.ts';
import { formatExact, formatSignificant } from './format-number.ts';
import type { DecimalMark } from './format-number.ts';
import { formatPressure } from './format-pressure.ts';
import type { MatchedTo } from './matched-to.ts';
import type { BalanceQuestion } from './parse-balance-analyser.ts';
import type { PressureFigures } from './pressure-figures.ts';
import { joinedNumbers, screwWords } from './screw-words.ts';

/** `figures` for readings, `finer` with one decimal more for what is a fraction of the gauge's step. */
export type BalanceFigures = {
  readonly figures: PressureFigures;
  readonly finer: PressureFigures;
  readonly mark: DecimalMark;
};

const line = (id: string, label: string, text: string, note: string, copied = text): AnswerLine => ({
  id,
  label,
  text,
  copied: copied.replaceAll('\u00a0', ' ').replaceAll('−', '-'),
  ...(note !== '' && { note }),
});

export const matchedWords = (matchedTo: MatchedTo): string => {
  switch (matchedTo.kind) {
    case 'carburettor':
      return `carburettor\u00a0${matchedTo.carburettor}`;
    case 'closest-two':
      return `the mean of ${joinedNumbers(matchedTo.carburettors)}`;
    case 'mean':
      return 'the mean of all';
  }
};

/** What holds for the whole set. */
export function setLines(
  { given, unit }: BalanceQuestion,
  analysis: BalanceAnalysis,
  { figures, finer, mark }: BalanceFigures,
): readonly AnswerLine[] {
  const { spread, highest, lowest, matchedTo, referencePa, drift, confidence } = analysis;
  const extremes = spread.differencePa === 0 ? '' : `carburettor ${highest} less ${lowest}`;
  const lines = [
    line('spread', 'Spread', figures.range(spread.differencePa, spread.expandedUncertaintyPa), extremes),
    line(
      'reference',
      `Matched to ${matchedWords(matchedTo)}`,
      figures.withUnit(referencePa),
      matchedTo.kind === 'closest-two' ? 'the two that read closest' : '',
    ),
  ];
  if (drift !== null) {
    const halfWidthPa = expand(drift.standardUncertaintyPa, Infinity, confidence);
    const note = `shown by carburettor ${given.driftReference}, and taken out`;
    lines.push(line('drift', 'Drift a reading', finer.range(drift.perReadingPa, halfWidthPa), note));
  }
  if (given.speed !== undefined) {
    const { targetRpm, sensitivityPaPerRpm } = given.speed;
    lines.push(
      line(
        'speed',
        `Referred to ${formatExact(targetRpm, { mark })} rpm`,
        formatPressure(sensitivityPaPerRpm * 100, unit, 4, { mark }),
        'for 100 rpm more',
      ),
    );
  }
  return lines;
}

const movesOne = ({ moves }: ScrewBalance): boolean => moves.filter((share) => share !== 0).length === 1;

/** `Screw of carburettor 1`. */
const screwTitle = (moves: readonly number[]): string => {
  const words = screwWords(moves).replace(/^the /u, '');
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
};

/** Which way a screw goes, and how sure that is. */
export function screwLine(
  screw: ScrewBalance,
  { matchedTo, screws, verdict }: BalanceAnalysis,
  { figures }: BalanceFigures,
): AnswerLine {
  const { real, direction, moves } = screw;
  const against = screws.every(movesOne) ? matchedWords(matchedTo) : 'what it is matched to';
  const difference = figures.apart(screw.differencePa, screw.expandedUncertaintyPa, against);
  const turns = real && verdict !== 'within';
  const may = [
    ...(real ? [] : ['which may be chance']),
    ...(turns || direction === 'none'
      ? []
      : [real ? `to bring it closer, ${direction}` : `if anything, ${direction}`]),
  ];
  return line(
    `screw-${screw.screw}`,
    screwTitle(moves),
    turns ? direction : 'leave',
    may.length === 0 ? difference : `${difference}, ${may.join('; ')}`,
    `${screwTitle(moves)}: ${turns ? direction : 'leave'}`,
  );
}

/** What a carburettor reads, and how far it is open; its deviation, unless its own screw has told it. */
export function carburettorLine(
  own: CarburettorBalance,
  { matchedTo, screws }: BalanceAnalysis,
  { figures, mark }: BalanceFigures,
): AnswerLine {
  const { carburettor, readings, deviation, areaRatio } = own;
  const isReference = matchedTo.kind === 'carburettor' && matchedTo.carburettor === carburettor;
  const ownScrew = screws.every(movesOne) && screws.some(({ moves }) => moves[carburettor - 1] !== 0);
  const apart = figures.apart(
    deviation.differencePa,
    deviation.expandedUncertaintyPa,
    matchedWords(matchedTo),
  );
  const open =
    areaRatio === null
      ? 'no ratio of openings without a depression'
      : `${formatSignificant(areaRatio, 3, { mark })} times as open`;
  const parts = [
    ...(readings > 1 ? [`mean of ${readings}`] : []),
    ...(isReference ? ['the others are matched to it'] : []),
    ...(isReference || ownScrew ? [] : [deviation.real ? apart : `${apart}, which may be chance`]),
    ...(isReference ? [] : [open]),
  ];
  return line(
    `carburettor-${carburettor}`,
    `Carburettor\u00a0${carburettor}`,
    figures.range(own.meanPa, own.expandedUncertaintyPa),
    parts.join('; '),
  );
}
