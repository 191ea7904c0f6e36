// `npm run maths-face`: cuts the characters of all formulae of the built site (OUT_DIR, dist) out of STIX Two Math, with what
// roots, brackets and fractions need. Writes src/styles/maths.woff2, and beside it the characters that it has.
import './check-node.mjs';
import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import subsetFont from 'subset-font';
import { mathsCharacters } from './build/maths-characters.mjs';

const source = createRequire(import.meta.url).resolve(
  '@fontsource/stix-two-math/files/stix-two-math-latin-400-normal.woff2',
);

/** Blocks of letters that MathML sets in italics, and where their italics begin (Unicode 15, Mathematical Alphanumeric Symbols). */
const italics = [
  ['A', 'Z', 0x1d434],
  ['a', 'z', 0x1d44e],
  ['Α', 'Ω', 0x1d6e2],
  ['α', 'ω', 0x1d6fc],
];
/** Those whose italics stand elsewhere: h, and the round rho. */
const exceptions = { h: 0x210e, ϱ: 0x1d71a };

function italicOf(character) {
  if (character in exceptions) return String.fromCodePoint(exceptions[character]);
  const block = italics.find(([first, last]) => character >= first && character <= last);
  return block ? String.fromCodePoint(block[2] + character.codePointAt(0) - block[0].codePointAt(0)) : '';
}

const characters = mathsCharacters(process.env.OUT_DIR ?? 'dist');
const drawn = ['√', ...characters].flatMap((character) => [character, italicOf(character)]).join('');
const face = await subsetFont(readFileSync(source), drawn, { targetFormat: 'woff2' });
writeFileSync('src/styles/maths.woff2', face);
writeFileSync('src/styles/maths-characters.json', `${JSON.stringify(characters.join(''))}\n`);
console.log(`${characters.length} characters, ${(face.length / 1000).toFixed(1)} kB.`);
