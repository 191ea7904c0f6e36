import { expect, test } from 'vitest';
import { isShort, shortOfThreadTurns } from '../../src/calculators/short-of-thread.ts';

test.each([
  [{ closing: 0.3, opening: 0.3 }, false],
  [{ closing: 0.29, opening: 2 }, true],
  [{ closing: 2, opening: 0 }, true],
  [{ closing: 0.1 }, true],
  [{ opening: 1 }, false],
  // Nothing told is nothing to warn of.
  [{}, false],
])('isShort(%j) is %s', (left, short) => {
  expect(shortOfThreadTurns).toBe(0.3);
  expect(isShort(left)).toBe(short);
});
