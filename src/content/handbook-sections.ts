/** The parts of the handbook, in reading order. */
export const handbookSections = {
  start: 'Start',
  generations: 'Kinds of linkage',
  bench: 'At the bench',
  units: 'Units and instruments',
  threads: 'Threads',
  safety: 'Safety',
  about: 'About',
} as const;

/** Kinds of facts, and how a page marks each. */
export const originMarks = {
  source: 'A number in brackets names the source of a fact.',
  practice: 'What has no mark is common practice of the trade.',
  simulation: 'Figures called “seen in simulation” come from invented engines, not from real ones.',
  memory: 'What is marked “from memory” has not been looked up again.',
  invented: 'The examples are invented, and say so.',
} as const;
