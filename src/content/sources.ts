/**
 * The bibliography. Pages name their sources by id; an unknown id fails the build.
 * `seen` says how far we checked: the document itself, a copy or a quotation of it, or memory alone; `own` is ours.
 */

export const howSeen = {
  own: 'no document to look up',
  read: 'seen in the document itself or in its publisher’s abstract',
  copy: 'seen in a copy, a table or a quotation of it',
  memory: 'quoted from memory: look it up before you lean on it',
} as const;

export type Source = {
  readonly citation: string;
  /** What we took from it, with the place in it where we know it. */
  readonly taken: string;
  readonly seen: keyof typeof howSeen;
};

export const sources = {
  practice: {
    citation: 'Common practice of the trade: no published source.',
    taken:
      'The order of the work, the speed of 2000 to 2500 rpm, the warm-up of 5 to 8 minutes, damping, venting, holding the screw while the nut is nipped, the cold start on the next day.',
    seen: 'own',
  },
  simulation: {
    citation: 'Our own simulation of invented engines, 300 to 400 a case.',
    taken:
      'How many looks at the gauge the advice needs, and how often it is wrong. No real engine was measured for these figures.',
    seen: 'own',
  },
  gum: {
    citation:
      'Evaluation of measurement data: Guide to the expression of uncertainty in measurement, JCGM 100, 2008.',
    taken:
      'Standard uncertainty of a quantity spread evenly between two limits (4.3.7), and of the resolution of an indication (F.2.2.1).',
    seen: 'copy',
  },
  si: {
    citation:
      'The International System of Units, 9th edition, Bureau International des Poids et Mesures, 2019.',
    taken: 'Pascal, hectopascal, kilopascal; bar and millibar as multiples of them.',
    seen: 'copy',
  },
  sp811: {
    citation:
      'A. Thompson and B. N. Taylor, Guide for the Use of the International System of Units, NIST Special Publication 811, 2008, appendix B.',
    taken:
      'Torr, pound per square inch, standard and technical atmosphere; columns of mercury and water at 60 °F and 39.2 °F.',
    seen: 'copy',
  },
  iso80000: {
    citation: 'ISO 80000-4, Quantities and units, part 4: Mechanics, 2019.',
    taken: 'The conventional millimetre of mercury: 13 595.1 kg/m³ and 9.806 65 m/s².',
    seen: 'copy',
  },
  'niosh-idlh': {
    citation:
      'Documentation for Immediately Dangerous to Life or Health Concentrations: carbon monoxide (630-08-0), National Institute for Occupational Safety and Health.',
    taken: 'Limits for work in the United States: 50 ppm over 8 hours, a ceiling of 200 ppm.',
    seen: 'read',
  },
  earnest: {
    citation:
      'G. S. Earnest, R. L. Mickelsen, J. B. McCammon and D. M. O’Brien, Carbon monoxide poisonings from small, gasoline-powered, internal combustion engines: just what is a “well-ventilated area”?, American Industrial Hygiene Association Journal 58, 1997, 787–791.',
    taken:
      'Time for the exhaust of a 5 hp engine to reach 200 ppm and 1200 ppm in rooms of several sizes and air changes.',
    seen: 'read',
  },
  'niosh-alert': {
    citation:
      'Preventing Carbon Monoxide Poisoning from Small Gasoline-Powered Engines and Tools, joint alert of NIOSH, CPSC, OSHA, EPA and the Colorado Department of Public Health and Environment, 1996.',
    taken: 'Open doors, open windows and fans do not guarantee safety.',
    seen: 'read',
  },
  'who-2000': {
    citation: 'Air Quality Guidelines for Europe, 2nd edition, World Health Organization, 2000.',
    taken: 'Guidelines for carbon monoxide over 15, 30 and 60 minutes.',
    seen: 'copy',
  },
  'who-2010': {
    citation: 'WHO Guidelines for Indoor Air Quality: Selected Pollutants, World Health Organization, 2010.',
    taken: 'Guidelines for carbon monoxide over 1 hour and 8 hours.',
    seen: 'memory',
  },
  'who-2021': {
    citation: 'WHO Global Air Quality Guidelines, World Health Organization, 2021.',
    taken: 'Guideline for carbon monoxide over 24 hours.',
    seen: 'copy',
  },
  'poison-help': {
    citation: 'Carbon monoxide, Poison Help, United States Health Resources and Services Administration.',
    taken: 'No colour and no smell; symptoms like those of flu; go outside at once and call for help.',
    seen: 'read',
  },
  minamata: {
    citation: 'Minamata Convention on Mercury, United Nations, 2013, annex A, part I.',
    taken: 'Manometers and barometers with mercury are no longer to be made, imported or exported.',
    seen: 'copy',
  },
  'unep-mercury': {
    citation:
      'Mercury-containing medical measuring devices, Global Mercury Partnership, United Nations Environment Programme.',
    taken: 'What mercury does to nerves, lungs and kidneys.',
    seen: 'read',
  },
  heywood: {
    citation: 'J. B. Heywood, Internal Combustion Engine Fundamentals, McGraw-Hill, 1988, appendix C.',
    taken: 'Flow of a gas through a restriction: the flow function and the critical pressure ratio.',
    seen: 'memory',
  },
  kalman: {
    citation:
      'R. E. Kalman, A new approach to linear filtering and prediction problems, Journal of Basic Engineering 82, 1960, 35–45.',
    taken: 'How an estimate and its uncertainty are brought up to date by each reading.',
    seen: 'memory',
  },
  en837: {
    citation: 'EN 837-1, Pressure gauges, part 1: Bourdon tube pressure gauges, 1998, table 11.',
    taken: 'Accuracy class: the largest error as a percentage of the span.',
    seen: 'copy',
  },
} as const satisfies Record<string, Source>;

export type SourceId = keyof typeof sources;

export const sourceIds = Object.keys(sources) as [SourceId, ...SourceId[]];
