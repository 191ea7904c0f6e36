import { expect, it } from 'vitest';
import { joinedNumbers, membersWords, screwWords } from '../../src/calculators/screw-words.ts';

it('joinedNumbers(numbers) sets commas, and a word before the last', () => {
  expect([[], [1], [1, 4], [1, 2, 4]].map(joinedNumbers)).toEqual(['', '1', '1 and 4', '1, 2 and 4']);
});

it('membersWords(moves) counts the carburettors that a screw moves from 1, whichever way', () => {
  expect(
    [
      [1, 0, 0, 0],
      [0, 0, 1, 1],
      [0.5, -0.5, 0, 1],
    ].map(membersWords),
  ).toEqual(['1', '3 and 4', '1, 2 and 4']);
});

it('screwWords(moves) names a screw of one carburettor by it, another by all that it moves', () => {
  expect(screwWords([0, 1, 0])).toBe('the screw of carburettor\u00a02');
  expect(screwWords([0, -0.5, 0])).toBe('the screw of carburettor\u00a02');
  expect(screwWords([0, 0, 1, 1])).toBe('the screw that moves 3\u00a0and\u00a04');
});
