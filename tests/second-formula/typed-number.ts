/*
 * A typed number once more, slowly: character by character, in whole numbers, with no pattern and nothing of the first
 * parser. It says the value, that a comma is ambiguous, or null for everything that is to be refused.
 */

const digits = '0123456789';
const isDigit = (character: string | undefined): boolean =>
  character !== undefined && character !== '' && digits.includes(character);
const isSpace = (character: string | undefined): boolean =>
  character !== undefined && character !== '' && character.trim() === '';
/** A group of three digits is not parted from the next by the end of a line. */
const isLineEnd = (character: string): boolean => '\n\r\u2028\u2029'.includes(character);
const vulgar: Readonly<Record<string, readonly [number, number]>> = {
  '½': [1, 2],
  '⅓': [1, 3],
  '⅔': [2, 3],
  '¼': [1, 4],
  '¾': [3, 4],
  '⅛': [1, 8],
  '⅜': [3, 8],
  '⅝': [5, 8],
  '⅞': [7, 8],
};

const whole = (run: string): bigint => {
  let sum = 0n;
  for (const digit of run) sum = sum * 10n + BigInt(digits.indexOf(digit));
  return sum;
};

/** top / bottom × 10^exponent as a double, refused beyond 1e±300. */
const toDouble = (top: bigint, bottom: bigint, exponent: number): number | null => {
  if (top === 0n) return 0;
  // Forty digits of the quotient; what is left is a power of ten.
  let shift = 40 - (String(top).length - String(bottom).length);
  if (shift < 0) shift = 0;
  const quotient = (top * 10n ** BigInt(shift)) / bottom;
  const size = String(quotient).length - 1 - shift + exponent;
  if (size < -300 || size > 300) return null;
  const first = String(quotient).slice(0, 25);
  const rest = String(quotient).length - first.length - shift + exponent;
  const double = Number(`${first}e${rest}`);
  return double >= 1e-300 && double <= 1e300 ? double : null;
};

class Reader {
  readonly text: string;
  at = 0;
  constructor(text: string) {
    this.text = text;
  }
  get next(): string | undefined {
    return this.text[this.at];
  }
  run(wanted: (character: string | undefined) => boolean): string {
    let taken = '';
    while (this.at < this.text.length && wanted(this.next)) taken += this.text[this.at++];
    return taken;
  }
  take(characters: string): boolean {
    const found = this.next !== undefined && characters.includes(this.next);
    if (found) this.at += 1;
    return found;
  }
  get ended(): boolean {
    return this.at === this.text.length;
  }
}

export function slowNumber(typed: string): number | 'ambiguous' | null {
  if (typed.length > 80) return null;
  const text = typed.trim();
  let negative = false;
  const start = new Reader(text);
  if (start.take('-−–')) negative = true;
  else start.take('+');
  start.run(isSpace);
  const body = text.slice(start.at);
  const size = fractionOf(body) ?? decimalOf(body);
  return typeof size === 'number' && negative && size !== 0 ? -size : size;
}

/** `1/2`, `9 1/2`, `9-1/2`, `9½`, `½`. */
function fractionOf(text: string): number | null {
  const reader = new Reader(text);
  const first = reader.run(isDigit);
  const gap = reader.at;
  if (first !== '' && !reader.take('-')) reader.run(isSpace);
  else reader.run(isSpace);
  const parted = reader.at > gap;
  const sign = reader.next === undefined ? undefined : vulgar[reader.next];
  if (sign) {
    reader.at += 1;
    const [top, bottom] = sign;
    if (!reader.ended) return null;
    return toDouble(whole(first) * BigInt(bottom) + BigInt(top), BigInt(bottom), 0);
  }
  if (first === '') return null;
  const second = reader.run(isDigit);
  if (second !== '' && !parted) return null;
  if (second === '' && text.slice(gap, reader.at).includes('-')) return null;
  reader.run(isSpace);
  if (!reader.take('/⁄∕')) return null;
  reader.run(isSpace);
  const last = reader.run(isDigit);
  if (last === '' || !reader.ended || whole(last) === 0n) return null;
  if (second === '') return toDouble(whole(first), whole(last), 0);
  if (whole(second) >= whole(last)) return null;
  return toDouble(whole(first) * whole(last) + whole(second), whole(last), 0);
}

/** `12`, `1.5`, `,5`, `1 234,5`, `1,234.5`, `1.5e3`. */
function decimalOf(text: string): number | 'ambiguous' | null {
  const reader = new Reader(text);
  const runs = [reader.run(isDigit)];
  const marks: string[] = [];
  const parts = (mark: string): boolean => ".,'’".includes(mark) || (isSpace(mark) && !isLineEnd(mark));
  while (reader.next !== undefined && parts(reader.next)) {
    marks.push(reader.next);
    reader.at += 1;
    runs.push(reader.run(isDigit));
  }
  let exponent = 0;
  if (reader.next === 'e' || reader.next === 'E') {
    reader.at += 1;
    const negative = reader.take('-');
    if (!negative) reader.take('+');
    const power = reader.run(isDigit);
    if (power === '') return null;
    exponent = Number(whole(power)) * (negative ? -1 : 1);
  }
  if (!reader.ended) return null;
  if (runs.join('') === '') return null;
  const first = runs[0]!;
  const value = (before: string, behind: string): number | null =>
    toDouble(whole(before + behind), 1n, exponent - behind.length);
  if (marks.length === 0) return value(first, '');
  const isMark = (mark: string): boolean => mark === '.' || mark === ',';
  const head = first.length >= 1 && first.length <= 3 && first[0] !== '0';
  if (marks.length === 1 && isMark(marks[0]!)) {
    if (first === '' && runs[1] === '') return null;
    if (marks[0] === ',' && head && runs[1]!.length === 3) return 'ambiguous';
    return value(first, runs[1]!);
  }
  // Groups of three, all parted alike, then at most one decimal mark of another kind.
  const group = marks[0]!;
  const last = marks.at(-1)!;
  const hasDecimals = last !== group;
  const groups = hasDecimals ? runs.slice(1, -1) : runs.slice(1);
  const between = hasDecimals ? marks.slice(0, -1) : marks;
  if (!head || groups.length === 0 || (hasDecimals && !isMark(last))) return null;
  if (between.some((mark) => mark !== group) || groups.some(({ length }) => length !== 3)) return null;
  return value(first + groups.join(''), hasDecimals ? runs.at(-1)! : '');
}
