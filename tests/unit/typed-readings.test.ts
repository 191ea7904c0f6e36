import { describe, expect, test } from 'vitest';
import { exampleSessions } from '../../src/calculators/example-sessions.ts';
import { parseReadings } from '../../src/calculators/index.ts';
import { labelledReadings } from '../../src/calculators/reading-list.ts';
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

test('labelledReadings(typed): labels, texts and speeds as typed, without the space around them', () => {
  expect(labelledReadings('12 : 12,5 cmHg @  2150 rpm ;248 ; @;7 @ 8 @ 9')).toEqual([
    { carburettor: 12, text: '12,5 cmHg', speedText: '2150 rpm' },
    { carburettor: 13, text: '248' },
    { carburettor: 14, text: '', speedText: '' },
    { carburettor: 15, text: '7', speedText: '8 @ 9' },
  ]);
  // No label: it stands at the start, and is digits alone.
  for (const typed of ['a 1: 212', '1x: 212'])
    expect(labelledReadings(typed)).toEqual([{ carburettor: 1, text: typed }]);
});

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

  test.each([
    ['1: 212; '.repeat(65), { kind: 'too-many-readings', field: 'readings', value: 65, limit: { max: 64 } }],
    ['5: 212', { kind: 'index', field: 'readings', value: 5, limit: { min: 1, max: 4 } }],
    ['212 @', { kind: 'empty', field: 'rpm' }],
  ])('%j is told with its field and limit', (typed, problem) => {
    expect(parseReadings(typed, 'mmHg', setUp)).toEqual({ ok: false, problem });
  });

  test('says nothing of a speed where none was typed', () => {
    const read = parseReadings('212', 'mmHg', setUp);
    expect(read.ok && read.value[0]).not.toHaveProperty('rpm');
  });

  test('takes 64 readings, not one more', () => {
    expect(shortOf('1: 212; '.repeat(64)).split(' ')).toHaveLength(64);
  });
});
