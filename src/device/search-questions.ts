import { questionStems } from './search-words.ts';

/** A page with the questions that it answers, as `questions.json` holds it. */
export interface AskedPage {
  address: string;
  title: string;
  description: string;
  asks: readonly string[];
}

/**
 * How well each page’s nearest question fits what is asked, from 0 to 1: the cosine between the two sets of stems, each
 * stem weighed by how few pages have it (log(1 + pages/pages with it), the usual inverse document frequency).
 */
export function questionScores(query: string, pages: readonly AskedPage[]): Map<string, number> {
  const asked = pages.map(({ address, title, asks }) => ({
    address,
    questions: [title, ...asks].map(questionStems),
  }));
  const pagesWith = new Map<string, number>();
  for (const { questions } of asked)
    for (const stem of new Set(questions.flat())) pagesWith.set(stem, (pagesWith.get(stem) ?? 0) + 1);
  const weigh = (stems: readonly string[]) =>
    stems.reduce((sum, stem) => sum + Math.log(1 + pages.length / (pagesWith.get(stem) ?? 1)), 0);

  const wanted = questionStems(query);
  const scores = new Map<string, number>();
  for (const { address, questions } of asked) {
    const fits = questions.map((stems) => {
      const common = stems.filter((stem) => wanted.includes(stem));
      return common.length === 0 ? 0 : weigh(common) / Math.sqrt(weigh(wanted) * weigh(stems));
    });
    const best = Math.max(...fits);
    if (best > 0) scores.set(address, best);
  }
  return scores;
}

const questionWeight = 2;

/**
 * Pages by what the text search found and by the questions, best first. Each search is scaled by its best page, so that
 * a common word does not drown a rare one. A question counts twice as much as the text: seen with 80 questions, from
 * there on the right page came first most often.
 */
export function rankAddresses(
  searches: readonly (readonly { address: string; score: number }[])[],
  questions: ReadonlyMap<string, number>,
): string[] {
  const scores = new Map<string, number>();
  const add = (address: string, score: number) => scores.set(address, (scores.get(address) ?? 0) + score);
  for (const found of searches) {
    const best = Math.max(...found.map(({ score }) => score));
    for (const { address, score } of found) add(address, score / best / searches.length);
  }
  for (const [address, score] of questions) add(address, questionWeight * score);
  return [...scores].toSorted(([, a], [, b]) => b - a).map(([address]) => address);
}
