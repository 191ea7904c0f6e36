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
  options(options: { noWorker: boolean }): Promise<void>;
  debouncedSearch(query: string): Promise<{ results: { data(): Promise<PagefindPage> }[] } | null>;
}
interface PagefindPage {
  url: string;
  excerpt: string;
  meta: { title?: string };
}

/** More pages than anyone reads; a longer list says that the words were too common. */
const mostPages = 20;

let loading: Promise<Pagefind> | undefined;

async function loadOnce(): Promise<Pagefind> {
  const address = siteAddress('/pagefind/pagefind.js');
  const pagefind = (await import(/* @vite-ignore */ address)) as Pagefind;
  // The index is small enough to be searched at once. In Chromium a page's own worker can also keep a new version of
  // the site waiting for minutes after the reader has asked for it.
  await pagefind.options({ noWorker: true });
  return pagefind;
}

function load(): Promise<Pagefind> {
  loading ??= loadOnce().catch((error: unknown) => {
    loading = undefined; // so that the next key tries again
    throw error;
  });
  return loading;
}

/** The pages with these words, best first; `null` when a later call has taken over. Rejects without the index. */
export async function findPages(query: string): Promise<FoundPage[] | null> {
  const answer = await (await load()).debouncedSearch(query);
  if (answer === null) return null;
  const pages = await Promise.all(answer.results.slice(0, mostPages).map((result) => result.data()));
  return pages.map((page) => ({
    address: page.url,
    title: page.meta.title ?? page.url,
    excerpt: splitExcerpt(page.excerpt),
  }));
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
