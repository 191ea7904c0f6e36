import { carryReading } from './carried-reading.ts';
import type { CarriedReading } from './carried-reading.ts';
import { standardAtmospherePa } from './exact-definitions.ts';
import { absolutePressurePa, depressionPa } from './quantities.ts';
import type { AbsolutePressurePa, DepressionPa } from './quantities.ts';
import { succeed } from './result.ts';
import type { Result } from './result.ts';
import { pressureAltitude, standardAtmosphere } from './standard-atmosphere.ts';
import type { Height } from './standard-atmosphere.ts';
import { stationPressure } from './station-pressure.ts';

/** How a place is known. */
export type AmbientPlace =
  /** By its height alone, in the standard atmosphere. */
  | { readonly from: 'altitude'; readonly height: Height }
  /** By its height and the setting that makes an altimeter show it. */
  | { readonly from: 'setting'; readonly height: Height; readonly settingPa: number }
  /** By a barometer that stands there and shows its own pressure, not that of the sea. */
  | { readonly from: 'barometer'; readonly stationPa: number };

/** The ambient pressure of a place, in pascals. Problems: those of `standardAtmosphere` and `stationPressure`. */
export function ambientPressure(place: AmbientPlace): Result<AbsolutePressurePa> {
  if (place.from === 'barometer') return succeed(absolutePressurePa(place.stationPa));
  const pascals =
    place.from === 'setting'
      ? stationPressure(place.settingPa, place.height)
      : standardPressure(place.height);
  return pascals.ok ? succeed(absolutePressurePa(pascals.value)) : pascals;
}

function standardPressure(height: Height): Result<number> {
  const air = standardAtmosphere(height);
  return air.ok ? succeed(air.value.pressurePa) : air;
}

export type AmbientQuestion = {
  readonly place: AmbientPlace;
  /** A reading taken elsewhere, and where; null if there is none. */
  readonly reading: { readonly depressionPa: number; readonly place: AmbientPlace } | null;
};

export type AmbientAnswer = {
  readonly ambientPa: AbsolutePressurePa;
  /** No gauge can show more: at this depression nothing is left in the intake. */
  readonly largestDepressionPa: DepressionPa;
  /** Of the standard atmosphere at sea level. */
  readonly shareOfSeaLevel: number;
  /** Height at which the standard atmosphere has this pressure, in geopotential metres. */
  readonly pressureAltitudeM: number;
  readonly carried: (CarriedReading & { readonly thereAmbientPa: AbsolutePressurePa }) | null;
};

/**
 * The air around an engine: its pressure, the largest depression that it allows, and what a reading from elsewhere
 * would be here.
 * Problems: those of `ambientPressure`, `pressureAltitude` and `carryReading`.
 * Source: U.S. Standard Atmosphere, 1976; ISO 2533:1975.
 */
export function computeAmbientPressure({ place, reading }: AmbientQuestion): Result<AmbientAnswer> {
  const here = ambientPressure(place);
  if (!here.ok) return here;
  const altitude = pressureAltitude(here.value);
  if (!altitude.ok) return altitude;
  const carried = reading === null ? succeed(null) : carriedHere(reading, here.value);
  if (!carried.ok) return carried;
  return succeed({
    ambientPa: here.value,
    largestDepressionPa: depressionPa(here.value),
    shareOfSeaLevel: here.value / standardAtmospherePa,
    pressureAltitudeM: altitude.value.geopotentialM,
    carried: carried.value,
  });
}

function carriedHere(
  reading: NonNullable<AmbientQuestion['reading']>,
  hereAmbientPa: AbsolutePressurePa,
): Result<NonNullable<AmbientAnswer['carried']>> {
  const there = ambientPressure(reading.place);
  if (!there.ok) return there;
  const thereAmbientPa = there.value;
  const carried = carryReading({
    depressionPa: depressionPa(reading.depressionPa),
    thereAmbientPa,
    hereAmbientPa,
  });
  return carried.ok ? succeed({ ...carried.value, thereAmbientPa }) : carried;
}
