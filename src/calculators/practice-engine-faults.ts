import type { PracticeFault } from './practice/engine.ts';

/** What can be named as wrong: a fault, or nothing but the balance. */
export type NamedFault = PracticeFault | 'none';

/** Each fault by a name, how it shows, and what cures it in life. */
export const faultWords: Readonly<Record<NamedFault, { readonly name: string; readonly shows: string }>> = {
  none: {
    name: 'Nothing: it is only the balance',
    shows: 'Every control does what it should.',
  },
  'air-leak': {
    name: 'Air leaks in behind one throttle',
    shows:
      'One cylinder reads low at every speed, and lowest at idle, where the leak is a large share of its air. A new rubber or a tight clip cures that.',
  },
  'trapped-depression': {
    name: 'The vent does nothing',
    shows:
      'With the selector shut the needle stays where it stood, however long you vent: the depression is trapped in the line. Clear the vent first.',
  },
  'shut-tap': {
    name: 'The damping tap is shut over half of its way',
    shows:
      'The needle is dead while the tap looks open, and comes alive only far above the usual place. Standing quite still it shows no reading.',
  },
  'slipped-nut': {
    name: 'One lock nut drags its screw far',
    shows:
      'Its carburettor reads right with the nut loose, and something else each time that it is nipped, held or not. The nut or its face is worn.',
  },
  'end-of-thread': {
    name: 'One screw is at the end of its thread',
    shows:
      'It stops after a tenth of a turn in the direction that is needed. Bring the others to it, or re-centre it.',
  },
  'sticking-cable': {
    name: 'The throttle cable sticks',
    shows:
      'A small movement of the hand changes nothing. Going up and coming back, the same place gives two speeds. Free the cable first.',
  },
};

/** Whether what was named is what is wrong, in a sentence. It does not give the answer away. */
export function describeNaming(
  named: NamedFault,
  fault: PracticeFault | null,
): { readonly right: boolean; readonly sentence: string } {
  const right = named === (fault ?? 'none');
  return {
    right,
    sentence: right
      ? `Right. ${faultWords[named].shows}`
      : 'No, that is not it. Try the controls one by one.',
  };
}
