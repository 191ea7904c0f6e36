import { expandingLiquid } from './expanding-liquid.ts';
import type { Liquid, LiquidHazard } from './liquid.ts';
import { mercuryLimit } from './mercury-density.ts';

const burning = (
  id: string,
  name: string,
  kgPerM3At20: number,
  expansionPerK: number,
  hazardWords: string,
  aliases: readonly string[],
  hazards: readonly LiquidHazard[] = ['flammable'],
): Liquid =>
  expandingLiquid({
    id,
    name,
    aliases,
    kgPerM3At20,
    expansionPerK,
    expansionSourceId: 'expansion-table',
    hazards,
    hazardWords,
    sourceId: 'fluid-table',
  });

/** Liquids that older books fill in: computed for those who find such a gauge, never recommended. */
export const refusedLiquids: readonly Liquid[] = [
  {
    id: 'mercury',
    name: 'mercury',
    aliases: ['quicksilver', 'Hg'],
    density: { kind: 'mercury' },
    range: mercuryLimit,
    hazards: ['mercury', 'poisonous'],
    hazardWords: 'Its vapour poisons nerves, lungs and kidneys, and a spill is never quite recovered.',
    sourceId: 'beattie',
  },
  burning(
    'ethanol',
    'ethanol',
    789,
    1.09e-3,
    'Its vapour takes fire from a spark at 13 °C, and the flame is hard to see by day.',
    ['ethyl alcohol', 'alcohol'],
  ),
  burning(
    'methanol',
    'methanol',
    791,
    1.18e-3,
    'Its vapour takes fire from a spark at 11 °C with a flame that cannot be seen by day, and it blinds who drinks it.',
    ['methyl alcohol'],
    ['flammable', 'poisonous'],
  ),
  expandingLiquid({
    id: 'isopropanol',
    name: 'isopropanol',
    aliases: ['isopropyl alcohol', '2-propanol', 'propan-2-ol', 'IPA'],
    kgPerM3At20: 785.5,
    // From 785.05 kg/m³ at 20 °C and 780.84 kg/m³ at 25 °C, as quoted beside it.
    expansionPerK: 1.0754e-3,
    expansionSourceId: 'isopropanol',
    hazards: ['flammable'],
    hazardWords: 'Its vapour takes fire from a spark at 12 °C.',
    sourceId: 'isopropanol',
  }),
  burning(
    'gasoline',
    'petrol',
    680,
    9.5e-4,
    'Its vapour takes fire at −43 °C and creeps along the floor to any flame.',
    ['gasoline'],
  ),
  burning(
    'kerosene',
    'kerosene',
    804,
    1.0e-3,
    'Its vapour takes fire from 38 °C on: cooler than the engine beside it.',
    ['kerosine', 'lamp oil', 'paraffin oil'],
  ),
  burning(
    'benzene',
    'benzene',
    881,
    1.25e-3,
    'Its vapour takes fire at −11 °C, and it causes cancer.',
    [],
    ['flammable', 'poisonous'],
  ),
  expandingLiquid({
    id: 'carbon-tetrachloride',
    name: 'carbon tetrachloride',
    aliases: ['tetrachloromethane', 'CCl4'],
    kgPerM3At20: 1590,
    expansionPerK: 1.22e-3,
    expansionSourceId: 'liquids-memory',
    hazards: ['poisonous'],
    hazardWords: 'Its vapour poisons the liver, and a flame or a hot engine turns it into a war gas.',
    sourceId: 'fluid-table',
  }),
];
