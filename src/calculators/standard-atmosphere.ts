import { checkNumber } from './check-number.ts';
import { isoGasConstantOfAir, usGasConstantOfAir } from './dry-air.ts';
import { standardAtmospherePa, standardGravity } from './exact-definitions.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

/*
 * The standard atmosphere.
 * Sources: U.S. Standard Atmosphere, 1976 (NOAA, NASA, U.S. Air Force; NOAA-S/T 76-1562), tables 2
 * and 4, eqs. 18, 23, 33a, 33b, 42; ISO 2533:1975, Standard Atmosphere, which differs in the gas constant only.
 */

/** Specific gas constant of dry air in J/(kg K). */
const gasConstants = {
  'us-1976': usGasConstantOfAir,
  'iso-2533': isoGasConstantOfAir,
} as const;

export type AtmosphereStandard = keyof typeof gasConstants;

/** Radius of the earth where gravity is standard, and the temperature at sea level. */
export const earthRadiusM = 6_356_766;
export const seaLevelTemperatureK = 288.15;

/** Base of each layer in geopotential metres, and how the temperature changes above it in K/m. */
export const atmosphereLayers = [
  [0, -0.0065],
  [11_000, 0],
  [20_000, 0.001],
  [32_000, 0.0028],
  [47_000, 0],
  [51_000, -0.0028],
  [71_000, -0.002],
] as const;

/** The relation is tabulated from −5 km; above 79 km the composition of the air changes. */
export const atmosphereHeightLimit = { min: -5_000, max: 79_000 } as const;

/** A height, geopotential or geometric, in metres above sea level. */
export type Height = { readonly geopotentialM: number } | { readonly geometricM: number };

export type AirAtHeight = {
  readonly geopotentialM: number;
  readonly geometricM: number;
  readonly temperatureK: number;
  readonly pressurePa: number;
  readonly densityKgPerM3: number;
};

/**
 * Temperature, pressure and density at a height.
 * Problems: `not-finite`, and `out-of-range` outside −5,000 m … 79,000 m.
 */
export function standardAtmosphere(
  height: Height,
  standard: AtmosphereStandard = 'us-1976',
): Result<AirAtHeight> {
  const [field, value] =
    'geopotentialM' in height ? ['geopotentialM', height.geopotentialM] : ['geometricM', height.geometricM];
  const problem = checkNumber(field, value, atmosphereHeightLimit);
  if (problem !== undefined) return fail(problem);
  const geopotentialM = 'geopotentialM' in height ? value : geopotentialFromGeometric(value);
  const geometricM = 'geometricM' in height ? value : geometricFromGeopotential(value);
  const { temperatureK, pressurePa } = airAt(geopotentialM, standard);
  const densityKgPerM3 = pressurePa / (gasConstants[standard] * temperatureK);
  return succeed({ geopotentialM, geometricM, temperatureK, pressurePa, densityKgPerM3 });
}

/**
 * The height at which the standard atmosphere has a pressure in pascals (pressure altitude).
 * Problems: `not-finite`, and `out-of-range` outside the pressures of the heights above.
 */
export function pressureAltitude(
  pressurePa: number,
  standard: AtmosphereStandard = 'us-1976',
): Result<{ readonly geopotentialM: number; readonly geometricM: number }> {
  const problem = checkNumber('pressurePa', pressurePa, {
    min: airAt(atmosphereHeightLimit.max, standard).pressurePa,
    max: airAt(atmosphereHeightLimit.min, standard).pressurePa,
  });
  if (problem !== undefined) return fail(problem);
  const base = basesOf(standard).findLast(({ pressurePa: basePa }) => pressurePa <= basePa);
  const { geopotentialM: from, temperatureK, pressurePa: fromPa, lapse } = base ?? seaLevel(standard);
  const ratio = pressurePa / fromPa;
  const perMetre = standardGravity / gasConstants[standard];
  const geopotentialM =
    lapse === 0
      ? from - (Math.log(ratio) * temperatureK) / perMetre
      : from + (temperatureK / lapse) * Math.expm1((-lapse / perMetre) * Math.log(ratio));
  return succeed({ geopotentialM, geometricM: geometricFromGeopotential(geopotentialM) });
}

/** Exponent of pressure over temperature in the lowest layer, g/(R L): 5.2559. */
export const barometricExponent = (standard: AtmosphereStandard = 'us-1976'): number =>
  standardGravity / (gasConstants[standard] * -atmosphereLayers[0][1]);

/** Geopotential height of a geometric one, both in metres (U.S. Standard Atmosphere 1976, eq. 18). */
export const geopotentialFromGeometric = (geometricM: number): number =>
  (earthRadiusM * geometricM) / (earthRadiusM + geometricM);

/** Geometric height of a geopotential one, both in metres (eq. 19). */
export const geometricFromGeopotential = (geopotentialM: number): number =>
  (earthRadiusM * geopotentialM) / (earthRadiusM - geopotentialM);

type Base = {
  readonly geopotentialM: number;
  readonly lapse: number;
  readonly temperatureK: number;
  readonly pressurePa: number;
};

const seaLevel = (standard: AtmosphereStandard): Base => basesOf(standard)[0];

/** State of the air at the base of every layer, each reached through the one below. */
function basesOf(standard: AtmosphereStandard): readonly [Base, ...Base[]] {
  const bases: [Base, ...Base[]] = [
    {
      geopotentialM: atmosphereLayers[0][0],
      lapse: atmosphereLayers[0][1],
      temperatureK: seaLevelTemperatureK,
      pressurePa: standardAtmospherePa,
    },
  ];
  let below: Base = bases[0];
  for (const [geopotentialM, lapse] of atmosphereLayers.slice(1)) {
    below = { geopotentialM, lapse, ...airAbove(below, geopotentialM, standard) };
    bases.push(below);
  }
  return bases;
}

const airAt = (geopotentialM: number, standard: AtmosphereStandard) => {
  const base = basesOf(standard).findLast(({ geopotentialM: from }) => geopotentialM >= from);
  return airAbove(base ?? seaLevel(standard), geopotentialM, standard);
};

/** Eqs. 23, 33a and 33b; below sea level the lowest layer goes on. */
function airAbove(base: Base, geopotentialM: number, standard: AtmosphereStandard) {
  const rise = geopotentialM - base.geopotentialM;
  const temperatureK = base.temperatureK + base.lapse * rise;
  const perMetre = standardGravity / gasConstants[standard];
  const logRatio =
    base.lapse === 0
      ? (-perMetre * rise) / base.temperatureK
      : (perMetre / base.lapse) * Math.log(base.temperatureK / temperatureK);
  return { temperatureK, pressurePa: base.pressurePa * Math.exp(logRatio) };
}
