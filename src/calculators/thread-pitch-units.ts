import { metresPerInch } from './exact-definitions.ts';
import { sp811, unitEntry } from './measure-unit-entry.ts';
import type { MeasureFamily } from './measure-unit.ts';

/** Thread pitches, in metres. Threads per inch count the other way: the finer the thread, the more of them. */
export const threadPitches: MeasureFamily = {
  name: 'thread pitch',
  siUnit: 'm',
  limit: { above: 0 },
  units: [
    unitEntry(
      'mm',
      'millimetres from thread to thread',
      1e-3,
      '0.001 m',
      'millimetre, millimetres, millimeter, millimeters',
    ),
    unitEntry(
      'tpi',
      'threads per inch',
      { kind: 'reciprocal', factor: metresPerInch },
      '0.0254 m / threads',
      't.p.i., threads/inch, threads/in, thread per inch, per inch',
      sp811,
      'TPI',
    ),
    unitEntry('in', 'inches from thread to thread', metresPerInch, '0.0254 m', 'inch, inches', sp811),
  ],
};
