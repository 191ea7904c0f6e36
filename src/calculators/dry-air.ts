/** Ratio of the specific heats of air, as the standard atmospheres and handbooks of engines have it: ISO 2533:1975, table 1. */
export const heatCapacityRatioOfAir = 1.4;

/**
 * Specific gas constant of dry air in J/(kg·K), rounded as handbooks of engines use it; see `isoGasConstantOfAir`.
 * Source: J. B. Heywood, Internal Combustion Engine Fundamentals (1988), section 3.3, from memory.
 */
export const dryAirGasConstant = 287.05;

/** The same in full, J/(kg·K). Source: ISO 2533:1975, Standard atmosphere, table 1. */
export const isoGasConstantOfAir = 287.05287;

/** The same of the U.S. Standard Atmosphere, 1976 (table 2): its molar gas constant, J/(kmol·K), over its molar mass, kg/kmol. */
export const usGasConstantOfAir = 8314.32 / 28.9644;
