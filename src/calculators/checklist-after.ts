import { line } from './checklist-block.ts';
import type { ChecklistBlock, ChecklistLine } from './checklist-block.ts';
import type { Generation } from './linkage.ts';

const idle: Readonly<Record<Generation, ChecklistLine>> = {
  'separate-cables': line('idle-after', 'Idle', 'steady, the same at either lock'),
  'all-adjustable': line('idle-after', 'Idle-speed screw', 'idle set, steady'),
  'fixed-reference': line('idle-after', 'Idle-speed screw', 'idle set, steady'),
  'paired-screws': line('idle-after', 'Idle-speed screw', 'idle set, steady'),
  'bypass-screws': line('idle-after', 'Idle, started again', 'settled, steady'),
};

/** What is looked at when the set is balanced: closing up, then the proof (common practice). */
export const blockAfter = (generation: Generation): ChecklistBlock => ({
  id: 'after',
  heading: 'After',
  parts: [
    {
      lines: [
        idle[generation],
        generation === 'bypass-screws'
          ? line('memory', 'Fault memory', 'read, if the manual asks')
          : line('nuts', 'Lock nuts', 'all tight'),
        line('capped', 'Engine off, take-offs', 'capped, tight'),
        line('fuel', 'Fuel lines, tools', 'back in place, no leak'),
        line('shut', 'Throttle', 'snaps shut, bars at either lock'),
      ],
      hold: 'Hold. The throttle snaps shut and nothing leaks, or nobody rides.',
    },
    {
      lines: [
        line('road', 'Road test', 'pulls cleanly, idle returns'),
        generation === 'bypass-screws'
          ? line('next-day', 'Next day', 'cold start, even idle')
          : line('next-day', 'Next day', 'cold start on full choke'),
      ],
    },
  ],
});
