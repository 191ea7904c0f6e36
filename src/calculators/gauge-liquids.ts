import { expandingLiquid } from './expanding-liquid.ts';
import { glycolLimit } from './glycol-solution-density.ts';
import type { Liquid } from './liquid.ts';
import { oilExpansionPerK } from './oil-expansion.ts';
import { waterLimit } from './water-density.ts';

const oil = (
  id: string,
  name: string,
  kgPerM3At20: number,
  aliases: readonly string[],
  sourceId: string,
): Liquid =>
  expandingLiquid({
    id,
    name,
    aliases,
    kgPerM3At20,
    expansionPerK: oilExpansionPerK(kgPerM3At20),
    expansionSourceId: 'petroleum-tables',
    hazards: [],
    hazardWords:
      'Burns only when hot; an engine that swallows it smokes, and enough of it breaks the engine.',
    sourceId,
  });

const sweetPoison =
  'Poisonous to people and animals that drink it, and it tastes sweet: no open vessel, and wipe up every drop.';

/** Liquids to fill a gauge with: none of them burns at the temperature of a workshop. */
export const gaugeLiquids: readonly Liquid[] = [
  {
    id: 'water',
    name: 'water',
    aliases: ['pure water', 'distilled water', 'H2O'],
    density: { kind: 'water' },
    range: waterLimit,
    hazards: [],
    hazardWords: 'Freezes at 0 °C; an engine that swallows it can break.',
    sourceId: 'tanaka',
  },
  {
    id: 'glycol-solution',
    name: 'coolant (ethylene glycol in water)',
    aliases: ['ethylene glycol solution', 'coolant', 'antifreeze'],
    density: { kind: 'glycol-solution' },
    range: glycolLimit,
    hazards: ['poisonous'],
    hazardWords: sweetPoison,
    sourceId: 'ashrae-glycol',
  },
  oil('sae-10w', 'SAE 10W oil', 870, ['SAE 10W'], 'fluid-table'),
  oil('sae-10w30', 'SAE 10W30 oil', 876, ['SAE 10W30'], 'fluid-table'),
  oil('sae-30w', 'SAE 30W oil', 891, ['SAE 30W', 'SAE 30', 'SAE 30 oil'], 'fluid-table'),
  oil('sae-50w', 'SAE 50W oil', 902, ['SAE 50W', 'SAE 50', 'SAE 50 oil'], 'fluid-table'),
  oil('light-mineral-oil', 'light mineral oil', 845, ['mineral oil'], 'liquids-memory'),
  expandingLiquid({
    id: 'glycerin',
    name: 'glycerin',
    aliases: ['glycerine', 'glycerol'],
    kgPerM3At20: 1260,
    expansionPerK: 5.0e-4,
    expansionSourceId: 'expansion-table',
    hazards: [],
    hazardWords: 'Thick: the level takes long to settle.',
    sourceId: 'fluid-table',
  }),
  expandingLiquid({
    id: 'ethylene-glycol',
    name: 'ethylene glycol, neat',
    aliases: ['ethylene glycol'],
    kgPerM3At20: 1117,
    expansionPerK: 5.7e-4,
    expansionSourceId: 'expansion-table',
    hazards: ['poisonous'],
    hazardWords: sweetPoison,
    sourceId: 'fluid-table',
  }),
  expandingLiquid({
    id: 'seawater',
    name: 'sea water',
    aliases: ['sea water 30 per mille', 'salt water'],
    kgPerM3At20: 1025,
    expansionPerK: 2.6e-4,
    expansionSourceId: 'liquids-memory',
    hazards: [],
    hazardWords: 'Leaves salt wherever it dries.',
    sourceId: 'fluid-table',
  }),
];
