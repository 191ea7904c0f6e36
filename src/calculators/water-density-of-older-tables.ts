import { succeed } from './result.ts';
import type { Result } from './result.ts';
import { waterDensityKell } from './water-density-kell.ts';

/**
 * Measured: cubic centimetres in the millilitre of 1901, the volume of a gram of water at its densest. Source: General
 * Conference on Weights and Measures, resolution 3 of 1901, repealed by resolution 6 of 1964; the figure from memory.
 */
export const cubicCentimetresPerOlderMillilitre = 1.000028;

/**
 * Density of water as tables before 1964 print it, in grams per millilitre of that time: Kell's formula in the older
 * unit; it gives printed values from 0 °C to 100 °C within 1.1 units of their fifth decimal.
 * Problems: those of `waterDensityKell`.
 */
export function waterDensityOfOlderTables(celsius: number): Result<number> {
  const kgPerM3 = waterDensityKell(celsius);
  return kgPerM3.ok ? succeed((kgPerM3.value / 1000) * cubicCentimetresPerOlderMillilitre) : kgPerM3;
}
