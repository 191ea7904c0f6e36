import {
  feetPerMile,
  inchesPerFoot,
  metresPerInch,
  metresPerNauticalMile,
  secondsPerHour,
} from './exact-definitions.ts';
import { sp811, unitEntry } from './measure-unit-entry.ts';
import type { MeasureFamily } from './measure-unit.ts';

const metresPerFoot = inchesPerFoot * metresPerInch;

/** Speeds, in metres per second. */
export const speeds: MeasureFamily = {
  name: 'speed',
  siUnit: 'm/s',
  units: [
    unitEntry('m/s', 'metres per second', 1, 'the SI unit', 'mps, m/sec, meters per second, metre per second'),
    unitEntry('km/h', 'kilometres per hour', 1000 / secondsPerHour, '1000 m / 3600 s', 'kmh, kph, kmph, km/hr, kilometers per hour, kilometre per hour'),
    unitEntry('mph', 'miles per hour', (feetPerMile * metresPerFoot) / secondsPerHour, '5280 × 12 × 0.0254 m / 3600 s', 'mi/h, mile/h, miles/h, mile per hour', sp811),
    unitEntry('ft/s', 'feet per second', metresPerFoot, '12 × 0.0254 m / 1 s', 'fps, ft/sec, foot per second', sp811),
    unitEntry('kn', 'knots', metresPerNauticalMile / secondsPerHour, '1852 m / 3600 s', 'knot, kt, kts, nautical miles per hour', sp811),
  ],
}; // prettier-ignore
