/**
 * Definitions that units are composed from. The exact ones are exact by international agreement; the densities
 * of the conventional columns are exact by convention; the measured densities carry their last digit as doubt.
 *
 * Sources: A. Thompson and B. N. Taylor, Guide for the Use of the International System of Units (SI),
 * NIST Special Publication 811, 2008, appendix B; ISO 80000-4:2019, annex; International yard and pound
 * agreement, 1959; General Conference on Weights and Measures, resolutions of 1901 (g0) and 1954 (atmosphere).
 */

/** Exact: the inch, the foot and the pound (1959). */
export const metresPerInch = 0.0254;
export const inchesPerFoot = 12;
export const kilogramsPerPound = 0.45359237;
export const feetPerYard = 3;
export const feetPerMile = 5280;
export const ouncesPerPound = 16;

/** Exact: the nautical mile (1929); a knot is one an hour. */
export const metresPerNauticalMile = 1852;

/** Exact: the gallon of the United States, and that of the United Kingdom (Units of Measurement Regulations 1995). */
export const cubicInchesPerUsGallon = 231;
export const litresPerImperialGallon = 4.54609;
/** Exact: how the two gallons are divided. */
export const usFluidOuncesPerGallon = 128;
export const imperialFluidOuncesPerGallon = 160;
export const pintsPerGallon = 8;
export const quartsPerGallon = 4;

/** Exact: 0 °C, which is 32 °F, on the kelvin scale; nine degrees Fahrenheit are five kelvins. */
export const zeroCelsiusKelvins = 273.15;
export const zeroCelsiusFahrenheit = 32;
export const fahrenheitDegreesPerKelvin = 9 / 5;

/** Exact: minutes and hours. */
export const secondsPerMinute = 60;
export const minutesPerHour = 60;
export const secondsPerHour = 3600;

/** Exact: standard acceleration of free fall, m/s² (1901). */
export const standardGravity = 9.80665;

/** Exact: the standard atmosphere, Pa (1954). It is also the default ambient pressure: standard sea level. */
export const standardAtmospherePa = 101325;

/** Exact: the torr is 1/760 of the standard atmosphere. */
export const torrPerAtmosphere = 760;

/** Conventional densities, kg/m³: exact by convention, near mercury at 0 °C and water at 4 °C. */
export const conventionalMercuryDensity = 13595.1;
export const conventionalWaterDensity = 1000;

/** Measured, kg/m³: mercury at 0 °C (32 °F) on the scale of 1990. From memory; it gives the 3386.38 Pa of SP 811. */
export const mercuryDensityAt0Celsius = 13595.08;

/** Measured, kg/m³: mercury at 60 °F; the density behind 3376.85 Pa of SP 811, appendix B.8. */
export const mercuryDensityAt60Fahrenheit = 13556.8;

/** Measured, kg/m³: water at 60 °F; the density behind 248.84 Pa of SP 811, appendix B.8. */
export const waterDensityAt60Fahrenheit = 999.001;

/** Measured, kg/m³: water at its densest, 4 °C (39.2 °F); the density behind 98.0638 Pa of SP 811, appendix B.8. */
export const waterDensityAt4Celsius = 999.972;
