import { screwsOf } from './linkage.ts';
import type { Generation, LinkageOptions } from './linkage.ts';
import { pascalsOf, pressureUnit } from './pressure-units.ts';
import type { SessionEvent, SetUp } from './protocol.ts';
import { valueOfChecked } from './value-of-checked.ts';

/** A whole session on an invented engine: what was set up, and every reading and turn up to “within”. */
export type ExampleSession = {
  readonly generation: Generation;
  readonly fixed?: number;
  readonly setUp: SetUp;
  readonly events: readonly SessionEvent[];
};

const fromMmHg = (value: number): number => pascalsOf(value, pressureUnit('mmHg'));

const read = (carburettor: number, depressionMmHg: number): SessionEvent => ({
  kind: 'reading',
  carburettor,
  depressionPa: fromMmHg(depressionMmHg),
});

/** A turn in minutes of a clock face, 60 to a turn; positive opens. */
const turn = (screw: number, minutes: number): SessionEvent => ({ kind: 'turn', screw, turns: minutes / 60 });

const example = (
  generation: Generation,
  carburettors: number,
  events: readonly SessionEvent[],
  options: LinkageOptions = {},
): ExampleSession => {
  const bare = valueOfChecked(screwsOf(generation, carburettors, options));
  const screws = bare.map(({ moves }) => ({ moves, turnsLeft: { closing: 1.5, opening: 1.5 } }));
  return {
    generation,
    ...(options.fixed === undefined ? {} : { fixed: options.fixed }),
    setUp: {
      carburettors,
      screws,
      tolerancePa: fromMmHg(10),
      gauge: { resolutionPa: fromMmHg(5), flutterPa: fromMmHg(3) },
      targetRpm: 2100,
    },
    events,
  };
};

/** One invented session for each generation. The readings come from simulated engines, not from real ones. */
export const exampleSessions: Readonly<Record<Generation, ExampleSession>> = {
  'separate-cables': example('separate-cables', 2, [
    ...[read(1, 355), read(2, 285), turn(2, -15), read(2, 305), turn(2, -11), read(2, 320), read(1, 315)],
  ]),
  'all-adjustable': example('all-adjustable', 4, [
    ...[read(1, 310), read(2, 295), read(3, 345), read(4, 365), turn(2, -15), read(2, 315)],
    ...[turn(1, -15), read(1, 325), turn(2, -11), read(2, 325), turn(4, 9), read(4, 330), turn(1, -3)],
    ...[read(1, 330)],
  ]),
  'fixed-reference': example(
    'fixed-reference',
    4,
    [
      ...[read(1, 275), read(2, 295), read(3, 245), read(4, 315), turn(2, -15), read(3, 270), turn(1, -8)],
      ...[read(1, 280), turn(3, 8), read(4, 285), turn(2, -7), read(3, 285), read(2, 280), read(4, 280)],
      ...[read(1, 285)],
    ],
    { fixed: 2 },
  ),
  'paired-screws': example('paired-screws', 4, [
    ...[read(1, 195), read(2, 245), read(3, 260), read(4, 245), turn(1, -15), read(1, 215), turn(1, -13)],
    ...[read(1, 230), turn(2, -8), read(4, 245), turn(3, 8), read(3, 235), read(1, 240), turn(3, -2)],
    ...[read(2, 235), read(4, 240)],
  ]),
  'bypass-screws': example(
    'bypass-screws',
    4,
    [
      ...[read(1, 230), read(2, 230), read(3, 270), read(4, 200), turn(2, 15), read(3, 250), turn(3, -15)],
      ...[read(4, 215), turn(2, 11), read(3, 240), turn(3, -14), read(4, 235), read(1, 230), read(2, 240)],
      ...[turn(1, 4), read(3, 235)],
    ],
    { fixed: 1 },
  ),
};
