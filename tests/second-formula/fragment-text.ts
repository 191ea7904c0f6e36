/*
 * The part of an address after # once more: bytes by hand, as the URL Standard (section 5.1, application/x-www-form-
 * urlencoded parsing, and the UTF-8 decoder of the Encoding Standard) has them, with nothing of the platform's own.
 */
const hex = '0123456789abcdef';

/** The UTF-8 bytes of a text; half of a surrogate pair is U+FFFD. */
const bytesOf = (text: string): number[] => {
  const bytes: number[] = [];
  for (const character of text) {
    let code = character.codePointAt(0)!;
    if (code >= 0xd800 && code <= 0xdfff) code = 0xfffd;
    if (code < 0x80) bytes.push(code);
    else if (code < 0x800) bytes.push(0xc0 | (code >> 6), 0x80 | (code & 63));
    else if (code < 0x10000) bytes.push(0xe0 | (code >> 12), 0x80 | ((code >> 6) & 63), 0x80 | (code & 63));
    else
      bytes.push(
        0xf0 | (code >> 18),
        0x80 | ((code >> 12) & 63),
        0x80 | ((code >> 6) & 63),
        0x80 | (code & 63),
      );
  }
  return bytes;
};

const textOf = (bytes: readonly number[]): string => {
  let text = '';
  for (let at = 0; at < bytes.length;) {
    const first = bytes[at++]!;
    if (first < 0x80) {
      text += String.fromCodePoint(first);
      continue;
    }
    const more =
      first >= 0xc2 && first <= 0xdf ? 1 : first >> 4 === 0xe ? 2 : first >= 0xf0 && first <= 0xf4 ? 3 : 0;
    let code = more === 1 ? first & 31 : more === 2 ? first & 15 : first & 7;
    let low = first === 0xe0 ? 0xa0 : first === 0xf0 ? 0x90 : 0x80;
    let high = first === 0xed ? 0x9f : first === 0xf4 ? 0x8f : 0xbf;
    let taken = 0;
    while (taken < more && at < bytes.length && bytes[at]! >= low && bytes[at]! <= high) {
      code = (code << 6) | (bytes[at++]! & 63);
      [low, high] = [0x80, 0xbf];
      taken += 1;
    }
    text += more > 0 && taken === more ? String.fromCodePoint(code) : '\ufffd';
  }
  return text;
};

const decoded = (part: string): string => {
  const given = bytesOf(part);
  const bytes: number[] = [];
  const digit = (place: number): number => hex.indexOf(String.fromCharCode(given[place] ?? 0).toLowerCase());
  for (let at = 0; at < given.length; at++) {
    if (given[at] === 0x2b) bytes.push(0x20);
    else if (given[at] === 0x25 && digit(at + 1) >= 0 && digit(at + 2) >= 0) {
      bytes.push(16 * digit(at + 1) + digit(at + 2));
      at += 2;
    } else bytes.push(given[at]!);
  }
  return textOf(bytes);
};

/** Keys and values in order; of a key that stands twice, the last. */
export function slowFragment(text: string): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  for (const piece of (text.startsWith('?') ? text.slice(1) : text).split('&')) {
    if (piece === '') continue;
    const cut = piece.indexOf('=');
    found.set(decoded(cut < 0 ? piece : piece.slice(0, cut)), decoded(cut < 0 ? '' : piece.slice(cut + 1)));
  }
  return found;
}
