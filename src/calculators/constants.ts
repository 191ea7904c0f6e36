import { adviceConstants } from './constants/advice.ts';
import { airConstants, columnConstants, liquidConstants } from './constants/air-and-liquids.ts';
import { carbonMonoxideConstants } from './constants/carbon-monoxide.ts';
import type { ConstantGroup } from './constants/constant.ts';
import { definitionConstants } from './constants/definitions.ts';
import { engineConstants } from './constants/engine.ts';
import { practiceConstants } from './constants/practice-engine.ts';
import { statisticsConstants } from './constants/statistics.ts';

/**
 * Every constant that the package computes with, by subject. The values are those of the code itself, imported from
 * where they are used; tests/architecture says so when one is missing.
 */
export const constantGroups: readonly ConstantGroup[] = [
  definitionConstants,
  airConstants,
  liquidConstants,
  columnConstants,
  engineConstants,
  carbonMonoxideConstants,
  statisticsConstants,
  adviceConstants,
  practiceConstants,
];
