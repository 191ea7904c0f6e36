/** Two-sided 95 % coverage factor of the normal distribution (JCGM 100:2008, table G.1). */
export const coverageFactorAt95 = 1.96;

/** Half the width of the interval that holds a normal value with 95 %, from its standard uncertainty. */
export const widthAt95 = (standardUncertainty: number): number => coverageFactorAt95 * standardUncertainty;
