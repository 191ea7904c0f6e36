import { termOf, wordsOf } from './search-words.ts';

/** A page as the search knows it. */
export interface SearchedPage {
  address: string;
  title: string;
  /** A line for each paragraph, row or heading. */
  text: string;
}

/** How the index is written by the build and read by the page; it only fits if both say the same. */
export const searchTerms = {
  idField: 'address',
  fields: ['title', 'text'],
  storeFields: ['title'],
  tokenize: wordsOf,
  processTerm: termOf,
};
