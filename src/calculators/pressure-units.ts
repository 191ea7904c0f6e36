import { once } from './once.ts';
import { pressureUnits } from './pressure-unit-table.ts';
import type { PressureUnit } from './pressure-unit.ts';
import { spellingOf } from './unit-spelling.ts';

/**
 * The pressure unit that somebody typed, or null. Spelling is forgiven (case, spaces, dots, brackets, raised
 * and lowered digits, ″ for inches and ′ for feet, a trailing “conventional”), meaning is not: `Mbar` and
 * `MPa` begin with mega and `mPa` with milli, a thousand and more away from what gauges show.
 */
export function findPressureUnit(typed: string): PressureUnit | null {
  const asPrinted = unitAsPrinted.get(typed);
  if (asPrinted !== undefined) return asPrinted;
  if (/^\s*(?:M(?:pa|Pa|b|bar)|m(?:pa|Pa|PA))\s*$/u.test(typed)) return null;
  return unitOfSpelling().get(spellingOf(typed)) ?? null;
}

/** Unit of an id that this package wrote; throws on any other, which is our own mistake. */
export function pressureUnit(id: string): PressureUnit {
  const unit = unitOfId.get(id);
  if (unit === undefined) throw new Error(`no pressure unit “${id}”`);
  return unit;
}

/** Pascals of so many of a unit. */
export const pascalsOf = (value: number, unit: PressureUnit): number => value * unit.pascals;

/** How many of a unit so many pascals are. */
export const inUnit = (pascals: number, unit: PressureUnit): number => pascals / unit.pascals;

/** A value in one unit as a value in another. */
export const convertPressure = (value: number, from: PressureUnit, to: PressureUnit): number =>
  from === to ? value : inUnit(pascalsOf(value, from), to);

const unitOfId = new Map(pressureUnits.map((unit) => [unit.id, unit]));

/** Found without forgiving anything: what most people type, and all that this site writes. */
const unitAsPrinted = new Map(
  pressureUnits.flatMap((unit) => [unit.id, unit.symbol].map((spelling) => [spelling, unit] as const)),
);

/** Made for the first spelling that has to be forgiven: it takes a phone longer than all else of the tables. */
const unitOfSpelling = once(
  () =>
    new Map(
      pressureUnits.flatMap((unit) =>
        [unit.id, unit.symbol, unit.name, ...unit.aliases].map(
          (spelling) => [spellingOf(spelling), unit] as const,
        ),
      ),
    ),
);
