/** The parts of the site that the head names, and the rest. */
export type Section = 'bench' | 'handbook' | 'calculators' | 'checklists' | 'search' | 'about';
