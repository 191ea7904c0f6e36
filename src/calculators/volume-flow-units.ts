import { inchesPerFoot, metresPerInch, secondsPerHour, secondsPerMinute } from './exact-definitions.ts';
import { siBrochure, sp811, unitEntry } from './measure-unit-entry.ts';
import type { MeasureFamily } from './measure-unit.ts';

/** Volume flows, in cubic metres per second. */
export const volumeFlows: MeasureFamily = {
  name: 'volume flow',
  siUnit: 'm³/s',
  limit: { min: 0 },
  units: [
    unitEntry('L/min', 'litres per minute', 1e-3 / secondsPerMinute, '0.001 m³ / 60 s', 'lpm, litre per minute, liters per minute, ltr/min'),
    unitEntry('L/s', 'litres per second', 1e-3, '0.001 m³ / 1 s', 'litre per second, liters per second, L/sec'),
    unitEntry('m3/h', 'cubic metres per hour', 1 / secondsPerHour, '1 m³ / 3600 s', 'cubic meters per hour, cu m/h, m3/hr, cmh', siBrochure, 'm³/h'),
    unitEntry('m3/s', 'cubic metres per second', 1, 'the SI unit', 'cubic meters per second, cu m/s, m3/sec', siBrochure, 'm³/s'),
    unitEntry('ft3/min', 'cubic feet per minute', (inchesPerFoot * metresPerInch) ** 3 / secondsPerMinute, '(12 × 0.0254 m)³ / 60 s', 'cfm, cu ft/min, cubic foot per minute', sp811, 'ft³/min'),
  ],
}; // prettier-ignore
