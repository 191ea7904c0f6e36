import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  formatExact,
  formatFixed,
  parseNumber,
  parsePressure,
  pressureUnit,
  pressureUnits,
} from '../../src/calculators/index.ts';
import { anyCharacter } from '../any-character.ts';
import { tries } from '../property-runs.ts';

/**
 * A second parser that shares nothing with the first: it walks character by character, from the grammar in words,
 * and answers only where the text is one plain, grouped, mixed or fractional number.
 */
function slowly(text: string): number | 'ambiguous' | null {
  let at = 0;
  let sign = 1;
  const isDigit = (character: string | undefined): boolean =>
    character !== undefined && '0123456789'.includes(character);
  if (text[at] === '-' || text[at] === '−') [sign, at] = [-1, at + 1];
  const digits = (): string => {
    let run = '';
    while (isDigit(text[at])) run += text[at++];
    return run;
  };
  const pieces: string[] = [digits()];
  const marks: string[] = [];
  while (at < text.length) {
    const mark = text[at] ?? '';
    if (!['.', ',', ' ', '\u2009', '\u202f', "'", '/', '-'].includes(mark)) return null;
    marks.push(mark);
    at += 1;
    pieces.push(digits());
  }
  if (pieces.every((piece) => piece === '')) return null;
  const number = (piece: string | undefined): number => {
    let sum = 0;
    for (const digit of piece ?? '') sum = sum * 10 + '0123456789'.indexOf(digit);
    return sum;
  };
  if (marks.includes('/')) {
    if (pieces.includes('')) return null;
    if (marks.join('') === '/') return sign * (number(pieces[0]) / number(pieces[1]));
    const mixed = marks.length === 2 && marks[1] === '/' && (marks[0]?.trim() === '' || marks[0] === '-');
    return mixed && number(pieces[1]) < number(pieces[2])
      ? sign * (number(pieces[0]) + number(pieces[1]) / number(pieces[2]))
      : null;
  }
  if (marks.includes('-')) return null;
  const fractionOf = (piece: string): number => number(piece) / 10 ** piece.length;
  if (marks.length === 0) return sign * number(pieces[0]);
  const [first = '', ...rest] = pieces;
  const group = marks[0] ?? '';
  const plainGroup = group !== '.' && group !== ',';
  const last = marks.at(-1) ?? '';
  const groupedHead = /^[1-9]..?$|^[1-9]$/u.test(first);
  if (marks.length === 1 && !plainGroup) {
    if (group === ',' && groupedHead && rest[0]?.length === 3) return 'ambiguous';
    return sign * (number(first) + fractionOf(rest[0] ?? ''));
  }
  const ends = last === group ? rest.length : rest.length - 1;
  const groups = rest.slice(0, ends);
  if (!groupedHead || marks.slice(0, ends).some((mark) => mark !== group)) return null;
  if (groups.some((piece) => piece.length !== 3)) return null;
  if (last !== group && last !== '.' && last !== ',') return null;
  const whole = number([first, ...groups].join(''));
  return sign * (whole + (ends < rest.length ? fractionOf(rest.at(-1) ?? '') : 0));
}

const piece = fc.oneof(
  fc.integer({ min: 0, max: 9999 }).map(String),
  fc.integer({ min: 0, max: 20 }).map(String),
  fc.integer({ min: 100, max: 999 }).map(String),
  fc.constantFrom('', '0', '00', '000', '123', '500', '007'),
);
const numberLike = fc
  .tuple(
    fc.constantFrom('', '', '-', '−'),
    piece,
    fc.array(fc.tuple(fc.constantFrom('.', ',', ' ', '\u2009', '\u202f', "'", '/', '-'), piece), {
      maxLength: 3,
    }),
  )
  .map(([sign, head, tail]) => `${sign}${head}${tail.map(([mark, text]) => `${mark}${text}`).join('')}`)
  // Space at an end is trimmed before the grammar begins; a sign and a hyphen beside each other are told elsewhere.
  .filter((text) => text === text.trim() && !/[-−]\s|\s$|^[-−]\s/u.test(text) && !/\d\s*-\s+|\s-/u.test(text))
  .filter((text) => !/\s\/|\/\s|\s\s/u.test(text));

