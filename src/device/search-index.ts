import { questionScores, rankAddresses, type AskedPage } from './search-questions.ts';
import { isLike, searchWords } from './search-words.ts';
import { siteAddress } from './site-address.ts';

/** A piece of a page's text; `found` where it is what was searched for. */
export interface ExcerptPart {
  text: string;
  found: boolean;
}

export interface FoundPage {
  address: string;
  title: string;
  excerpt: ExcerptPart[];
}

/** The part of the search program that is used here; it is written by the build, beside the pages. */
interface Pagefind {
  /** `termSimilarity`: how much a word like the one typed counts less; its usual 9 takes “carbon” for “carb”. */
  options(options: { noWorker: boolean; ranking: { termSimilarity: number } }): Promise<void>;
  /** Fetches the index's head and program, which a search would else wait for. */
  init(): Promise<void>;
  debouncedSearch(
    query: string,
    options: object,
    waitMs: number,
  ): Promise<{ results: PagefindResult[] } | null>;
  search(query: string): Promise<{ results: PagefindResult[] }>;
}
interface PagefindResult {
  id: string;
  score: number;
  data(): Promise<PagefindPage>;
}
interface PagefindPage {
  url: string;
  excerpt: string;
  meta: { title?: string };
}

interface Searchable {
  pagefind: Pagefind;
  asked: AskedPage[];
}

/** More pages than anyone reads; a longer list says that the words were too common. */
const mostPages = 10;

/** A key that follows within this time takes over: shorter than the gap between two keys of somebody who types fast. */
const waitMs = 60;

let loading: Promise<Searchable> | undefined;

async function loadOnce(): Promise<Searchable> {
  const address = siteAddress('/pagefind/pagefind.js');
  const [pagefind, answer] = await Promise.all([
    import(/* @vite-ignore */ address) as Promise<Pagefind>,
    fetch(siteAddress('/questions.json')),
  ]);
  if (!answer.ok) throw new Error(`questions.json: ${answer.status}`);
  const asked = (await answer.json()) as AskedPage[];
  // The index is small enough to be searched at once. In Chromium a page's own worker can also keep a new version of
  // the site waiting for minutes after the reader has asked for it.
  await pagefind.options({ noWorker: true, ranking: { termSimilarity: 30 } });
  await pagefind.init();
  return { pagefind, asked };
}

function load(): Promise<Searchable> {
  loading ??= loadOnce().catch((error: unknown) => {
    loading = undefined; // so that the next key tries again
    throw error;
  });
  return loading;
}

/** Begins to load the index before anything is typed. Without it nothing is lost: the first key tries again. */
export const prepareSearch = (): void => void load().catch(() => undefined);

/**
 * The pages with these words or with a question like these, best first; `null` when a later call has taken over.
 * Rejects without the index.
 */
export async function findPages(query: string): Promise<FoundPage[] | null> {
  const { pagefind, asked } = await load();
  const words = searchWords(query);
  const together = await pagefind.debouncedSearch(words.join(' '), {}, waitMs);
  if (together === null) return null;
  const each = words.length > 1 ? await Promise.all(words.map((word) => pagefind.search(word))) : [];
  const searches = await Promise.all([together, ...each].map(({ results }) => pagesWith(words, results)));
  return rankAddresses(searches, questionScores(query, asked))
    .slice(0, mostPages)
    .flatMap((address): FoundPage[] => {
      // What all the words together found has the fullest excerpt; a page that only asks is shown by its description.
      const page = searches.flat().find((one) => one.address === address);
      if (page) return [page];
      const asking = asked.find((one) => one.address === address);
      return asking
        ? [{ address, title: asking.title, excerpt: [{ text: asking.description, found: false }] }]
        : [];
    });
}

/** The best pages of one search, without those found only by the first letter or two of an unknown word. */
async function pagesWith(words: readonly string[], results: readonly PagefindResult[]) {
  const pages = await Promise.all(
    results.slice(0, mostPages).map(async ({ score, data }) => {
      const { url, excerpt, meta } = await data();
      return { address: url, title: meta.title ?? url, excerpt: splitExcerpt(excerpt), score };
    }),
  );
  return pages.filter(({ excerpt }) => excerpt.some(({ text, found }) => found && isLike(text, words)));
}

const entities: Record<string, string> = { amp: '&', lt: '<', gt: '>', quot: '"', '#39': "'", '#x27': "'" };

/** The index marks what it found with `<mark>` in escaped text. Taken apart here, so that no HTML is put into the page. */
export function splitExcerpt(html: string): ExcerptPart[] {
  return html
    .split(/<mark>(.*?)<\/mark>/s)
    .map((piece, place) => ({
      text: piece.replace(/&([a-z]+|#\w+);/g, (whole, name: string) => entities[name] ?? whole),
      found: place % 2 === 1, // every other piece was between the marks
    }))
    .filter((part) => part.text !== '');
}
