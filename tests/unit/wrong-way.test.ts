import { describe, expect, test } from 'vitest';
import { exampleSessions } from '../../src/calculators/example-sessions.ts';
import { answerToTurn } from '../../src/calculators/index.ts';
import type { SessionEvent } from '../../src/calculators/index.ts';
import { mmHg } from '../engine/invented.ts';

const { setUp } = exampleSessions['all-adjustable'];

const read = (carburettor: number, depressionMmHg: number): SessionEvent => ({
  kind: 'reading',
  carburettor,
  depressionPa: depressionMmHg * mmHg,
});
const turn = (screw: number, turns: number): SessionEvent => ({ kind: 'turn', screw, turns });
const first = [read(1, 300), read(2, 300), read(3, 300), read(4, 260)];

/** What the reading of carburettor 4 says after its screw was closed by a quarter turn, from 260 mmHg. */
const kindAt = (depressionMmHg: number): string =>
  answerToTurn(setUp, [...first, turn(4, -0.25), read(4, depressionMmHg)]).kind;

describe('answerToTurn(setUp, events)', () => {
  // A reading is good to √(3²/3 + 5²/12) = 2.25 mmHg; a difference of two to 3.2, three times that to 9.6.
  test.each([
    [290, 'as-expected'],
    [272, 'as-expected'],
    [268, 'too-small'],
    [260, 'too-small'],
    [252, 'too-small'],
    [248, 'wrong-way'],
    [230, 'wrong-way'],
  ])('closed a quarter turn from 260, it reads %d mmHg: %s', (depressionMmHg, kind) => {
    expect(kindAt(depressionMmHg)).toBe(kind);
  });

  test('tells the turn, the screw, the carburettor, and both changes', () => {
    const answer = answerToTurn(setUp, [...first, turn(4, -0.25), read(4, 230)]);
    if (answer.kind !== 'wrong-way') throw new Error(answer.kind);
    const { expectedChangePa, seenChangePa, ...rest } = answer.wrongWay;
    expect(rest).toEqual({ turnEvent: 4, screw: 4, carburettor: 4 });
    expect(expectedChangePa).toBeGreaterThan(10 * mmHg);
    expect(Math.abs(seenChangePa + 30 * mmHg)).toBeLessThan(0.2 * mmHg);
  });

  test('a screw that opened is asked about where the depression rose', () => {
    expect(answerToTurn(setUp, [...first, turn(4, 0.25), read(4, 300)]).kind).toBe('wrong-way');
    expect(answerToTurn(setUp, [...first, turn(4, 0.25), read(4, 230)]).kind).toBe('as-expected');
  });

  test('a carburettor that the screw does not move answers the other way, as the throttle hand takes back', () => {
    // Closing 4 lets the others open a little: their depression falls.
    expect(answerToTurn(setUp, [...first, turn(4, -0.5), read(1, 285)]).kind).toBe('as-expected');
    expect(answerToTurn(setUp, [...first, turn(4, -0.5), read(1, 315)]).kind).toBe('wrong-way');
  });

  test.each<[string, readonly SessionEvent[]]>([
    ['no event', []],
    ['no turn', first],
    ['no reading after the turn', [...first, turn(4, -0.25)]],
    ['a second reading of the same carburettor', [...first, turn(4, -0.25), read(4, 230), read(4, 231)]],
    ['a carburettor that was not read before the turn', [...first.slice(0, 3), turn(4, -0.25), read(4, 230)]],
  ])('says nothing after %s', (_, events) => {
    expect(answerToTurn(setUp, events)).toEqual({ kind: 'none' });
  });

  test('of two turns the last is asked about, at the first reading since', () => {
    const events = [...first, turn(1, -0.1), turn(4, -0.25), read(1, 300), read(4, 230)];
    expect(answerToTurn(setUp, events)).toMatchObject({
      kind: 'wrong-way',
      wrongWay: { turnEvent: 5, screw: 4 },
    });
  });
});
