/** The sentence that no figure replaces. */
export const runOutdoors =
  'Run the engine outdoors, or on an extractor that is fixed to its pipe. No figure here, however low, makes it right to run an engine in a room.';

/** What each part of the answer cannot know. */
export const notKnown = {
  air: [
    'How the air mixes. Near the pipe there is far more than this mean.',
    'Where your head is.',
    'What wind, walls, gaps and doors let through at this moment.',
    'How this engine burns today. A cold, choked or misfiring one gives more.',
    'Other gases in the exhaust, and the oxygen that it uses up.',
  ],
  plot: [
    'The gas beside the pipe and in the corners. The curve is a mean of the room.',
    'A gust, a door, an engine that slows, chokes or is revved. The curve is smooth because they are left out.',
  ],
  limits: [
    'The limits and the law of your country.',
    'Whether an alarm is there, works, and is heard.',
    'What was breathed before, and elsewhere.',
    'Who is in the room. Limits for work are made for healthy adults.',
  ],
  blood: [
    'Your health: heart, lungs, blood.',
    'Pregnancy, children, older people, animals. They come to harm sooner.',
    'Height above the sea, where there is less oxygen.',
    'Smoking. A smoker starts with several times as much.',
    'How hard you work. Harder work takes up more.',
    'What you will feel. Confusion can come before any warning.',
  ],
} as const;
