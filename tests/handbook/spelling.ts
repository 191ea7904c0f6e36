import { readFileSync } from 'node:fs';
import dictionary from 'dictionary-en-gb';
import nspell from 'nspell';

/** Words of the trade, units, names and symbols that the dictionary does not hold, one a line. */
const ownWords = readFileSync(new URL('own-words.txt', import.meta.url), 'utf8');

/** In the dictionary with another meaning; here they would be American. */
const notOurs = new Set(['meter', 'tire', 'tires']);

const speller = nspell(dictionary).personal(ownWords);

/** A short name in capitals, as of a body or a unit. */
const isAbbreviation = (word: string): boolean => /^\p{Lu}{2,5}s?$/u.test(word);

const isKnown = (word: string): boolean =>
  isAbbreviation(word) ||
  speller.correct(word) ||
  speller.correct(word.toLowerCase()) ||
  (word.includes('-') && word.split('-').every((part) => part.length < 3 || isKnown(part)));

/** Words that are not in the dictionary, or not British, in the order of the text. */
export const misspelt = (text: string): string[] =>
  [...text.replaceAll('’', "'").matchAll(/(?<![\p{L}\d\\_@#/.$'-])\p{L}[\p{L}'-]*(?![\d_(/\\])/gu)]
    .map(([word]) => word.replace(/'s?$|-$/u, ''))
    .filter((word) => word.length > 2 && !/\p{Ll}\p{Lu}/u.test(word))
    .filter((word) => !isKnown(word) || notOurs.has(word.toLowerCase()));

/** A word that was typed twice: `the the`. */
export const doubled = (text: string): string[] =>
  [...text.matchAll(/(?<![\p{L}-])(\p{L}{2,}) \1(?![\p{L}-])/giu)]
    .map(([twice]) => twice)
    .filter((twice) => !/^(that that|had had)$/iu.test(twice));
