import { expect } from 'vitest';

/** Every text in an answer with the way to it, however deep. */
export const textsIn = (value: unknown, way = ''): readonly (readonly [way: string, text: string])[] => {
  if (typeof value === 'string') return [[way, value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, each]) => textsIn(each, `${way}.${key}`));
};

/** That each text says something, but for one that may be empty: nothing is missing in it, and no gap stands where a word was to be. */
export const expectFullText = (answer: unknown, least: number, mayBeEmpty = ''): void => {
  const texts = textsIn(answer).filter(([way, text]) => text !== '' || way !== mayBeEmpty);
  expect(texts.length).toBeGreaterThanOrEqual(least);
  for (const [way, text] of texts) {
    expect(text, way).toMatch(/^\S(?:.*\S)?$/su);
    expect(text, way).not.toMatch(/undefined|null|NaN|\[object| {2}| [,.;]| \)|\( /u);
  }
};
