import { describe, expect, it } from 'vitest';
import { excerptOf } from '../../src/device/search-excerpt.ts';

const marked = (text: string, ...terms: string[]) =>
  excerptOf(text, new Set(terms))
    .map(({ text: part, found }) => (found ? `[${part}]` : part))
    .join('');

describe('excerptOf', () => {
  it('is the line that has most of the terms, the first of equals', () => {
    const text = 'The lock nut\nHold the screw, tighten the nut.\nA nut and a screw';
    expect(marked(text, 'nut', 'screw')).toBe('Hold the [screw,] tighten the [nut.]');
    expect(marked(text, 'nut')).toBe('The lock [nut]');
  });

  it('is a sentence rather than a heading with the same terms, but never one with fewer', () => {
    const text = 'Which way to turn\nTurn the screw clockwise if its cylinder draws more than the others.';
    expect(marked(text, 'turn')).toMatch(/^\[Turn\] the screw/);
    expect(marked(text, 'turn', 'way')).toBe('Which [way] to [turn]');
  });

  it('finds a word in its other forms, and by what stands for it', () => {
    expect(marked('Turning the carbs', 'turn', 'carburettor')).toBe('[Turning] the [carbs]');
  });

  it('of a long line begins shortly before the first that was found, and ends in time', () => {
    const long = [...Array.from({ length: 40 }, (_, i) => `w${i}`), 'needle', ...Array(40).fill('x')].join(
      ' ',
    );
    const words = marked(long, 'needl').split(' ');
    expect(words).toHaveLength(24);
    expect(words.slice(0, 7)).toEqual(['w34', 'w35', 'w36', 'w37', 'w38', 'w39', '[needle]']);
  });

  it('is empty where nothing was found, and for no text', () => {
    expect(excerptOf('The needle', new Set(['nut']))).toEqual([]);
    expect(excerptOf('', new Set(['nut']))).toEqual([]);
    expect(excerptOf('of the and', new Set(['the']))).toEqual([]);
  });

  it('keeps what looks like markup as the text that it is', () => {
    expect(excerptOf('<b>nut</b> & more', new Set(['nut']))).toEqual([
      { text: '<b>nut</b>', found: true },
      { text: ' & more', found: false },
    ]);
  });
});
