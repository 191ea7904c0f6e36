import { line } from './checklist-block.ts';
import type { ChecklistBlock, ChecklistLine } from './checklist-block.ts';
import type { Generation } from './linkage.ts';
import { numberInWords } from './number-in-words.ts';

/** For every engine. The exhaust comes first, because it kills; common practice. */
const always = [
  line('exhaust', 'Exhaust', 'outdoors, or extractor on the pipe'),
  line('fire', 'Fuel and fire', 'no leak, extinguisher here'),
  line('clear', 'Sleeves, hair', 'clear of fan, chain, belt'),
  line('stand', 'Stand, neutral', 'level, wheel off the ground'),
  line('faults', 'Valves, spark, compression', 'in order'),
  line('hoses', 'Hoses, clips, caps', 'tight, no cracks, off pipes'),
  line('fan', 'Cooling fan', 'in place'),
];

const cables = line('cables', 'Throttle cables', 'play at either lock');
const threadOfAll = line('thread', 'Thread left, idle screw too', 'written in below');

/** What each kind of linkage adds (common practice; one turn in hand on the idle-speed screw: from memory). */
const ofGeneration: Readonly<Record<Generation, readonly ChecklistLine[]>> = {
  'separate-cables': [
    line('slack', 'Every cable', 'slack, slide on its stop'),
    line('slides', 'Slides', 'fall by themselves'),
    line('thread', 'Thread left, every screw', 'written in below'),
  ],
  'all-adjustable': [
    cables,
    line('thread', 'Thread left, each adjuster', 'written in below'),
    line('idle-screw', 'Idle-speed screw', 'a turn left each way'),
  ],
  'fixed-reference': [cables, line('fixed', 'Link without adjuster', 'number written above'), threadOfAll],
  'paired-screws': [cables, line('tree', 'What each screw moves', 'tried by hand'), threadOfAll],
  'bypass-screws': [
    line('clean', 'Bores, plate edges', 'clean'),
    line('fixed', 'Screw left alone', 'number written above'),
    line('thread', 'Turns open, each screw', 'written in below'),
  ],
};

/** What is looked at while the engine is cold and off. */
export function blockBefore(generation: Generation): ChecklistBlock {
  const lines = [...always, ...ofGeneration[generation]];
  return {
    id: 'before',
    heading: 'Before, engine cold',
    parts: [
      { lines, hold: `Hold. All ${numberInWords(lines.length)} ticked, or the engine is not started.` },
    ],
  };
}
