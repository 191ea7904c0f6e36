import { zeroCelsiusKelvins } from './exact-definitions.ts';
import type { MeasureFamily, MeasureUnit } from './measure-unit.ts';
import { spellingOf } from './unit-spelling.ts';

/** The unit of a family that somebody typed, or null; spelling is forgiven as `spellingOf` says. */
export function findMeasureUnit(typed: string, family: MeasureFamily): MeasureUnit | null {
  const spelling = spellingOf(typed);
  return (
    family.units.find((unit) =>
      [unit.id, unit.symbol, unit.name, ...unit.aliases].some((each) => spellingOf(each) === spelling),
    ) ?? null
  );
}

/** The unit of an id that this package wrote; throws on any other, which is our own mistake. */
export function measureUnit(family: MeasureFamily, id: string): MeasureUnit {
  const found = family.units.find((unit) => unit.id === id);
  if (found === undefined) throw new Error(`no unit of ${family.name} “${id}”`);
  return found;
}

/** A figure in a unit as a value in the SI unit of its family. */
export const toSi = (figure: number, { scale }: MeasureUnit): number => {
  switch (scale.kind) {
    case 'proportional':
      return figure * scale.factor;
    case 'temperature':
      return (figure - scale.atZeroCelsius) / scale.degreesPerKelvin + zeroCelsiusKelvins;
    case 'reciprocal':
      return scale.factor / figure;
  }
};

/** A value in the SI unit of a family as a figure in one of its units. */
export const fromSi = (value: number, { scale }: MeasureUnit): number => {
  switch (scale.kind) {
    case 'proportional':
      return value / scale.factor;
    case 'temperature':
      return (value - zeroCelsiusKelvins) * scale.degreesPerKelvin + scale.atZeroCelsius;
    case 'reciprocal':
      return scale.factor / value;
  }
};

/**
 * A figure in one unit as a figure in another of the same family. Temperatures go from scale to scale by way of
 * 0 °C, not of absolute zero, so that 32 °F is 0 °C and not the tail of a binary fraction.
 */
export function convertMeasure(figure: number, from: MeasureUnit, to: MeasureUnit): number {
  if (from === to) return figure;
  if (from.scale.kind === 'temperature' && to.scale.kind === 'temperature')
    return (
      ((figure - from.scale.atZeroCelsius) / from.scale.degreesPerKelvin) * to.scale.degreesPerKelvin +
      to.scale.atZeroCelsius
    );
  return fromSi(toSi(figure, from), to);
}
