import { benchDefaults } from './bench-defaults.ts';
import { line } from './checklist-block.ts';
import type { ChecklistBlock, ChecklistLine } from './checklist-block.ts';
import type { Generation } from './linkage.ts';
import { numberInWords } from './number-in-words.ts';

const warm = line('warm', 'Warmed up', '5 to 8 minutes of running'); // common practice
const needle = line('needle', 'Needle', 'damped, it only just moves');
const speed = line('speed', 'Speed', 'as written above, held');
const speedBack = line('speed-back', 'Speed', 'brought back');
const rest = line('rest', 'Rest', `every ${benchDefaults.restAfterMinutes} minutes, engine off`);
const vented = 'vented between each';
const readAgain = 'read again, written in';
const turnedLocked = 'turned, locked, read again';

/** How a bank with screws between its members is levelled; two have one screw, so no order. */
const pairedOrder: Readonly<Record<number, string>> = {
  3: '1 and 3, each to 2',
  4: 'each pair, then pair to pair',
  6: 'each pair, then pair to pair',
};

const numbers = (carburettors: number): string => (carburettors === 2 ? '1 and 2' : `1 to ${carburettors}`);
const all = (carburettors: number): string =>
  carburettors === 2 ? 'both' : `all ${numberInWords(carburettors)}`;

const firstReadings = (carburettors: number): ChecklistLine =>
  line('first', `First readings, ${numbers(carburettors)}`, vented);

/** The cycle of one screw, by the kind of linkage (common practice). */
function linesDuring(generation: Generation, carburettors: number): readonly ChecklistLine[] {
  const first = firstReadings(carburettors);
  switch (generation) {
    case 'separate-cables':
      return [
        warm,
        needle,
        line('idle-readings', `At idle: readings, ${numbers(carburettors)}`, vented),
        line('one', 'One stop screw', turnedLocked),
        line('idle', 'Idle speed', 'all stop screws the same turn'),
        speed,
        line('speed-readings', `At speed: readings, ${numbers(carburettors)}`, vented),
        line('one-cable', 'One cable adjuster', turnedLocked),
        line('play', 'Grip shut', 'play left in every cable'),
        rest,
      ];
    case 'bypass-screws':
      return [
        line('warm', 'Warmed up', '5 to 8 minutes, idle settled'),
        line('stop', 'Sealed stop of the plates', 'left alone'),
        needle,
        line('speed', 'Speed', 'as the manual says, often idle'),
        first,
        line('one', 'One bypass screw', 'turned, idle settled'),
        line('again', 'Same body', readAgain),
        rest,
      ];
    case 'paired-screws':
      return [
        warm,
        needle,
        speed,
        first,
        ...(carburettors === 2
          ? []
          : [line('order', 'Order', pairedOrder[carburettors] ?? 'as the manual groups them')]),
        line('one', 'One screw', 'turned, held, nut nipped'),
        speedBack,
        line('again', 'All that it moves', readAgain),
        rest,
      ];
    case 'all-adjustable':
    case 'fixed-reference':
      return [
        warm,
        needle,
        speed,
        first,
        ...(generation === 'fixed-reference'
          ? [line('reference', 'Reference', 'read before each turn')]
          : []),
        line('one', 'One adjuster', 'turned, held, nut nipped'),
        speedBack,
        line('again', 'Same carburettor', readAgain),
        rest,
      ];
  }
}

/** What is done while the engine runs. */
export function blockDuring(generation: Generation, carburettors: number): ChecklistBlock {
  const lines = linesDuring(generation, carburettors);
  const one = lines.find(({ id }) => id === 'one')?.item;
  const locked = generation === 'bypass-screws' ? '' : ', locked';
  const goal = `${all(carburettors)} read within the tolerance${locked}, twice in a row.`;
  const hold =
    generation === 'separate-cables'
      ? `Hold. Stop screws first, then cables; each until ${goal}`
      : `Hold. Repeat from “${one}” until ${goal}`;
  return { id: 'during', heading: 'During, engine warm', parts: [{ lines, hold }] };
}
