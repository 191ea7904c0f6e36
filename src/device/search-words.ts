const listed = (words: string): ReadonlySet<string> => new Set(words.split(/\s+/u));

/** Words that carry no matter in any question. */
const empty = listed(
  'a an and are at be can do did does for has have how i in is it me my of on or that the there this to what when why with should you your',
);

/**
 * Words that say that somebody asks, and not what about: left out of a search in the text of the pages, because a page on
 * the direction of a turn need not say “which” or “need”.
 */
const asking = listed(
  `am any anyone as because been but by could from get gets getting give go goes got had if into its itself just like
  long make many mine much must need our out please so some such tell than their them then they these those through too
  try up us use used using very want was we were where whether which who will without would whats isnt dont doesnt cant
  wont im ive before after while during off no not`,
);

/** What people say, and the word that stands for it here; both sides of a comparison are brought to the second. */
const sameAs: Readonly<Record<string, string>> = {
  carb: 'carburettor',
  carburetor: 'carburettor',
  carburetter: 'carburettor',
  sync: 'balanc',
  synchronis: 'balanc',
  synchroniz: 'balanc',
  vacuum: 'depression',
  suction: 'depression',
  elevation: 'altitud',
  height: 'altitud',
  internet: 'offlin',
  network: 'offlin',
  beginner: 'first',
  guid: 'session',
  gasoline: 'petrol',
  rev: 'rpm',
  bike: 'engine',
  motorbike: 'engine',
  motorcycle: 'engine',
  butterfly: 'plate',
  handlebar: 'bar',
};

/** The words of a text, in small letters and without what surrounds them. */
export const wordsOf = (text: string): string[] =>
  text
    .toLowerCase()
    .replace(/[’']/gu, '')
    .split(/[^\p{L}\d./-]+/u)
    .map((word) => word.replace(/^[./-]+|[./-]+$/gu, ''))
    .filter(Boolean);

/** What is left of words; all of them where nothing would be left. */
const orAll = (left: string[], words: string[]): string[] => (left.length > 0 ? left : words);

/** What a query asks about, for a search in the text: without words of asking, single letters and bare numbers, at most eight. */
export function searchWords(query: string): string[] {
  const words = wordsOf(query);
  const telling = words.filter(
    (word) => word.length > 1 && !empty.has(word) && !asking.has(word) && /\p{L}/u.test(word),
  );
  return [...new Set(orAll(telling, words))].slice(0, 8);
}

/** A word without its ending, by which “turned”, “turning” and “turns” are one. Coarse: it only compares questions. */
function stem(word: string): string {
  const short =
    word.length > 4
      ? word.replace(/ies$/u, 'y').replace(/(?:ing|ed|es|s|ly|er)$/u, '')
      : word.replace(/(?<=..)s$/u, '');
  const bare = short.length > 4 ? short.replace(/e$/u, '') : short;
  return sameAs[word] ?? sameAs[short] ?? sameAs[bare] ?? bare;
}

/** What a word of a page or a query is found by; null for a word that carries no matter. */
export const termOf = (word: string): string | null =>
  word.length < 2 || empty.has(word) ? null : stem(word);

/** The stems of a question, each once. */
export function questionStems(question: string): string[] {
  const words = wordsOf(question);
  return [
    ...new Set(
      orAll(
        words.filter((word) => word.length > 1 && !empty.has(word)),
        words,
      ).map(stem),
    ),
  ];
}
