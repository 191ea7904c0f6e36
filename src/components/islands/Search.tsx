import { useEffect, useRef, useState } from 'preact/hooks';
import { findPages, hasTexts, loadTexts, type FoundPage } from '../../device/search-index.ts';

type State =
  { kind: 'empty' | 'searching' | 'failed' } | { kind: 'found'; query: string; pages: FoundPage[] };

/** The words to search for, from the address: a link to a search reproduces it. */
const queryInAddress = () => new URLSearchParams(location.hash.slice(1)).get('q') ?? '';

function putInAddress(query: string) {
  const fragment = query === '' ? '' : `#${new URLSearchParams({ q: query })}`;
  history.replaceState(history.state, '', location.pathname + location.search + fragment);
}

function message(state: State): string {
  switch (state.kind) {
    case 'empty':
      return '';
    case 'searching':
      return 'Searching.';
    case 'failed':
      return 'The index could not be loaded. It is saved together with the site: open this page once with a network, then search works without.';
    case 'found':
      if (state.pages.length === 0) return `No page has “${state.query}”.`;
      return state.pages.length === 1 ? 'One page.' : `${state.pages.length} pages.`;
  }
}

export default function Search() {
  const [state, setState] = useState<State>({ kind: 'empty' });
  const field = useRef<HTMLInputElement>(null);

  async function search(typed: string) {
    const query = typed.trim();
    putInAddress(query);
    if (query === '') return setState({ kind: 'empty' });
    setState((now) => (now.kind === 'found' ? now : { kind: 'searching' }));
    const show = async () => {
      const pages = await findPages(query);
      if (field.current?.value.trim() === query) setState({ kind: 'found', query, pages });
    };
    try {
      await show();
    } catch {
      return setState({ kind: 'failed' });
    }
    // The list stands as soon as it is known; where the words stand on the pages comes a little later.
    if (!hasTexts()) await loadTexts().then(show, () => undefined);
  }

  useEffect(() => {
    const input = field.current;
    if (!input) return;
    loadTexts().catch(() => undefined); // the first key tries again
    // What was typed before this script ran stays.
    if (input.value === '') input.value = queryInAddress();
    void search(input.value);
  }, []);

  return (
    <div class="search flow">
      <form role="search" onSubmit={(event) => event.preventDefault()}>
        <label for="query">A few words or a question</label>
        <input
          class="write"
          id="query"
          ref={field}
          type="text"
          autocomplete="off"
          autocapitalize="none"
          spellcheck={false}
          enterkeyhint="search"
          onInput={(event) => void search(event.currentTarget.value)}
        />
      </form>
      <p class="quiet" role="status">
        {message(state)}
      </p>
      {state.kind === 'found' && state.pages.length === 0 && (
        <ul class="bullets">
          <li>Try one word, in its plain form: “adjuster”, “vacuum”, “inHg”.</li>
          <li>Try the word of the trade: “depression” for suction, “lock nut” for a counter nut.</li>
        </ul>
      )}
      {state.kind === 'found' && state.pages.length > 0 && (
        <ol class="found">
          {state.pages.map((page) => (
            <li key={page.address}>
              <a href={page.address}>{page.title}</a>
              <p>{page.excerpt.map((part) => (part.found ? <mark>{part.text}</mark> : part.text))}</p>
            </li>
          ))}
        </ol>
      )}
    </div>
  );
}
