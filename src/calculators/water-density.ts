import type { Result } from './result.ts';
import { kellLimit, waterDensityKell } from './water-density-kell.ts';
import { tanakaLimit, waterDensityTanaka } from './water-density-tanaka.ts';

/** Temperatures at which water is a liquid under the open air, in degrees Celsius. */
export const waterLimit = { min: 0, max: 100 } as const;

/**
 * Density of pure water in kg/m³: Tanaka's formula where it holds, Kell's up to 100 °C; they meet within 0.001 kg/m³.
 * Problems: `not-finite`, `out-of-range`.
 */
export const waterDensity = (celsius: number): Result<number> =>
  celsius > tanakaLimit.max && celsius <= waterLimit.max
    ? waterDensityKell(celsius)
    : celsius > waterLimit.max && celsius <= kellLimit.max
      ? { ok: false, problem: { kind: 'out-of-range', field: 'celsius', value: celsius, limit: waterLimit } }
      : waterDensityTanaka(celsius);
