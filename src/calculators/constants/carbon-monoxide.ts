import { carbonMonoxideGPerMol } from '../carbon-monoxide-concentration.ts';
import { whoCarboxyhaemoglobinPercent } from '../carbon-monoxide-limits.ts';
import { bodyKelvins, oxygenFallMmHg, oxygenShare, standardMmHg } from '../cfk-at-pressure.ts';
import { cfkConstants } from '../coburn-forster-kane-constants.ts';
import { describeConstants } from './constant.ts';
import type { ConstantGroup } from './constant.ts';

/** Published limits and alarm points stand in a table of the page on exhaust gas, each with its own source. */
export const carbonMonoxideConstants: ConstantGroup = {
  title: 'Carbon monoxide',
  constants: [
    ...describeConstants(
      { carbonMonoxideGPerMol, bodyKelvins, standardMmHg, oxygenShare, oxygenFallMmHg, whoCarboxyhaemoglobinPercent },
      {
        carbonMonoxideGPerMol: ['g/mol', 'molar mass of carbon monoxide', 'measured', 'atomic-weights'],
        bodyKelvins: ['K', 'temperature of the body', 'conventional', 'cohb-code'],
        standardMmHg: ['mmHg', 'pressure of a dry volume at its standard state', 'conventional', 'cohb-code'],
        oxygenShare: ['1', 'oxygen in dry air', 'measured', 'cohb-code'],
        oxygenFallMmHg: ['mmHg', 'how far its pressure falls to the capillaries', 'measured', 'cohb-code'],
        whoCarboxyhaemoglobinPercent: ['% COHb', 'what the guidelines of the WHO are made for', 'conventional', 'who-2000'],
      },
    ),
    ...Object.entries(cfkConstants).map(([name, { value, unit, name: what, sourceId }]) => ({
      name: `cfkConstants.${name}`,
      value,
      unit,
      what,
      origin: 'measured' as const,
      source: sourceId,
    })),
  ],
}; // prettier-ignore
