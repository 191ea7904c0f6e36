/** The calculators, in the order in which somebody at a bench needs them; `asks` holds questions as people type them. */
export const calculators = [
  {
    path: '/unit-converter/',
    title: 'Unit converter',
    what: 'One reading in every unit of pressure; also length, torque, temperature, volume, speed and thread pitch.',
    asks: [
      'how many inches is 250 mm',
      'convert inHg to kPa',
      'what is 9 inHg in mmHg',
      'cmHg to inHg',
      'psi to bar',
      'mbar to mmHg',
      'Nm to lbf ft',
      'inches to mm',
    ],
  },
  {
    path: '/balance-analyser/',
    title: 'Balance analyser',
    what: 'Readings you have already: how far apart, whether that is real, and which way each screw has to go.',
    asks: [
      'are my carbs balanced',
      'check my readings',
      'is the difference between two cylinders real',
      'how far apart are my cylinders',
    ],
  },
  {
    path: '/thread-travel-budget/',
    title: 'Thread-travel budget',
    what: 'How many turns are left each way, who runs out first, and the level that leaves the most thread.',
    asks: [
      'how many turns have I left',
      'how much thread have I left',
      'will I run out of thread',
      'how far does a screw move in one turn',
    ],
  },
  {
    path: '/flutter-and-repeats/',
    title: 'Flutter and repeats',
    what: 'Why the needle shakes, how long to wait after damping it, and how many readings a small difference needs.',
    asks: [
      'how long must I wait after damping',
      'how many times should I read',
      'how often does the needle jump',
    ],
  },
  {
    path: '/gauge-comparison/',
    title: 'Gauge comparison',
    what: 'Several gauges on one take-off, or two exchanged: how far each is off, and how sure that is.',
    asks: [
      'my two gauges disagree',
      'compare vacuum gauges',
      'calibrate my gauges against each other',
      'how far off is my gauge',
    ],
  },
  {
    path: '/liquid-column/',
    title: 'Liquid column',
    what: 'How high a column stands, how long the tube must be, and what keeps the liquid out of the engine.',
    asks: [
      'build my own manometer',
      'how long must the tube be',
      'water manometer height',
      'can oil be sucked into the engine from the manometer',
    ],
  },
  {
    path: '/ambient-pressure/',
    title: 'Ambient pressure',
    what: 'The air around the engine from height or barometer, and what last year’s reading would be here.',
    asks: [
      'what is the air pressure at my altitude',
      'pressure at 1500 m',
      'QNH to station pressure',
      'barometer reading at height',
    ],
  },
  {
    path: '/exhaust-gas-in-a-room/',
    title: 'Exhaust gas in a room',
    what: 'How fast carbon monoxide gathers indoors: why the engine runs outdoors or on an extractor.',
    asks: ['how fast does carbon monoxide build up', 'ppm of CO in my garage', 'how long until the CO limit'],
  },
] as const;
