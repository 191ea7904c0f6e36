import type { Cell } from './cells.ts';

/** One engine, worked on. */
export type Run = {
  readonly called: 'done' | 'thread' | 'visits';
  readonly trueSpreadPa: number;
  readonly visits: number;
  readonly moves: number;
  readonly turns: number;
  /** Every chance that was stated, with whether the set was truly within at that moment. */
  readonly claims: readonly { readonly chance: number; readonly within: boolean }[];
};

export type MedianAnd95 = { readonly median: number; readonly most95: number };

export type ClaimBand = {
  readonly from: number;
  readonly to: number;
  readonly claims: number;
  readonly within: number;
  /** Share of the claims that were true; null where nothing was claimed. */
  readonly share: number | null;
};

export type CellSummary = {
  readonly method: Cell['method'];
  readonly generation: Cell['generation'];
  readonly carburettors: number;
  readonly hardship: string;
  readonly tolerancePa: number;
  readonly engines: number;
  readonly visits: MedianAnd95;
  readonly moves: MedianAnd95;
  readonly turns: MedianAnd95;
  /** Of the sets called done. */
  readonly trueSpreadPa: MedianAnd95;
  readonly calledDone: number;
  /** Of the sets called done, those that are not within. */
  readonly wronglyCalledDone: number;
  readonly wrongShare: number | null;
  readonly stoppedForThread: number;
  readonly stoppedForVisits: number;
  readonly gaveUpShare: number | null;
  readonly claimBands: readonly ClaimBand[];
};

const bandStarts = [0.5, 0.6, 0.7, 0.8, 0.9] as const;
const bandWidth = 0.1;

export const summaryOf = (cell: Cell, runs: readonly Run[]): CellSummary => {
  const done = runs.filter(({ called }) => called === 'done');
  const wrong = done.filter(({ trueSpreadPa }) => trueSpreadPa > cell.tolerancePa);
  return {
    method: cell.method,
    generation: cell.generation,
    carburettors: cell.carburettors,
    hardship: cell.hardship,
    tolerancePa: cell.tolerancePa,
    engines: runs.length,
    visits: medianAnd95(runs.map(({ visits }) => visits)),
    moves: medianAnd95(runs.map(({ moves }) => moves)),
    turns: medianAnd95(runs.map(({ turns }) => turns)),
    trueSpreadPa: medianAnd95(done.map(({ trueSpreadPa }) => trueSpreadPa)),
    calledDone: done.length,
    wronglyCalledDone: wrong.length,
    wrongShare: share(wrong.length, done.length),
    stoppedForThread: runs.filter(({ called }) => called === 'thread').length,
    stoppedForVisits: runs.filter(({ called }) => called === 'visits').length,
    gaveUpShare: share(runs.length - done.length, runs.length),
    claimBands: cell.method === 'advice' ? bandsOf(runs) : [],
  };
};

/** Adds the bands of many cells. */
export const bandsTogether = (cells: readonly CellSummary[]): readonly ClaimBand[] =>
  bandStarts.map((from, k) => {
    const bands = cells.flatMap(({ claimBands }) => claimBands[k] ?? []);
    return bandOf(
      from,
      bands.reduce((sum, { claims }) => sum + claims, 0),
      bands.reduce((sum, { within }) => sum + within, 0),
    );
  });

const bandsOf = (runs: readonly Run[]): readonly ClaimBand[] => {
  const claims = runs.flatMap((run) => run.claims);
  return bandStarts.map((from) => {
    const to = endOf(from);
    const inside = claims.filter(({ chance }) => chance >= from && (chance < to || to === 1));
    return bandOf(from, inside.length, inside.filter(({ within }) => within).length);
  });
};

const bandOf = (from: number, claims: number, within: number): ClaimBand => ({
  from,
  to: endOf(from),
  claims,
  within,
  share: share(within, claims),
});

const endOf = (from: number): number => rounded(from + bandWidth);

const share = (part: number, whole: number): number | null => (whole === 0 ? null : rounded(part / whole));

/** The smallest value that so large a share of the values does not exceed; 0 where there are none. */
export const quantile = (values: readonly number[], share: number): number => {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)] ?? 0;
};

const medianAnd95 = (values: readonly number[]): MedianAnd95 => ({
  median: rounded(quantile(values, 0.5)),
  most95: rounded(quantile(values, 0.95)),
});

/** Six digits are more than a study of hundreds can tell; the rest would only fill the file. */
const rounded = (value: number): number => Number(value.toPrecision(6));
