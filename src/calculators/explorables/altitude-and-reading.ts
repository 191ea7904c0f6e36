import { ambientPressure } from '../ambient-pressure.ts';
import { carryReading } from '../carried-reading.ts';
import { standardAtmospherePa } from '../exact-definitions.ts';
import { formatFixed } from '../format-number.ts';
import { formatPressure } from '../format-pressure.ts';
import { pressureFigures } from '../pressure-figures.ts';
import { inUnit, pascalsOf, pressureUnit } from '../pressure-units.ts';
import { absolutePressurePa, depressionPa } from '../quantities.ts';
import { certain } from './certain.ts';
import type { Curves } from './curves.ts';

export const heightMLimits = { min: 0, max: 3000, step: 100 } as const;
/** Invented: where the page begins, and what the gauge showed at sea level. */
export const heightMExample = 1500;
const seaReadingMmHg = 250;

export type AltitudeShown = {
  readonly ambientPa: number;
  readonly sameOpeningPa: number;
  readonly sameChargePa: number;
  readonly height: string;
  readonly said: string;
  readonly curves: Curves;
  readonly plotWords: string;
};

/** A reading from the sea at a height of the standard atmosphere, between the two assumptions of `carryReading`. */
function readingAt(heightM: number) {
  const ambientPa = certain(ambientPressure({ from: 'altitude', height: { geopotentialM: heightM } }));
  const { sameOpeningPa, sameChargePa } = certain(
    carryReading({
      depressionPa: depressionPa(pascalsOf(seaReadingMmHg, pressureUnit('mmHg'))),
      thereAmbientPa: absolutePressurePa(standardAtmospherePa),
      hereAmbientPa: ambientPa,
    }),
  );
  if (sameChargePa === null) throw new RangeError(`no air is left for the same charge at ${heightM} m`);
  return { ambientPa, sameOpeningPa, sameChargePa };
}

export function readingAtHeight(heightM: number): AltitudeShown {
  const mmHg = pressureUnit('mmHg');
  const { withUnit } = pressureFigures('mmHg', 0, 'point');
  const here = readingAt(heightM);
  const top = readingAt(heightMLimits.max);
  const height = `${formatFixed(heightM, 0)}\u00a0m`;
  const air = `${formatPressure(here.ambientPa, 'hPa', 3)} of air`;
  const heights = Array.from({ length: 31 }, (_, k) => (heightMLimits.max * k) / 30);
  const curve = (name: string, of: (reading: typeof here) => number) => ({
    name,
    points: heights.map((each) => [each, inUnit(of(readingAt(each)), mmHg)] as const),
    atY: inUnit(of(here), mmHg),
  });
  return {
    ...here,
    height,
    said:
      heightM === 0
        ? `At sea level, in ${air}, the gauge shows ${withUnit(here.sameOpeningPa)}.`
        : `At ${height}, in ${air}, the same engine shows ${withUnit(here.sameOpeningPa)} with every screw untouched, and ${withUnit(here.sameChargePa)} once its speed has been set again.`,
    plotWords: `Depression against the height, from ${withUnit(pascalsOf(seaReadingMmHg, mmHg))} at sea level down to ${withUnit(top.sameOpeningPa)} with the screws untouched and ${withUnit(top.sameChargePa)} with the speed set again, at ${formatFixed(heightMLimits.max, 0)}\u00a0m.`,
    curves: {
      x: { low: heightMLimits.min, high: heightMLimits.max, unit: 'm' },
      y: { low: 0, high: seaReadingMmHg + 50, scale: 'linear', unit: mmHg.symbol },
      curves: [
        curve('screws untouched', ({ sameOpeningPa }) => sameOpeningPa),
        curve('speed set again', ({ sameChargePa }) => sameChargePa),
      ],
      levels: [],
      atX: heightM,
    },
  };
}

export function altitudeFinding(): string {
  const { withUnit, number } = pressureFigures('mmHg', 0, 'point');
  const here = readingAt(heightMExample);
  return `Thinner air leaves less to draw on: ${withUnit(pascalsOf(seaReadingMmHg, pressureUnit('mmHg')))} at sea level becomes ${number(here.sameChargePa)} to ${withUnit(here.sameOpeningPa)} at ${formatFixed(heightMExample, 0)}\u00a0m. All carburettors change by the same share, so a level set stays level.`;
}
