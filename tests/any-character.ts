import fc from 'fast-check';

const codePoint = (min: number, max: number) =>
  fc.integer({ min, max }).map((code) => String.fromCodePoint(code));

/** Any character at all, half of them ASCII; no half of a surrogate pair. The library's own takes seconds to set up. */
export const anyCharacter = fc.oneof(
  { weight: 3, arbitrary: codePoint(0, 0x7f) },
  { weight: 1, arbitrary: codePoint(0, 0xd7ff) },
  { weight: 2, arbitrary: codePoint(0xe000, 0x10ffff) },
);
