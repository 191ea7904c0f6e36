import { describe, expect, test } from 'vitest';
import { exampleSessions } from '../../src/calculators/example-sessions.ts';
import { parseReadings } from '../../src/calculators/index.ts';
import { mmHg } from '../engine/invented.ts';

const { setUp } = exampleSessions['fixed-reference'];

/** `1:212 2:248`, in whole mmHg. */
const shortOf = (typed: string, unit = 'mmHg'): string => {
  const result = parseReadings(typed, unit, setUp);
  if (!result.ok) return result.problem.kind;
  return result.value
    .map(({ carburettor, depressionPa }) => `${carburettor}:${Math.round((depressionPa / mmHg) * 10) / 10}`)
    .join(' ');
};

describe('parseReadings(typed, unit, setUp)', () => {
  test.each([
    ['212; 248; 251; 187', '1:212 2:248 3:251 4:187'],
    ['212, 248, 251, 187', '1:212 2:248 3:251 4:187'],
    ['212\n248\n251\n187\n', '1:212 2:248 3:251 4:187'],
    ['1: 212, 4: 187', '1:212 4:187'],
    ['1: 212, 2: 248, 3: 251, 4: 187', '1:212 2:248 3:251 4:187'],
    ['3:251', '3:251'],
    // Without a label they count on from the one before.
    ['3: 251; 187', '3:251 4:187'],
    // One carburettor more than once.
    ['1: 212; 1: 214; 2: 248', '1:212 1:214 2:248'],
    // A decimal comma stays one; so do units of their own.
    ['12,5 cmHg; 9 1/2 inHg', '1:125 2:241.3'],
    ['212,5, 248,5', '1:212.5 2:248.5'],
    ['; 212;;', '1:212'],
    ['', ''],
    ['  \n ', ''],
  ])('%j is %s', (typed, readings) => {
    expect(shortOf(typed)).toBe(readings);
  });

  test('a number without a unit is in the gauge’s', () => {
    expect(shortOf('30; 200 mmHg', 'kPa')).toBe('1:225 2:200');
  });

  test('keeps what was typed', () => {
    expect(parseReadings('1: 12,5 cmHg ; 248', 'mmHg', setUp)).toMatchObject({
      value: [{ typed: '12,5 cmHg' }, { typed: '248' }],
    });
  });

  test('the engine speed stands behind an @', () => {
    expect(parseReadings('2: 8 1/2 inHg @ 2150; 1: 212@2100rpm, 248', 'mmHg', setUp)).toMatchObject({
      value: [{ typed: '8 1/2 inHg', rpm: 2150 }, { typed: '212', rpm: 2100 }, { typed: '248' }],
    });
  });

  test.each([
    ['212 @', 'empty'],
    ['@ 2100', 'empty'],
    ['212 @ fast', 'not-a-number'],
    ['212 @ 2100 @ 2200', 'not-a-number'],
    ['212 @ 50', 'out-of-range'],
    ['5: 212', 'index'],
    ['0: 212', 'index'],
    ['4: 187; 212', 'index'],
    ['212; 248; 251; 187; 190', 'index'],
    ['1: ; 2: 248', 'empty'],
    ['212; many', 'not-a-number'],
    ['212; -5', 'negative-depression'],
    ['212; 900', 'depression-beyond-ambient'],
    ['212; 1e309', 'beyond-counting'],
    ['212; 3 furlong', 'unknown-unit'],
    // Not guessed: two numbers without a space after their comma, or one of a thousand.
    ['212,248', 'ambiguous-number'],
    ['212,248,251,187', 'depression-beyond-ambient'],
    ['1: 212; '.repeat(65), 'too-many-readings'],
  ])('%j: %s', (typed, kind) => {
    expect(shortOf(typed)).toBe(kind);
  });

  test('takes 64 readings, not one more', () => {
    expect(shortOf('1: 212; '.repeat(64)).split(' ')).toHaveLength(64);
  });
});
