/** What each question of the set-up is called, beside it and in the summary of what is wrong. */
export const fieldLabels = {
  carburettors: 'How many carburettors?',
  generation: 'What do the screws move?',
  fixed: 'Which one is left alone?',
  groups: 'Groups of carburettors, one for each screw',
  opens: 'Which way opens a screw?',
  unit: 'Unit of the gauge',
  resolution: 'Finest step you can read on the gauge',
  flutter: 'Swing of the needle, each way',
  tolerance: 'All within',
  rpm: 'Engine speed for every reading',
  readings: 'Readings you already have',
  ambient: 'Ambient pressure',
  lockShift: 'Slip on locking',
  confidence: 'Certainty',
  effect: 'Effect of a turn, from an earlier session',
} as const;

/** The label of a field by its name, for the summary. */
export const labelOf = (field: string): string =>
  Object.entries(fieldLabels).find(([name]) => name === field)?.[1] ?? 'Thread left';
