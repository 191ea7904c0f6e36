/** `npm run report:text`: the longest sentence and paragraph of each page, the longest first. */
import { handbookPages, longestOf, paragraphsOf, sentencesOf, wordsIn } from './pages.ts';

const rows = handbookPages
  .map(({ slug, prose }) => {
    const sentences = sentencesOf(prose);
    const sentence = longestOf(sentences);
    return {
      slug,
      words: wordsIn(prose.replace(/\s+/gu, ' ')),
      sentences: sentences.length,
      sentence: wordsIn(sentence),
      paragraph: wordsIn(longestOf(paragraphsOf(prose))),
      begins: sentence.slice(0, 60),
    };
  })
  .toSorted((a, b) => b.sentence - a.sentence);

const width = Math.max(...rows.map(({ slug }) => slug.length));
const line = (cells: readonly (string | number)[]) =>
  cells
    .map((cell, place) => (place === 0 ? String(cell).padEnd(width) : String(cell).padStart(9)))
    .join('  ');

console.log(`${line(['page', 'words', 'sentences', 'sentence', 'paragraph'])}  longest sentence begins`);
for (const { slug, words, sentences, sentence, paragraph, begins } of rows)
  console.log(`${line([slug, words, sentences, sentence, paragraph])}  ${begins}`);
