import { longestNumber, parseNumber } from './parse-number.ts';
import type { ParsedNumber } from './parse-number.ts';
import { plainNumber } from './plain-number.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

/** A number and the unit that stood behind it; null if none did. */
export type ParsedQuantity<Unit> = { readonly number: ParsedNumber; readonly unit: Unit | null };

/** What the parser must know about a family of units. */
export type UnitFamily<Unit> = {
  /** The unit of a spelling, or null. */
  readonly find: (spelling: string) => Unit | null;
  /** Symbols to name when a spelling is not known. */
  readonly known: readonly string[];
};

// A number may hold spaces, marks and fraction signs; an apostrophe only if three digits follow. Matches at the start, if only nothing.
const numberPart = /(?:[\d\s.,/⁄∕¼-¾⅐-⅞↉+−–-]|['’](?=\d{3}))*(?:(?<=\d|[.,])e[+-]?\d+)?/iu;

/**
 * Reads a number and, if one follows, its unit: `12`, `12 inHg`, `12,5 cmHg`, `-0.4 bar`, `9 1/2 inHg`, `9½″Hg`.
 * The space between them may be of any width or missing. The grammar of the number is that of `parseNumber`.
 *
 * Problems: those of `parseNumber`, quoting all that was typed; unknown-unit; number-missing.
 */
export function parseQuantity<Unit>(
  typed: string,
  family: UnitFamily<Unit>,
  field?: string,
): Result<ParsedQuantity<Unit>> {
  const place = field === undefined ? {} : { field };
  if (typed.length > longestNumber)
    return fail({ kind: 'too-long', ...place, value: typed.length, limit: { max: longestNumber } });
  const plain = plainQuantity(typed, family);
  if (plain !== null) return succeed(plain);
  const { numberText, unitText } = partsOf(typed);
  const unit = unitText === '' ? null : family.find(unitText);

  if (numberText === '' && unitText !== '')
    return fail(
      unit === null ? { kind: 'not-a-number', ...place, typed } : { kind: 'number-missing', ...place, typed },
    );
  const number = parseNumber(numberText, field);
  if (!number.ok) return 'typed' in number.problem ? fail({ ...number.problem, typed }) : number;
  if (unitText !== '' && unit === null)
    return fail({ kind: 'unknown-unit', ...place, typed, unit: unitText, known: family.known });
  return succeed({ number: number.value, unit });
}

/** A plain number alone, or with at most one space and a known unit that begins with a letter; null for all else. */
function plainQuantity<Unit>(typed: string, family: UnitFamily<Unit>): ParsedQuantity<Unit> | null {
  const plain = plainNumber(typed);
  if (plain === null) return null;
  if (plain.end === typed.length) return { number: plain.number, unit: null };
  const behind = typed[plain.end] === ' ' ? plain.end + 1 : plain.end;
  const unit = isLetter(typed.charCodeAt(behind)) ? family.find(typed.slice(behind)) : null;
  return unit === null ? null : { number: plain.number, unit };
}

/** Of `A` to `Z` and `a` to `z`, which differ in one bit. */
const isLetter = (code: number): boolean => (code | 32) >= 97 && (code | 32) <= 122;

/**
 * What was typed with its one ambiguous comma settled: `1,234 inHg` as `1234 inHg` (grouped) or `1.234 inHg`
 * (decimal). For the buttons that ask which was meant.
 */
export const settleComma = (typed: string, meant: 'grouped' | 'decimal'): string =>
  typed.replace(',', meant === 'grouped' ? '' : '.');

/** The number part of what was typed, without its unit: `9 1/2` of `9 1/2 inHg`. */
export const withoutUnit = (typed: string): string => partsOf(typed).numberText;

/** What was typed behind the number: `inHg` of `9 1/2 inHg`. */
export const unitTextOf = (typed: string): string => partsOf(typed).unitText;

/** Both parts without the space around them. */
function partsOf(typed: string): { readonly numberText: string; readonly unitText: string } {
  const behind = typed.replace(numberPart, '');
  return { numberText: typed.slice(0, typed.length - behind.length).trim(), unitText: behind.trim() };
}
