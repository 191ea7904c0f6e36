import { constantGroups, formatChance, formatExact, formatPressure } from '../calculators/index.ts';

function constantCalled(name: string): { unit: string; value: number } {
  const constant = constantGroups.flatMap(({ constants }) => constants).find((each) => each.name === name);
  if (typeof constant?.value !== 'number') throw new Error(`no single constant is called “${name}”`);
  return { unit: constant.unit, value: constant.value };
}

/** A constant of the package with its unit, by its name in the list of constants: `0.1 turns`, `5 mmHg`, `12`. */
export function constantInWords(name: string): string {
  const { unit, value } = constantCalled(name);
  return unit === '1' ? formatExact(value) : `${formatExact(value)}\u00a0${unit}`;
}

/** A chance among the constants, from 0 to 1, as a whole per cent: `95 %`. */
export const chanceInWords = (name: string): string => formatChance(constantCalled(name).value);

/** A pressure among the constants in another unit: `140 mmHg`. */
export const pressureInWords = (name: string, unitId: string): string =>
  formatPressure(Math.abs(constantValue(name)), unitId);

/** A constant as a number, for the tables that compute with it. */
export const constantValue = (name: string): number => constantCalled(name).value;
