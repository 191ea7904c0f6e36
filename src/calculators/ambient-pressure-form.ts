import type { FormFields } from './calculator-form.ts';
import { lengths } from './length-units.ts';
import type { MeasureLimit } from './measure-limit.ts';
import type { Limit } from './problem.ts';
import { ambientLimit } from './parse-ambient.ts';

const text = (initially: string) => ({ kind: 'text', initially }) as const;
export const ambientSources = ['altitude', 'setting', 'barometer'] as const;
export const heightKinds = ['geometric', 'geopotential'] as const;
export const otherPlaceKinds = ['altitude', 'pressure'] as const;

/**
 * The fields of the page “Ambient pressure”. Their first values are the worked example, invented: a workshop at 500 m, and
 * a reading of 250 mmHg that was taken last year at the sea.
 */
export const ambientPressureFields = {
  from: { kind: 'choice', initially: 'altitude', choices: ambientSources },
  altitude: text('500 m'),
  altitudeIs: { kind: 'choice', initially: 'geometric', choices: heightKinds },
  barometer: text('955 hPa'),
  setting: text('1013 hPa'),
  reading: text('250 mmHg'),
  otherPlace: { kind: 'choice', initially: 'altitude', choices: otherPlaceKinds },
  otherAltitude: text('0 m'),
  otherPressure: text('1013 hPa'),
} as const satisfies FormFields<string>;

export type AmbientPressureField = keyof typeof ambientPressureFields;

/**
 * Places on the ground, from the shore of the Dead Sea up: from memory, with room to spare. Settings: the World
 * Meteorological Organization has 1083.8 hPa as the highest sea-level pressure below 750 m, and 870 hPa as the lowest (from memory).
 */
export const ambientPressureLimits = {
  altitude: { family: lengths, unitId: 'm', min: -500, max: 9000 },
  settingPa: { min: 85_000, max: 110_000 },
  barometerPa: ambientLimit,
} as const satisfies Record<string, MeasureLimit | Limit>;
