import { fahrenheitDegreesPerKelvin } from './exact-definitions.ts';

/** α ρ of lubricating oils at 60 °F, in kg/m³ per °F. */
export const oilExpansionTimesDensity = 0.34878;

/**
 * Cubic expansion of a lubricating oil per kelvin, from its density in kg/m³: 0.34878 / ρ per °F.
 * Source: American Petroleum Institute, Manual of Petroleum Measurement Standards, chapter 11.1 (ASTM D1250), the
 * commodity group of lubricating oils, for the density at 60 °F; ours at 20 °C differs by 0.3 per cent. Seen in a copy.
 */
export const oilExpansionPerK = (kgPerM3: number): number =>
  (oilExpansionTimesDensity / kgPerM3) * fahrenheitDegreesPerKelvin;
