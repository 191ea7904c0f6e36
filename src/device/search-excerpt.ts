import { termOf, wordsOf } from './search-words.ts';

/** A piece of a page's text; `found` where it is what was searched for. */
export interface ExcerptPart {
  text: string;
  found: boolean;
}

interface Word {
  text: string;
  /** The term that it was found by, if any. */
  term: string | undefined;
}

/** Two or three lines on a phone. */
const mostWords = 24;
/** Of a long paragraph so many words before the first that was found. */
const wordsBefore = 6;

/** With fewer a line is a heading, which says less than the sentences under it. */
const wordsOfSentence = 8;

/**
 * The line of a text with most of the terms, a sentence before a heading, short enough to be read at a glance; empty where
 * no line has any.
 */
export function excerptOf(text: string, terms: ReadonlySet<string>): ExcerptPart[] {
  let [best, most]: [Word[], number] = [[], 0];
  for (const line of text.split('\n')) {
    const words = line.split(' ').map((word) => ({ text: word, term: termIn(word, terms) }));
    const kinds = new Set(words.flatMap(({ term }) => term ?? [])).size;
    const worth = kinds === 0 ? 0 : kinds + (words.length >= wordsOfSentence ? 0.5 : 0);
    if (worth > most) [best, most] = [words, worth];
  }
  const first = best.findIndex(({ term }) => term !== undefined);
  const from = best.length <= mostWords ? 0 : Math.max(0, first - wordsBefore);
  return joined(best.slice(from, from + mostWords));
}

const termIn = (word: string, terms: ReadonlySet<string>): string | undefined =>
  wordsOf(word)
    .flatMap((part) => termOf(part) ?? [])
    .find((term) => terms.has(term));

/** What was not found is one piece up to the next that was. */
function joined(words: readonly Word[]): ExcerptPart[] {
  const parts: ExcerptPart[] = [];
  const add = (text: string, found: boolean) => {
    const last = parts.at(-1);
    if (last?.found === found) last.text += text;
    else parts.push({ text, found });
  };
  for (const [place, { text, term }] of words.entries()) {
    if (place > 0) add(' ', false);
    add(text, term !== undefined);
  }
  return parts;
}
