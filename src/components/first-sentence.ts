/** The first sentence of a text, with its full stop or question mark. */
export const firstSentence = (text: string): string => /^.*?[.?](?=\s|$)/su.exec(text)?.[0] ?? text;
