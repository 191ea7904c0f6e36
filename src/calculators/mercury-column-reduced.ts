import { conventionalMercuryDensity } from './exact-definitions.ts';
import { mercuryDensity } from './mercury-density.ts';
import { succeed } from './result.ts';
import type { Result } from './result.ts';

/**
 * The height of a mercury column reduced to 0 °C: what the same pressure would stand high in mercury of the
 * conventional density, h ρ(t) / 13595.1. In the unit of `height`. The column alone: a scale that grows with the
 * temperature (brass by 1.84 × 10⁻⁵ per °C, from memory) takes a tenth of this back, and gravity is taken as standard.
 * Problems: those of `mercuryDensity`.
 * Source: ISO 80000-4:2019, annex, for the conventional column.
 */
export function mercuryColumnReduced(height: number, celsius: number): Result<number> {
  const density = mercuryDensity(celsius);
  return density.ok ? succeed((height * density.value) / conventionalMercuryDensity) : density;
}
