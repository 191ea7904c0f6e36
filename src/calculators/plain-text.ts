/** Marks set over one letter that any language needs; more of them would climb over the lines around. */
const marksInARow = /(\p{M}{4})\p{M}+/gu;
const control = /[\p{Cc}\p{Zl}\p{Zp}]+/gu;
/**
 * What cannot be seen, or turns the order of letters round: Unicode’s default-ignorable characters (Unicode Standard Annex 44,
 * DerivedCoreProperties), among them every sign of direction, and halves of characters. The joiners of Persian and of
 * emoji and the sign that asks for the coloured emoji stay.
 */
const unseen = /(?![\u200C\u200D\uFE0F])[\p{Default_Ignorable_Code_Point}\p{Cs}\p{Co}\u061C]/gu;
const lineEnd = /\r\n|[\n\u000B\f\r\u0085\u2028\u2029]/u;

/** Somebody else’s words on one line: nothing in it is a control, hides or turns the direction of what is beside it. */
export const plainLine = (text: string): string =>
  text
    .replace(control, ' ')
    .replace(unseen, '')
    .replace(marksInARow, '$1')
    .normalize('NFC')
    .replace(/\s+/gu, ' ')
    .trim();

/** The same in lines, without empty ones; what goes beyond `most` lines runs on in the last. */
export function plainLines(text: string, most: number): readonly string[] {
  const lines = text
    .split(lineEnd)
    .map(plainLine)
    .filter((line) => line !== '');
  return lines.length <= most ? lines : [...lines.slice(0, most - 1), lines.slice(most - 1).join(' ')];
}
