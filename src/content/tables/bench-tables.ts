import {
  formatFixed,
  formatSignificant,
  gapOfTurns,
  inUnit,
  pascalsOf,
  pressureUnit,
  seeSaw,
  standardAtmospherePa,
  worthOfADifference,
} from '../../calculators/index.ts';
import { constantValue } from '../../components/constant-in-words.ts';
import { valueOf } from '../value-of.ts';
import type { DataTable } from './data-table.ts';

const mmHg = pressureUnit('mmHg');
const percent = (share: number, digits: number): string => formatSignificant(100 * share, digits);

/** Sets, and how many of their carburettors one screw moves. */
const movedSets = [
  [2, 1],
  [3, 1],
  [4, 1],
  [4, 2],
  [6, 1],
  [6, 2],
  [8, 1],
] as const;

export const seeSawShares: DataTable = {
  caption:
    'The see-saw: shares of the effect of a turn that each reading answers with, once the speed is back.',
  columns: [
    { heading: 'carburettors' },
    { heading: 'moved by the screw' },
    { heading: 'each of those moved', unit: '%' },
    { heading: 'each of the others, the other way', unit: '%' },
  ],
  rows: movedSets.map(([carburettors, moved]) => {
    const shares = valueOf(seeSaw(carburettors, moved));
    return {
      cells: [String(carburettors), String(moved), percent(shares.moved, 2), percent(shares.others, 2)],
      sources: ['simulation'],
    };
  }),
};

/** The effect of a whole turn that the advice begins with. */
const usualEffectPa = constantValue('priors.effectPaPerTurn');

/** Minutes of a clock face, 60 to a turn. */
const slipMinutes = [0.5, 1, 2, 5, 10];

export const slipOfANut: DataTable = {
  caption: `What a slip of the screw does to the reading, where a whole turn does ${formatFixed(inUnit(usualEffectPa, mmHg), 0)} mmHg.`,
  columns: [
    { heading: 'slip', unit: 'min of a clock face' },
    { heading: 'slip', unit: 'turn' },
    ...['mmHg', 'inHg', 'kPa'].map((id) => ({ heading: 'change', unit: pressureUnit(id).symbol })),
  ],
  rows: slipMinutes.map((minutes) => {
    const turns = minutes / 60;
    const changePa = gapOfTurns(turns, usualEffectPa);
    return {
      cells: [
        formatSignificant(minutes, 1),
        formatSignificant(turns, 2),
        ...['mmHg', 'inHg', 'kPa'].map((id) => formatSignificant(inUnit(changePa, pressureUnit(id)), 2)),
      ],
      sources: ['simulation'],
    };
  }),
};

const differences = [5, 10, 20, 50, 100];
/** A middling depression well above idle, in mmHg; what the advice begins with. */
const middlingDepression = 300;

export const worthOfDifferences: DataTable = {
  caption: `What a difference means for two cylinders near ${middlingDepression} mmHg under a standard atmosphere.`,
  columns: [
    { heading: 'difference', unit: mmHg.symbol },
    { heading: 'more air drawn', unit: '%' },
    { heading: 'throttle further open', unit: '%' },
  ],
  rows: differences.map((difference) => {
    const worth = valueOf(
      worthOfADifference(
        pascalsOf(difference, mmHg),
        pascalsOf(middlingDepression, mmHg),
        standardAtmospherePa,
      ),
    );
    return {
      cells: [String(difference), percent(worth.moreAir, 2), percent(worth.moreOpening, 2)],
      sources: ['heywood'],
    };
  }),
};
