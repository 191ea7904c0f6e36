import { describe, expect, it } from 'vitest';
import {
  describeClockMinutes,
  describeTurns,
  describeTurnSize,
  describeTurnsInWords,
  formatChance,
  formatRunningTime,
} from '../../src/calculators/index.ts';

const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

describe('describeTurns(turns)', () => {
  const cases: readonly (readonly [number, string])[] = [
    [0.25, '1/4'], [1.25, '1 1/4'], [7 / 60, '7/60'], [2, '2'], [0, '0'], [-0.25, '−1/4'], [-1.5, '−1 1/2'], [0.4, '2/5'],
    [1 / 60, '1/60'], [2 / 60, '1/30'], [5 / 60, '1/12'], [8 / 60, '2/15'], [1 / 3, '1/3'], [0.3333, '1/3'], [59.9 / 60, '1'],
    [0.125, '1/8'], [1 / 16, '1/16'], [0.375, '3/8'], [0.2667, '4/15'], [0.001, 'less than 1/60'], [-0.001, 'less than 1/60'], [1e-12, '0'],
    [0.5 / 60, '1/60'], [0.49 / 60, 'less than 1/60'], [3 / 16, '3/16'], [-1e-12, '0'], [1.0625, '1 1/16'],
  ]; // prettier-ignore
  for (const [turns, words] of cases)
    it(`${turns} is ${words}`, () => expect(describeTurns(turns)).toBe(words));

  it('throws for what no computation may return', () => {
    expect(() => describeTurns(Number.NaN)).toThrow(new RangeError('not a finite number of turns: NaN'));
    expect(() => formatRunningTime(Infinity)).toThrow(new RangeError('not a finite time: Infinity'));
  });
});

describe('describeTurnsInWords(turns)', () => {
  it('sets turn or turns', () => {
    expect(
      [0.25, 1, 1.25, 2, 0, -1, -0.25, -1.25, 11, 0.001, 11 / 60].map(describeTurnsInWords).map(plain),
    ).toEqual([
      '1/4 turn',
      '1 turn',
      '1 1/4 turns',
      '2 turns',
      'no turn',
      '−1 turn',
      '−1/4 turn',
      '−1 1/4 turns',
      '11 turns',
      'less than 1/60 turn',
      '11/60 turn',
    ]);
    expect(describeTurnsInWords(1.25)).toBe('1\u00a01/4\u00a0turns');
    expect([-1.25, 0.5].map(describeTurnSize).map(plain)).toEqual(['1 1/4 turns', '1/2 turn']);
  });
});

describe('describeClockMinutes(turns)', () => {
  it('is whole minutes of a clock face, whatever the direction', () => {
    expect([0.25, -4 / 60].map(describeClockMinutes)).toEqual(['15\u00a0min', '4\u00a0min']);
  });
});

describe('formatChance(chance)', () => {
  const cases: readonly (readonly [number, string])[] = [
    [0, '0 %'], [0.0049, '0 %'], [0.005, '1 %'], [0.5, '50 %'], [0.9949, '99 %'], [0.995, '100 %'], [1, '100 %'], [1 + 1e-12, '100 %'], [-1e-12, '0 %'],
  ]; // prettier-ignore
  for (const [chance, text] of cases)
    it(`${chance} is ${text}`, () => expect(formatChance(chance)).toBe(text.replace(' ', '\u00a0')));
});

describe('formatRunningTime(minutes)', () => {
  it('is minutes and the seconds that have passed', () => {
    expect([0, 9.1, 15 + 1 / 3, 75.5, 0.999, -1].map(formatRunningTime)).toEqual([
      '0:00',
      '9:06',
      '15:20',
      '75:30',
      '0:59',
      '0:00',
    ]);
  });
});
