import type { Liquid } from './liquid.ts';
import { gaugeLiquids } from './gauge-liquids.ts';
import type { ColumnTyped } from './parse-liquid-column.ts';

/** Whether a liquid is computed for comparison only. */
export const isRefused = (liquid: Liquid): boolean => !gaugeLiquids.includes(liquid);

const upper = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** What has to be known before a column is filled or joined to an engine, the worst first. */
export function columnWarnings({ liquid }: ColumnTyped): readonly string[] {
  return [...(liquid === null ? [unknown] : liquidWarnings(liquid)), swallowed];
}

function liquidWarnings(liquid: Liquid): readonly string[] {
  const named = `${upper(liquid.name)}: ${lower(liquid.hazardWords)}`;
  if (liquid.hazards.includes('mercury')) return [named, mercury];
  if (liquid.hazards.includes('flammable')) return [`${named} ${flammable}`];
  if (isRefused(liquid)) return [`${named} It is refused here.`];
  return [named];
}

const mercury =
  'Fill no gauge with mercury: the Minamata Convention ends the making and the trade of mercury manometers. One that is still filled goes, closed, to where mercury is taken back; ask your local authority.';

const flammable =
  'A running engine has hot pipes and sparks, and draws the vapour in: do not have it near one, in an open vessel or in a tube.';

const unknown =
  'You gave a density, so this page does not know what the liquid is. Do not use one that burns, that gives off a vapour, or that poisons.';

const swallowed =
  'A liquid cannot be compressed. What gets past the catch pots into a cylinder can bend a connecting rod: fit the pots before the first start, and shut the lines before the engine is started or stopped.';
