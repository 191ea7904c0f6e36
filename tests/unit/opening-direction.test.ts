import { describe, expect, test } from 'vitest';
import { exampleSessions } from '../../src/calculators/example-sessions.ts';
import {
  clockwiseTurns,
  handDirection,
  opposite,
  reversedTurn,
  settleDirection,
  type BenchSetUp,
  type SessionEvent,
} from '../../src/calculators/index.ts';
import { mmHg } from '../engine/invented.ts';

describe('handDirection(opens, turns) and clockwiseTurns(opens, turns)', () => {
  test.each([
    ['clockwise', 0.25, 'clockwise', 0.25],
    ['clockwise', -0.25, 'anticlockwise', -0.25],
    ['anticlockwise', 0.25, 'anticlockwise', -0.25],
    ['anticlockwise', -0.25, 'clockwise', 0.25],
    // Not known: any direction would do for the first small turn, but always the same.
    ['unknown', 0.125, 'anticlockwise', -0.125],
    ['unknown', -0.125, 'clockwise', 0.125],
  ] as const)('a screw that opens %s, %d turn: %s', (opens, turns, direction, clockwise) => {
    expect(handDirection(opens, turns)).toBe(direction);
    expect(clockwiseTurns(opens, turns)).toBe(clockwise);
  });

  test('opposite(direction)', () => {
    expect(opposite('clockwise')).toBe('anticlockwise');
    expect(opposite('anticlockwise')).toBe('clockwise');
  });

  test('reversedTurn(turn) keeps everything but the sign', () => {
    const turn = { kind: 'turn', screw: 2, turns: 0.25, minute: 3, typed: '1/4' } as const;
    expect(reversedTurn(turn)).toEqual({ ...turn, turns: -0.25 });
    expect(reversedTurn(reversedTurn(turn))).toEqual(turn);
  });
});

describe('settleDirection(setUp, events)', () => {
  const { setUp: bare } = exampleSessions['all-adjustable'];
  const setUp: BenchSetUp = { ...bare, opens: bare.screws.map(() => 'unknown') };
  const read = (carburettor: number, depressionMmHg: number): SessionEvent => ({
    kind: 'reading',
    carburettor,
    depressionPa: depressionMmHg * mmHg,
  });
  const first = [read(1, 300), read(2, 300), read(3, 300), read(4, 260)];
  const after = (depressionMmHg: number, of: BenchSetUp = setUp) =>
    settleDirection(of, [...first, { kind: 'turn', screw: 4, turns: -0.125 }, read(4, depressionMmHg)]);

  test('the depression rose as a closing screw makes it: opens anticlockwise, as was taken', () => {
    expect(after(275)).toEqual({
      screw: 4,
      opens: 'anticlockwise',
      turnEvent: 4,
      reversed: false,
      setUp: { ...setUp, opens: ['unknown', 'unknown', 'unknown', 'anticlockwise'] },
    });
  });

  test('it fell: opens clockwise, and the turn was the other way round', () => {
    expect(after(245)).toMatchObject({
      opens: 'clockwise',
      turnEvent: 4,
      reversed: true,
      setUp: { opens: ['unknown', 'unknown', 'unknown', 'clockwise'] },
    });
  });

  test('too little to tell, no turn, or a screw that is known: nothing', () => {
    expect(after(262)).toBeNull();
    expect(settleDirection(setUp, first)).toBeNull();
    expect(after(245, { ...setUp, opens: ['unknown', 'unknown', 'unknown', 'clockwise'] })).toBeNull();
  });
});
