/** The part of the address after `#`, as keys and values: the state that a link reproduces. Nothing of it reaches a server. */
export const readFragment = (): Record<string, string> => parseFragment(location.hash.slice(1));

/** Keys and values of a fragment's text. Never throws; of a key that stands twice the last counts. */
export const parseFragment = (text: string): Record<string, string> =>
  Object.fromEntries(new URLSearchParams(text));

export type FragmentWay = 'replace' | 'push';

/** Writes the state: `replace` while somebody types, `push` for a step that the back button should undo. */
export const writeFragment = (
  state: Readonly<Record<string, string>>,
  way: FragmentWay = 'replace',
): void => {
  const address = addressWith(location.pathname + location.search, state);
  if (way === 'push') history.pushState(null, '', address);
  else history.replaceState(null, '', address);
};

/** The address of this page with a state, to be copied. */
export const linkTo = (state: Readonly<Record<string, string>>): string =>
  addressWith(location.origin + location.pathname, state);

/** A page’s address with a state that it is to begin with. */
export const addressWith = (page: string, state: Readonly<Record<string, string>>): string => {
  const text = fragmentText(state);
  return page + (text === '' ? '' : `#${text}`);
};

/** What is common in a list stays readable; it is allowed in a fragment (RFC 3986, section 3.5). */
const fragmentText = (state: Readonly<Record<string, string>>): string =>
  new URLSearchParams(state)
    .toString()
    .replaceAll(/%(?:2C|2F|3A|40)/gu, (encoded) => decodeURIComponent(encoded));
