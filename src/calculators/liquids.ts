import { gaugeLiquids } from './gauge-liquids.ts';
import type { Liquid } from './liquid.ts';
import { refusedLiquids } from './refused-liquids.ts';

/** Every liquid of the tables: those to use first, then those that are refused. */
export const liquids: readonly Liquid[] = [...gaugeLiquids, ...refusedLiquids];

/** The liquid of an id that this package wrote; throws on any other, which is our own mistake. */
export function liquidOf(id: string): Liquid {
  const found = liquids.find((liquid) => liquid.id === id);
  if (found === undefined) throw new Error(`no liquid “${id}”`);
  return found;
}

/** The liquid that somebody names, whatever the case, the spaces and the hyphens, or null. */
export function findLiquid(typed: string): Liquid | null {
  const spelling = plain(typed);
  const names = ({ id, name, aliases }: Liquid): readonly string[] => [id, name, ...aliases];
  return liquids.find((liquid) => names(liquid).some((each) => plain(each) === spelling)) ?? null;
}

const plain = (text: string): string => text.toLowerCase().replace(/[\s_-]/gu, '');
