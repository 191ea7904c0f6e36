/** A name with its indefinite article: a length, an engine speed. */
export const withArticle = (name: string): string => `${/^[aeiou]/u.test(name) ? 'an' : 'a'} ${name}`;
