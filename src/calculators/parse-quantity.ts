import { longestNumber, parseNumber } from './parse-number.ts';
import type { ParsedNumber } from './parse-number.ts';
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

// A number may hold spaces, marks and fraction signs; a hyphen or an apostrophe only if a digit follows.
const numberPart = /^(?:[\d\s.,/⁄∕¼-¾⅐-⅞↉+−–-]|['’](?=\d{3}))*(?:(?<=\d|[.,])e[+-]?\d+)?/iu;

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
  const text = typed.trim();
  const behind = text.replace(numberPart, '');
  const numberText = text.slice(0, text.length - behind.length);
  const unitText = behind.trim();
  const unit = unitText === '' ? null : family.find(unitText);

  if (numberText.trim() === '' && unitText !== '')
    return fail(
      unit === null ? { kind: 'not-a-number', ...place, typed } : { kind: 'number-missing', ...place, typed },
    );
  const number = parseNumber(numberText, field);
  if (!number.ok) return 'typed' in number.problem ? fail({ ...number.problem, typed }) : number;
  if (unitText !== '' && unit === null)
    return fail({ kind: 'unknown-unit', ...place, typed, unit: unitText, known: family.known });
  return succeed({ number: number.value, unit });
}

/**
 * What was typed with its one ambiguous comma settled: `1,234 inHg` as `1234 inHg` (grouped) or `1.234 inHg`
 * (decimal). For the buttons that ask which was meant.
 */
export const settleComma = (typed: string, meant: 'grouped' | 'decimal'): string =>
  typed.replace(',', meant === 'grouped' ? '' : '.');

/** The number part of what was typed, without its unit: `9 1/2` of `9 1/2 inHg`. */
export const withoutUnit = (typed: string): string => {
  const text = typed.trim();
  return text.slice(0, text.length - text.replace(numberPart, '').length).trim();
};

/** What was typed behind the number: `inHg` of `9 1/2 inHg`. */
export const unitTextOf = (typed: string): string => typed.trim().replace(numberPart, '').trim();
