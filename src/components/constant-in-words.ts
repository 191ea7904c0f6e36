import { constantGroups, formatExact } from '../calculators/index.ts';

/** A constant of the package with its unit, by its name in the list of constants: `0.1 turns`, `5 mmHg`, `12`. */
export function constantInWords(name: string): string {
  const constant = constantGroups.flatMap(({ constants }) => constants).find((each) => each.name === name);
  if (typeof constant?.value !== 'number') throw new Error(`no single constant is called “${name}”`);
  const { unit, value } = constant;
  return unit === '1'
    ? formatExact(value)
    : `${formatExact(value)}\u00a0${value === 1 ? unit.replace(/s$/u, '') : unit}`;
}
