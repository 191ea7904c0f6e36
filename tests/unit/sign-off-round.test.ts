import { describe, expect, test } from 'vitest';
import { exampleSessions } from '../../src/calculators/example-sessions.ts';
import { signOffRound } from '../../src/calculators/sign-off-round.ts';
import type { SessionEvent } from '../../src/calculators/index.ts';
import { mmHg } from '../engine/invented.ts';

const setUp = { ...exampleSessions['separate-cables'].setUp, carburettors: 3 };

const read = (carburettor: number, depressionMmHg: number): SessionEvent => ({
  kind: 'reading',
  carburettor,
  depressionPa: depressionMmHg * mmHg,
});
const turn: SessionEvent = { kind: 'turn', screw: 1, turns: 0.1 };

describe('signOffRound(setUp, events, fromEvent)', () => {
  test('is under way until every carburettor has been read, and names the next', () => {
    expect(signOffRound(setUp, [], 0)).toEqual({ kind: 'under-way', carburettor: 1 });
    expect(signOffRound(setUp, [read(1, 300)], 0)).toEqual({ kind: 'under-way', carburettor: 2 });
    expect(signOffRound(setUp, [read(3, 300), read(1, 300)], 0)).toEqual({
      kind: 'under-way',
      carburettor: 2,
    });
  });

  test('counts from its first event only', () => {
    const events = [read(1, 300), read(2, 300), read(3, 300)];
    expect(signOffRound(setUp, events, 0).kind).toBe('complete');
    expect(signOffRound(setUp, events, 1)).toEqual({ kind: 'under-way', carburettor: 1 });
    expect(signOffRound(setUp, events, 3)).toEqual({ kind: 'under-way', carburettor: 1 });
    expect(signOffRound(setUp, [turn, ...events], 1).kind).toBe('complete');
  });

  test('is broken by a turn, wherever it stands', () => {
    const events = [read(1, 300), turn, read(2, 300), read(3, 300)];
    expect(signOffRound(setUp, events, 0)).toEqual({ kind: 'broken' });
    expect(signOffRound(setUp, [read(1, 300), turn], 0)).toEqual({ kind: 'broken' });
  });

  // The tolerance is 10 mmHg.
  test.each([
    [300, 305, 309, true],
    [300, 305, 310, true],
    [300, 305, 310.001, false],
    [300, 250, 300, false],
  ])('complete with %d, %d, %d mmHg: within is %s', (one, two, three, within) => {
    const round = signOffRound(setUp, [read(1, one), read(2, two), read(3, three)], 0);
    if (round.kind !== 'complete') throw new Error(round.kind);
    expect(round.within).toBe(within);
    const [low, high] = [Math.min(one, two, three), Math.max(one, two, three)];
    expect(round.spreadPa / mmHg).toBeCloseTo(high - low, 9);
  });

  test('of several readings of one the mean counts', () => {
    const once = [read(1, 300), read(2, 302), read(3, 312)];
    expect(signOffRound(setUp, once, 0)).toMatchObject({ within: false, furthest: 1 });
    expect(signOffRound(setUp, [...once, read(3, 306)], 0)).toMatchObject({ within: true });
  });

  test('names the carburettor furthest from the middle of all, the first among equals', () => {
    expect(signOffRound(setUp, [read(1, 310), read(2, 300), read(3, 330)], 0)).toMatchObject({ furthest: 2 });
    expect(signOffRound(setUp, [read(1, 305), read(2, 306), read(3, 330)], 0)).toMatchObject({ furthest: 1 });
  });
});
