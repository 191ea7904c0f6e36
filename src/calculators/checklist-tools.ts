import { line } from './checklist-block.ts';
import type { ChecklistBlock, ChecklistLine } from './checklist-block.ts';
import type { Generation } from './linkage.ts';

const handTools: Readonly<Record<Generation, readonly ChecklistLine[]>> = {
  'separate-cables': [
    line('spanner', 'Spanner for the lock nuts', 'cranked'),
    line('grip', 'Friction screw, or a helper', 'holds the grip'),
    line('drills', 'Two drill shanks of one size', 'show equal gaps'),
  ],
  'all-adjustable': [line('spanner', 'Spanner for the lock nuts', 'cranked')],
  'fixed-reference': [line('spanner', 'Spanner for the lock nuts', 'cranked')],
  'paired-screws': [line('spanner', 'Spanner for the lock nuts', 'cranked')],
  'bypass-screws': [
    line('cleaner', 'Cleaner and cloth', 'for cold bores only'),
    line('reader', 'Reader of the fault memory', 'if the manual asks'),
  ],
};

/** What is laid out before the first line of the list (common practice). */
export const blocksOfTools = (
  generation: Generation,
  carburettors: number,
): readonly [ChecklistBlock, ChecklistBlock, ChecklistBlock] => [
  {
    id: 'gauge',
    heading: 'Gauge and hoses',
    parts: [
      {
        lines: [
          line('gauge', 'Vacuum gauge', 'rests at zero'),
          line('hoses', `Hoses, ${carburettors}`, 'one length, one bore, no cracks'),
          line('adapters', `Adapters, ${carburettors}`, 'fit the take-offs'),
          line('caps', `Caps, ${carburettors}`, 'not cracked'),
          line('selector', 'Selector', 'shuts what it does not read'),
          line('tap', 'Damping tap', 'turns finely'),
          line('vent', 'Vent', 'opens with one finger'),
          line('tachometer', 'Tachometer', 'read to about 50 rpm'),
        ],
      },
    ],
  },
  {
    id: 'hand',
    heading: 'In the hand',
    parts: [
      {
        lines: [
          line('driver', 'Screwdriver', 'fits the screws, long'),
          ...handTools[generation],
          line('feelers', 'Feeler gauges', 'for the valve clearance'),
          line('lamp', 'Lamp and mirror', 'reach the screws'),
          line('gloves', 'Gloves', 'for hot parts'),
          line('ears', 'Ear protection', 'for everybody near'),
        ],
      },
    ],
  },
  {
    id: 'around',
    heading: 'Around the engine',
    parts: [
      {
        lines: [
          line('place', 'Place', 'outdoors, or extractor on the pipe'),
          line('extinguisher', 'Extinguisher', 'for liquid fires, in reach'),
          line('fan', 'Fan', 'as large as you can get'),
          line('stand', 'Stand and strap', 'level, firm'),
          line('tank', 'Auxiliary tank', 'high up, cannot fall'),
          line('manual', 'Service manual', 'open at the page'),
          line('paper', 'This list, a pencil', 'dry'),
          line('telephone', 'Telephone', 'charged, this site saved'),
        ],
      },
    ],
  },
];
