import { formatFixed } from './format-number.ts';
import { describeTurns } from './format-turns.ts';
import { isShort } from './short-of-thread.ts';
import type { AdjusterBudget } from './thread-travel.ts';

/** One side of an adjuster as printed: `0.75`, and whether it is short or missing. */
export type SideCell = { readonly text: string; readonly short: boolean };

/** One adjuster of a table, in turns. */
export type AdjusterRow = {
  readonly adjuster: number;
  readonly now: { readonly closing: SideCell; readonly opening: SideCell };
  /** Signed: `+1/2`, `−1/4`, `0`. */
  readonly turns: string;
  readonly afterwards: { readonly closing: SideCell; readonly opening: SideCell };
};

const cell = (turns: number, which: 'closing' | 'opening'): SideCell => ({
  text: formatFixed(turns, 2),
  short: isShort({ [which]: turns }),
});

/** An adjuster before and after its turns, as printed. */
export const adjusterRow = ({ adjuster, turnsLeft, turns, afterwards }: AdjusterBudget): AdjusterRow => ({
  adjuster,
  now: { closing: cell(turnsLeft.closing, 'closing'), opening: cell(turnsLeft.opening, 'opening') },
  turns: `${turns > 0 ? '+' : ''}${describeTurns(turns)}`,
  afterwards: { closing: cell(afterwards.closing, 'closing'), opening: cell(afterwards.opening, 'opening') },
});
