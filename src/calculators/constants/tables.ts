import { alarmPoints } from '../carbon-monoxide-alarms.ts';
import { carbonMonoxideLimits } from '../carbon-monoxide-limits.ts';
import { glycolRows } from '../glycol-solution-density.ts';
import { regularNuts, thinNuts } from '../hexagon-nuts.ts';
import { liquids } from '../liquids.ts';
import { threadTables } from '../thread-tables.ts';

/** A table of published figures, too long for the list of constants; its page shows it. */
export type ConstantTable = {
  readonly what: string;
  readonly rows: number;
  /** Ids in the list of sources. */
  readonly sources: readonly string[];
  /** Slug of the page that shows it. */
  readonly page: string;
};

const unique = (ids: readonly string[]): readonly string[] => [...new Set(ids)];

export const constantTables: readonly ConstantTable[] = [
  ...threadTables.map(({ heading, threads, source }) => ({
    what: `Threads: ${heading}`,
    rows: threads.length,
    sources: [source],
    page: 'thread-travel-budget',
  })),
  {
    what: 'Hexagon nuts, thin and regular',
    rows: thinNuts.length + regularNuts.length,
    sources: ['iso4032', 'iso4035'],
    page: 'thread-travel-budget',
  },
  {
    what: 'Liquids of gauges: density, expansion, danger',
    rows: liquids.length,
    sources: unique(
      liquids.flatMap(({ sourceId, density }) =>
        density.kind === 'expansion' ? [sourceId, density.expansionSourceId] : [sourceId],
      ),
    ),
    page: 'liquid-column',
  },
  {
    what: 'Density of coolant by strength and temperature',
    rows: glycolRows.length,
    sources: ['ashrae-glycol'],
    page: 'liquid-column',
  },
  {
    what: 'Limits and guidelines for carbon monoxide',
    rows: carbonMonoxideLimits.length,
    sources: unique(carbonMonoxideLimits.map(({ sourceId }) => sourceId)),
    page: 'exhaust-gas-in-a-room',
  },
  {
    what: 'Alarm points of carbon monoxide alarms',
    rows: alarmPoints.length,
    sources: ['ul2034'],
    page: 'exhaust-gas-in-a-room',
  },
];
