/** Questions as people type them that a tool answers, by its path. Pages of the handbook hold theirs as `asks`. */
export const toolQuestions: Readonly<Record<`/${string}/`, readonly string[]>> = {
  '/bench-session/': [
    'I have the readings, what now',
    'which screw do I turn next',
    'balance my carbs step by step',
  ],
  '/practice-engine/': [
    'can I practise before I touch my bike',
    'try balancing on a simulated engine',
    'carb sync simulator',
  ],
  '/unit-converter/': [
    'how many inches is 250 mm',
    'convert inHg to kPa',
    'what is 9 inHg in mmHg',
    'cmHg to inHg',
    'psi to bar',
    'mbar to mmHg',
    'Nm to lbf ft',
    'inches to mm',
  ],
  '/balance-analyser/': [
    'are my carbs balanced',
    'check my readings',
    'is the difference between two cylinders real',
    'how far apart are my cylinders',
  ],
  '/thread-travel-budget/': [
    'how many turns have I left',
    'will I run out of thread',
    'how far does a screw move in one turn',
  ],
  '/flutter-and-repeats/': [
    'how long must I wait after damping',
    'how many times should I read',
    'how often does the needle jump',
  ],
  '/gauge-comparison/': [
    'my two gauges disagree',
    'compare vacuum gauges',
    'calibrate my gauges against each other',
    'how far off is my gauge',
  ],
  '/liquid-column/': [
    'build my own manometer',
    'how long must the tube be',
    'water manometer height',
    'can oil be sucked into the engine from the manometer',
  ],
  '/ambient-pressure/': [
    'what is the air pressure at my altitude',
    'pressure at 1500 m',
    'QNH to station pressure',
    'barometer reading at height',
  ],
  '/exhaust-gas-in-a-room/': [
    'how fast does carbon monoxide build up',
    'ppm of CO in my garage',
    'how long until the CO limit',
  ],
  '/constants/': ['what value of gravity is used', 'list of all constants', 'density of mercury used'],
  '/calculators/': ['list of calculators'],
};
