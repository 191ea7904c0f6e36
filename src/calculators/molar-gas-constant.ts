/** Exact since 2019: the Avogadro constant in 1/mol and the Boltzmann constant in J/K. Source: SI Brochure, 9th edition (2019), table 1. */
export const avogadroPerMol = 6.02214076e23;
export const boltzmannJPerK = 1.380649e-23;

/** Exact: the molar gas constant, 8.314 462 618 153 24 J/(mol K). */
export const molarGasConstant = avogadroPerMol * boltzmannJPerK;