/** Inputs for the slow parser. */
const slowTries = tries(100_000);

describe('parseNumber(typed): laws', () => {
  it('agrees with a slow parser that shares nothing with it', () => {
    let understood = 0;
    let ambiguous = 0;
    fc.assert(
      fc.property(numberLike, (text) => {
        const slow = slowly(text);
        const fast = parseNumber(text);
        if (slow === 'ambiguous') {
          ambiguous += 1;
          expect(fast).toMatchObject({ ok: false, problem: { kind: 'ambiguous-number' } });
        } else if (slow === null || !Number.isFinite(slow)) {
          expect(fast.ok, text).toBe(false);
        } else {
          understood += 1;
          if (!fast.ok) throw new Error(`“${text}” is ${slow}, refused as ${fast.problem.kind}`);
          expect(Math.abs(fast.value.value - slow)).toBeLessThanOrEqual(1e-12 * Math.abs(slow));
        }
      }),
      slowTries,
    );
    expect(understood / slowTries.numRuns).toBeGreaterThan(0.1);
    expect(ambiguous / slowTries.numRuns).toBeGreaterThan(0.003);
  }, 600_000);

  it('a space in front, which leads past the short way for plain numbers, changes nothing', () => {
    const figures = fc.string({ unit: fc.constantFrom(...'00123456789.,'), maxLength: 18 });
    const units = fc.constantFrom(
      '',
      'e3',
      'e',
      '½',
      ...pressureUnits.flatMap(({ id, symbol }) => [id, symbol]),
    );
    const between = fc.constantFrom('', ' ', '  ', '.', '-', ' -', '\u202f');
    let understood = 0;
    fc.assert(
      fc.property(figures, between, units, (number, gap, unit) => {
        const text = `${number}${gap}${unit}`;
        const [plain, spaced] = ['', ' '].map((space) =>
          parsePressure(`${space}${text}`, pressureUnit('mmHg')),
        );
        expect(plain?.ok, text).toBe(spaced?.ok);
        if (!plain?.ok || !spaced?.ok) return;
        understood += 1;
        expect(plain.value, text).toEqual(spaced.value);
      }),
      slowTries,
    );
    expect(understood / slowTries.numRuns).toBeGreaterThan(0.1);
  }, 600_000);

  it('never throws and never gives NaN or an infinity, whatever is typed', () => {
    const signs = fc.constantFrom(..."0123456789.,-−+/eE½ \u202f'xN".split(''));
    const anything = fc.oneof(fc.string({ unit: anyCharacter }), fc.string({ unit: signs, maxLength: 12 }));
    fc.assert(
      fc.property(anything, (text) => {
        const parsed = parseNumber(text);
        if (parsed.ok) expect(Number.isFinite(parsed.value.value)).toBe(true);
        else expect(typeof parsed.problem.kind).toBe('string');
      }),
      tries(2000),
    );
  });

  it('reads back what the formatter writes, with either mark and either minus', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -1e9, max: 1e9 }),
        fc.constantFrom(0, 1, 2, 4),
        fc.constantFrom('point' as const, 'comma' as const),
        fc.constantFrom('true' as const, 'hyphen' as const),
        (scaled, decimals, mark, minus) => {
          const value = scaled / 10 ** decimals;
          const parsed = parseNumber(formatFixed(value, decimals, { mark, minus }));
          expect(parsed).toMatchObject({ ok: true, value: { decimals } });
          if (parsed.ok) expect(parsed.value.value).toBe(value === 0 ? 0 : value);
          expect(parseNumber(formatExact(value))).toMatchObject({ ok: true });
        },
      ),
    );
  });
});
