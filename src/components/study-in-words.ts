import { formatChance, formatFixed, formatPressure } from '../calculators/index.ts';
import { study, type StudyCell } from '../content/study.ts';

export type StudyWords = {
  /** Looks at the gauge: the middle set, and what 95 sets in 100 do not exceed. */
  readonly looks: string;
  readonly mostLooks: string;
  readonly moves: string;
  /** Of the sets called done, those that are not. */
  readonly wrong: string;
  readonly gaveUp: string;
  /** Of the middle set, when the work ended. */
  readonly trueSpread: string;
};

const shareInWords = (share: number | null): string => (share === null ? '–' : formatChance(share));

/** What the study found for one kind of set, in words; four carburettors and the advice unless told otherwise. */
export function studyInWords({
  generation = 'all-adjustable',
  carburettors = 4,
  method = 'advice',
  hardship = 'plain',
}: Partial<Pick<StudyCell, 'generation' | 'carburettors' | 'method' | 'hardship'>>): StudyWords {
  const cell = study.cells.find(
    (each) =>
      each.generation === generation &&
      each.carburettors === carburettors &&
      each.method === method &&
      each.hardship === hardship,
  );
  if (cell === undefined)
    throw new Error(`the study has no ${generation} of ${carburettors}, ${method}, ${hardship}`);
  return {
    looks: formatFixed(cell.visits.median, 0),
    mostLooks: formatFixed(cell.visits.most95, 0),
    moves: formatFixed(cell.moves.median, 0),
    wrong: shareInWords(cell.wrongShare),
    gaveUp: shareInWords(cell.gaveUpShare),
    trueSpread: formatPressure(cell.trueSpreadPa.median, 'mmHg', 2),
  };
}
