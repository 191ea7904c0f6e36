import MiniSearch from 'minisearch';
import { excerptOf, type ExcerptPart } from './search-excerpt.ts';
import { questionScores, rankAddresses, type AskedPage } from './search-questions.ts';
import { searchTerms, type SearchedPage } from './search-terms.ts';
import { searchWords } from './search-words.ts';
import { siteAddress } from './site-address.ts';

export interface FoundPage {
  address: string;
  title: string;
  /** Where the words stand; before the texts have come, and where none of them stands, what the page is about. */
  excerpt: ExcerptPart[];
}

interface Searchable {
  index: MiniSearch<SearchedPage>;
  asked: AskedPage[];
}

/** More pages than anyone reads; a longer list says that the words were too common. */
const mostPages = 10;

/** A word may go on where the typed one ends, or have a letter in five wrong. */
const looking = {
  boost: { title: 2 },
  prefix: (term: string) => term.length > 2,
  fuzzy: (term: string) => (term.length > 4 ? 0.2 : false),
};

async function fetched(file: `/${string}`): Promise<Response> {
  const answer = await fetch(siteAddress(file));
  if (!answer.ok) throw new Error(`${file}: ${answer.status}`);
  return answer;
}

/** What is loaded once, and anew after a failure. */
function once<Value>(load: () => Promise<Value>): () => Promise<Value> {
  let loading: Promise<Value> | undefined;
  return () =>
    (loading ??= load().catch((error: unknown) => {
      loading = undefined; // so that the next key tries again
      throw error;
    }));
}

const load = once(async (): Promise<Searchable> => {
  const [index, asked] = await Promise.all([fetched('/search-index.json'), fetched('/questions.json')]);
  return {
    index: MiniSearch.loadJSON<SearchedPage>(await index.text(), searchTerms),
    asked: (await asked.json()) as AskedPage[],
  };
});

let texts: Readonly<Record<string, string>> | undefined;

/** Whether excerpts can be shown. */
export const hasTexts = (): boolean => texts !== undefined;

/** The index, and then what excerpts are taken from. Rejects without either. */
export const loadTexts = once(async (): Promise<void> => {
  await load();
  texts = (await (await fetched('/search-texts.json')).json()) as Record<string, string>;
});

/** The pages with these words or with a question like these, best first. Rejects without the index. */
export async function findPages(query: string): Promise<FoundPage[]> {
  const { index, asked } = await load();
  const words = searchWords(query);
  const searches = [words.join(' '), ...(words.length > 1 ? words : [])].map((some) =>
    index.search(some, looking).map(({ id, score, title, terms }) => ({
      address: String(id),
      score,
      title: String(title),
      terms,
    })),
  );
  return rankAddresses(searches, questionScores(query, asked))
    .slice(0, mostPages)
    .flatMap((address): FoundPage[] => {
      const found = searches.flat().filter((page) => page.address === address);
      const asking = asked.find((page) => page.address === address);
      const title = found[0]?.title ?? asking?.title;
      if (title === undefined) return [];
      const terms = new Set(found.flatMap((page) => page.terms));
      const places = excerptOf(texts?.[address] ?? '', terms);
      const about = asking ? [{ text: asking.description, found: false }] : [];
      return [{ address, title, excerpt: places.length > 0 ? places : about }];
    });
}
