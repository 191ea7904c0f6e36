declare module 'nspell' {
  interface Speller {
    correct(word: string): boolean;
    suggest(word: string): string[];
    personal(list: string): Speller;
  }
  export default function nspell(dictionary: { aff: Uint8Array; dic: Uint8Array }): Speller;
}
