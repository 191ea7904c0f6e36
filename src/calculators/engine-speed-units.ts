import { secondsPerMinute } from './exact-definitions.ts';
import { unitEntry } from './measure-unit-entry.ts';
import type { MeasureFamily } from './measure-unit.ts';

/** Speeds of rotation, in revolutions per second. Hertz are revolutions here, not firings. */
export const engineSpeeds: MeasureFamily = {
  name: 'engine speed',
  siUnit: '1/s',
  limit: { min: 0 },
  units: [
    unitEntry('rpm', 'revolutions per minute', 1 / secondsPerMinute, '1 / 60 s', 'r/min, rev/min, revs/min, revs, revolution per minute, U/min, min-1'),
    unitEntry('Hz', 'hertz, revolutions per second', 1, 'one revolution a second: the SI unit', 'hertz, r/s, rev/s, rps, revolutions per second, s-1'),
    unitEntry('rad/s', 'radians per second', 1 / (2 * Math.PI), '1 / 2π of a revolution a second', 'radian per second, rad/sec, rad s-1'),
  ],
}; // prettier-ignore
