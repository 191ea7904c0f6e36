/** The calculators, in the order in which somebody at a bench needs them. */
export const calculators = [
  {
    path: '/unit-converter/',
    title: 'Unit converter',
    what: 'One reading in every unit of pressure; also length, torque, temperature, volume, speed and thread pitch.',
  },
  {
    path: '/balance-analyser/',
    title: 'Balance analyser',
    what: 'Readings you have already: how far apart, whether that is real, and which way each screw has to go.',
  },
  {
    path: '/thread-travel-budget/',
    title: 'Thread-travel budget',
    what: 'How many turns are left each way, who runs out first, and the level that leaves the most thread.',
  },
  {
    path: '/flutter-and-repeats/',
    title: 'Flutter and repeats',
    what: 'Why the needle shakes, how long to wait after damping it, and how many readings a small difference needs.',
  },
  {
    path: '/gauge-comparison/',
    title: 'Gauge comparison',
    what: 'Several gauges on one take-off, or two exchanged: how far each is off, and how sure that is.',
  },
  {
    path: '/liquid-column/',
    title: 'Liquid column',
    what: 'How high a column stands, how long the tube must be, and what keeps the liquid out of the engine.',
  },
  {
    path: '/ambient-pressure/',
    title: 'Ambient pressure',
    what: 'The air around the engine from height or barometer, and what last year’s reading would be here.',
  },
  {
    path: '/exhaust-gas-in-a-room/',
    title: 'Exhaust gas in a room',
    what: 'How fast carbon monoxide gathers indoors: why the engine runs outdoors or on an extractor.',
  },
] as const;
