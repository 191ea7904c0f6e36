import { describe, expect, test } from 'vitest';
import { parseTurnAmount } from '../../src/calculators/parse-turn-amount.ts';

const limit = { min: -10, max: 10 };
const turnsOf = (typed: string) => {
  const parsed = parseTurnAmount(typed, 'planned', limit);
  return parsed.ok ? parsed.value : parsed.problem.kind;
};

describe('parseTurnAmount(typed, field, limit)', () => {
  test.each(['', ' turn', ' turns', ' Turns', 't'])('2%s is two turns', (unit) =>
    expect(turnsOf(`2${unit}`)).toBe(2),
  );
  test.each([' min', ' minute', ' minutes', ' min.'])('30%s of a clock face are half a turn', (unit) =>
    expect(turnsOf(`30${unit}`)).toBe(0.5),
  );
  test.each([' h', ' hour', ' hours'])('3%s of a clock face are a quarter', (unit) =>
    expect(turnsOf(`3${unit}`)).toBe(0.25),
  );
  test.each(['°', ' deg', ' degree', ' degrees'])('-90%s are a quarter the other way', (unit) =>
    expect(turnsOf(`-90${unit}`)).toBe(-0.25),
  );

  test('what is no unit of a turn is told, with those that are', () => {
    expect(parseTurnAmount('2 mm', 'planned', limit)).toEqual({
      ok: false,
      problem: {
        kind: 'unknown-unit',
        field: 'planned',
        typed: '2 mm',
        unit: 'mm',
        known: ['turns', 'min', 'h', '°'],
      },
    });
    expect(turnsOf('')).toBe('empty');
  });

  test('its limits are on turns, whatever was typed', () => {
    expect([turnsOf('-10'), turnsOf('600 min')]).toEqual([-10, 10]);
    expect(parseTurnAmount('601 min', 'planned', limit)).toMatchObject({
      problem: { kind: 'out-of-range', field: 'planned', limit },
    });
    expect(turnsOf('-10.1')).toBe('out-of-range');
  });
});
