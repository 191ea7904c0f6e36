import { describe, expect, it } from 'vitest';
import {
  expectedAfterTurn,
  gapOfTurns,
  pascalsOf,
  pressureUnit,
  screwsOf,
  seeSaw,
  turnsOfGap,
  type SetUp,
} from '../../src/calculators/index.ts';
import { tolerances } from '../tolerances.ts';

const mmHg = (value: number): number => pascalsOf(value, pressureUnit('mmHg'));

describe('seeSaw(carburettors, moved)', () => {
  it.each([
    [2, 1, 1 / 2, 1 / 2],
    [3, 1, 2 / 3, 1 / 3],
    [4, 1, 3 / 4, 1 / 4],
    [4, 2, 1 / 2, 1 / 2],
    [6, 2, 2 / 3, 1 / 3],
  ])('%d with %d moved: %f down, %f up', (carburettors, moved, down, up) => {
    const shares = seeSaw(carburettors, moved);
    expect(shares.ok && shares.value.moved).toBeCloseTo(down, 12);
    expect(shares.ok && shares.value.others).toBeCloseTo(up, 12);
  });

  it('moves one where nothing else is said', () => expect(seeSaw(5)).toEqual(seeSaw(5, 1)));

  it.each([
    [1, 1],
    [4, 0],
    [4, 4],
    [NaN, 1],
    [4, Infinity],
  ])('%d with %d moved has no see-saw', (carburettors, moved) => {
    expect(seeSaw(carburettors, moved).ok).toBe(false);
  });

  it.each([
    ['all-adjustable', 1, 1],
    ['paired-screws', 3, 2],
  ] as const)(
    '%s: is what the advice computes for a small turn in a level set',
    (generation, screw, moved) => {
      const screws = screwsOf(generation, 4);
      if (!screws.ok) throw new Error(screws.problem.kind);
      const effectPaPerTurn = mmHg(140);
      const setUp: SetUp = {
        carburettors: 4,
        screws: screws.value,
        tolerancePa: mmHg(10),
        gauge: { resolutionPa: mmHg(0.01), flutterPa: 0 },
        effectPaPerTurn,
      };
      const level = [1, 2, 3, 4].map(
        (carburettor) => ({ kind: 'reading', carburettor, depressionPa: mmHg(300) }) as const,
      );
      const turns = 1 / 60;
      const after = expectedAfterTurn(setUp, level, screw, turns);
      const shares = seeSaw(4, moved);
      const movedOf = screws.value[screw - 1]!.moves;
      for (const [index, pascals] of after.entries()) {
        const share = shares.ok ? (movedOf[index] === 0 ? shares.value.others : -shares.value.moved) : NaN;
        const asShares = (pascals - mmHg(300)) / (share * gapOfTurns(turns, effectPaPerTurn));
        expect(Math.abs(asShares - 1)).toBeLessThan(tolerances.smallTurn.relative);
      }
    },
  );
});

describe('gapOfTurns(turns, effect) and turnsOfGap(gap, effect)', () => {
  it('undo each other', () => {
    expect(gapOfTurns(1 / 4, mmHg(140))).toBeCloseTo(mmHg(35), 9);
    expect(turnsOfGap(mmHg(35), mmHg(140))).toBeCloseTo(1 / 4, 12);
  });
});
