import { succeed } from './result.ts';
import type { Result } from './result.ts';
import { geopotentialFromGeometric, pressureAltitude, standardAtmosphere } from './standard-atmosphere.ts';
import type { AtmosphereStandard, Height } from './standard-atmosphere.ts';

const geopotentialOf = (height: Height): number =>
  'geopotentialM' in height ? height.geopotentialM : geopotentialFromGeometric(height.geometricM);

/**
 * The pressure at a height, in pascals, from the setting that makes an altimeter show that height (QNH): the standard
 * atmosphere's pressure as far above the height of the setting as the place is above the sea.
 *
 * A sea-level pressure of a weather report is reduced with the temperature of the day and differs from the setting by a
 * few hectopascals in the hills; the United States take 0.3 hPa off first (Smithsonian Meteorological Tables, 1951).
 * Problems: those of `pressureAltitude` and `standardAtmosphere`.
 * Source: ISO 2533:1975, eqs. of the lowest layer; the setting as the International Civil Aviation Organization defines it.
 */
export function stationPressure(
  settingPa: number,
  height: Height,
  standard: AtmosphereStandard = 'us-1976',
): Result<number> {
  const ofSetting = pressureAltitude(settingPa, standard);
  if (!ofSetting.ok) return ofSetting;
  const air = standardAtmosphere(
    { geopotentialM: ofSetting.value.geopotentialM + geopotentialOf(height) },
    standard,
  );
  return air.ok ? succeed(air.value.pressurePa) : air;
}

/** The setting that a barometer's pressure at a height asks for, in pascals: the inverse of `stationPressure`. */
export function altimeterSetting(
  stationPa: number,
  height: Height,
  standard: AtmosphereStandard = 'us-1976',
): Result<number> {
  const ofStation = pressureAltitude(stationPa, standard);
  if (!ofStation.ok) return ofStation;
  const air = standardAtmosphere(
    { geopotentialM: ofStation.value.geopotentialM - geopotentialOf(height) },
    standard,
  );
  return air.ok ? succeed(air.value.pressurePa) : air;
}
