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
  'own-browser': {
    citation:
      'Our own measurement of version 0.1.0 in Chromium 156, on a desk machine whose processor and network were slowed, 28 November 2026.',
    taken: 'How soon pages and answers are there, and what they weigh. No telephone was measured.',
    seen: 'own',
  },
  gum: {
    citation:
      'Evaluation of measurement data: Guide to the expression of uncertainty in measurement, JCGM 100, 2008.',
    taken:
      'Standard uncertainty of a mean (4.2.3), of a quantity spread evenly between two limits (4.3.7) or mostly in their middle (4.3.9), and of the resolution of an indication (F.2.2.1); effective degrees of freedom (G.4.1).',
    seen: 'copy',
  },
  si: {
    citation:
      'The International System of Units, 9th edition, Bureau International des Poids et Mesures, 2019.',
    taken:
      'Pascal, bar, litre, minute and hour; degree Celsius; radian; standard acceleration of free fall; Avogadro and Boltzmann constants (table 1).',
    seen: 'copy',
  },
  sp811: {
    citation:
      'A. Thompson and B. N. Taylor, Guide for the Use of the International System of Units, NIST Special Publication 811, 2008, appendix B.',
    taken:
      'Torr, pound per square inch, standard and technical atmosphere; columns of mercury and water at 60 °F and 39.2 °F; inch, pound, gallons, knot and degree Fahrenheit.',
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
    taken:
      'Guidelines for carbon monoxide over 15, 30 and 60 minutes and 8 hours, made so that 2.5 % carboxyhaemoglobin is not passed.',
    seen: 'copy',
  },
  'who-2010': {
    citation: 'WHO Guidelines for Indoor Air Quality: Selected Pollutants, World Health Organization, 2010.',
    taken: 'Guidelines for carbon monoxide over 15 minutes, 1 hour, 8 hours and 24 hours.',
    seen: 'memory',
  },
  'who-2021': {
    citation: 'WHO Global Air Quality Guidelines, World Health Organization, 2021.',
    taken: 'Guideline for carbon monoxide over 24 hours.',
    seen: 'copy',
  },
  eh40: {
    citation: 'EH40/2005 Workplace exposure limits, 4th edition, Health and Safety Executive, 2020, table 1.',
    taken: 'Limits for work in Great Britain: 20 ppm over 8 hours and 100 ppm over 15 minutes.',
    seen: 'copy',
  },
  'eu-carbon-monoxide': {
    citation:
      'Directive 2004/37/EC, annex III, as amended by Directive (EU) 2022/431, listed by the European Chemicals Agency.',
    taken: 'Limits for work in the European Union: 20 ppm over 8 hours and 100 ppm over a short time.',
    seen: 'copy',
  },
  'hse-exhaust': {
    citation: 'Vehicle exhaust emissions, motor vehicle repair, Health and Safety Executive (web page).',
    taken:
      'Exhaust reaches harmful concentrations quickly, above all from cold engines; extraction at the tail pipe while an engine runs; no reliance on open doors or on a catalytic converter.',
    seen: 'read',
  },
  'sja-carbon-monoxide': {
    citation: 'Carbon monoxide poisoning, first aid advice, St John Ambulance (web page).',
    taken: 'Call first; fresh air; do not enter a place that is full of fume.',
    seen: 'read',
  },
  'noise-at-work': {
    citation: 'The Control of Noise at Work Regulations 2005, United Kingdom, SI 2005/1643.',
    taken:
      'Daily exposure of 80 and 85 dB at which an employer must act, and the limit of 87 dB; 3 dB more halve the time.',
    seen: 'copy',
  },
  'hse-petrol': {
    citation: 'Staying safe while storing and using petrol, Health and Safety Executive (web page).',
    taken: 'Petrol gives off a vapour that is easily set on fire; engines cool down before they are filled.',
    seen: 'read',
  },
  'petrol-vapour': {
    citation: 'Petrol and petrol filling stations, safety manual of a county council in England, 2003.',
    taken: 'Petrol vapour is heavier than air, sinks to the lowest place and burns in air from 1 to 8 %.',
    seen: 'copy',
  },
  'burns-first-aid': {
    citation: 'First aid for burns and scalds, Kent Fire and Rescue Service (web page).',
    taken: 'Cool with running tap water for 20 minutes; no ice, butter or toothpaste; call; cover.',
    seen: 'read',
  },
  'met-office-records': {
    citation:
      'Records of atmospheric pressure in the United Kingdom, Met Office, as reported in January 2020.',
    taken: 'The highest pressure recorded in the United Kingdom: 1053.6 hPa, reduced to the sea.',
    seen: 'copy',
  },
  naaqs: {
    citation:
      'National primary ambient air quality standards for carbon monoxide, United States, 40 CFR 50.8 (1971, retained in 2011: 76 FR 54294).',
    taken: '9 ppm over 8 hours and 35 ppm over 1 hour, in outdoor air.',
    seen: 'copy',
  },
  'aegl-carbon-monoxide': {
    citation:
      'Acute Exposure Guideline Levels: carbon monoxide, final, United States Environmental Protection Agency and National Advisory Committee, July 2008.',
    taken:
      'Levels 2 and 3 over 10 minutes to 8 hours. Their definitions were seen, their values are from memory.',
    seen: 'memory',
  },
  ul2034: {
    citation: 'UL 2034, Single and Multiple Station Carbon Monoxide Alarms, Underwriters Laboratories.',
    taken: 'When a household alarm must sound at 70, 150 and 400 ppm, and how long it may stay silent.',
    seen: 'copy',
  },
  'idle-limit': {
    citation:
      'The Road Vehicles (Construction and Use) (Amendment) (No. 5) Regulations 1995, United Kingdom, SI 1995/2210, explanatory note.',
    taken:
      'Carbon monoxide in the exhaust at idle that was allowed on the road: 6 and later 4.5 per cent by volume for old vehicles.',
    seen: 'read',
  },
  spindt: {
    citation: 'R. S. Spindt, Air-fuel ratios from exhaust gas analysis, SAE Technical Paper 650507, 1965.',
    taken: 'The water–gas balance of 3.5, with which a rich mixture burns.',
    seen: 'memory',
  },
  cfk: {
    citation:
      'R. F. Coburn, R. E. Forster and P. B. Kane, Considerations of the physiological variables that determine the blood carboxyhemoglobin concentration in man, Journal of Clinical Investigation 44, 1965, 1899–1910.',
    taken: 'The equation of carboxyhaemoglobin, seen in a copy with its constants.',
    seen: 'copy',
  },
  'peterson-stewart': {
    citation:
      'J. E. Peterson and R. D. Stewart, Absorption and elimination of carbon monoxide by inactive young men, Archives of Environmental Health 21, 1970, 165–171; Predicting the carboxyhemoglobin levels resulting from carbon monoxide exposures, Journal of Applied Physiology 39, 1975, 633–638.',
    taken:
      'That the equation predicts measured levels (abstract seen); its nonlinear use, ventilation and diffusing capacity (from memory).',
    seen: 'memory',
  },
  tikuisis: {
    citation:
      'P. Tikuisis, H. D. Madill, B. J. Gill, W. F. Lewis, K. M. Cox and D. M. Kane, A critical analysis of the use of the CFK equation in predicting COHb formation, American Industrial Hygiene Association Journal 48, 1987, 208–213.',
    taken:
      'That the water vapour of the lung has to be taken off the pressure breathed in; without it the equation gave 1.28 times what was measured.',
    seen: 'read',
  },
  'miosha-coburn': {
    citation:
      'Coburn Equation Calculator, Michigan Occupational Safety and Health Administration, Occupational Health Laboratory, 2002 to 2011.',
    taken:
      'Blood volume 5500 mL and production 0.007 mL/min; oxygen pressure 100 mmHg and capacity 0.2 from its 0.0046 and 2.3.',
    seen: 'copy',
  },
  'cohb-code': {
    citation:
      'COHb (COHb.R), Salt Lake Technical Center, Occupational Safety and Health Administration, open source code.',
    taken:
      'Affinity ratio 218, production 0.007 mL/min, water vapour 47 mmHg; ventilation brought to 0 °C, dry; the nonlinear form.',
    seen: 'read',
  },
  'dormand-prince': {
    citation:
      'J. R. Dormand and P. J. Prince, A family of embedded Runge-Kutta formulae, Journal of Computational and Applied Mathematics 6, 1980, 19–26.',
    taken: 'The steps with which the nonlinear equation is solved.',
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
    taken:
      'Flow of a gas through a restriction: the flow function and the critical pressure ratio. Air that an engine draws (2.27), what a rich mixture burns to (4.9.2), friction of an engine against its speed (13.6), heat of petrol (appendix D) and the share of it that goes into the walls (figure 12-4).',
    seen: 'memory',
  },
  'david-nagaraja': {
    citation: 'H. A. David and H. N. Nagaraja, Order Statistics, 3rd edition, Wiley, 2003, section 2.3.',
    taken: 'Distribution of the highest less the lowest of several values.',
    seen: 'memory',
  },
  'oiml-r111': {
    citation: 'OIML R 111-1, Weights of classes E1 to M3, part 1, 2004, annex C.',
    taken: 'Drift taken out by reading the reference again, as in A-B-B-A.',
    seen: 'memory',
  },
  splitmix: {
    citation:
      'G. L. Steele, D. Lea and C. H. Flood, Fast splittable pseudorandom number generators, OOPSLA, 2014.',
    taken: 'The mixing by which the number of a practice engine becomes its figures, here in 32 bits.',
    seen: 'memory',
  },
  kalman: {
    citation:
      'R. E. Kalman, A new approach to linear filtering and prediction problems, Journal of Basic Engineering 82, 1960, 35–45.',
    taken: 'How an estimate and its uncertainty are brought up to date by each reading.',
    seen: 'memory',
  },
  'jcgm-101': {
    citation:
      'Evaluation of measurement data: Supplement 1 to the “Guide to the expression of uncertainty in measurement”, JCGM 101, 2008.',
    taken: 'Distribution of a sine that is looked at without regard to its phase (6.4.6).',
    seen: 'memory',
  },
  'nist-drift': {
    citation: 'NIST/SEMATECH e-Handbook of Statistical Methods, section 2.3.3.1.2.',
    taken: 'Drift taken out by reading in the order test, reference, reference, test, at equal intervals.',
    seen: 'read',
  },
  'lock-nut-manual': {
    citation: 'TM 10-4320-307-24, Department of the Army, technical manual, 2-54, rocker lever adjustment.',
    taken:
      'The adjusting screw is held and must not turn while its lock nut is tightened; then it is checked again.',
    seen: 'copy',
  },
  'nist-handbook': {
    citation: 'NIST/SEMATECH e-Handbook of Statistical Methods, sections 7.2.2.2 and 7.3.1.',
    taken:
      'How many readings a difference needs: Student’s t with the degrees of freedom of the number itself, and the t of the chance to see the difference.',
    seen: 'memory',
  },
  doebelin: {
    citation: 'E. O. Doebelin, Measurement Systems: Application and Design, 4th edition, 1990, chapter 3.',
    taken: 'First-order instruments: what is left of a ripple, and how a step is followed.',
    seen: 'memory',
  },
  en837: {
    citation: 'EN 837-1, Pressure gauges, part 1: Bourdon tube pressure gauges, 1998, table 11.',
    taken: 'Accuracy class: the largest error as a percentage of the span.',
    seen: 'copy',
  },
  'atomic-weights': {
    citation:
      'M. E. Wieser, Atomic weights of the elements 2005, IUPAC technical report, Pure and Applied Chemistry 78, 2006, 2051–2066.',
    taken: 'Carbon 12.0107 and oxygen 15.9994, of which carbon monoxide has one each.',
    seen: 'memory',
  },
  iso2533: {
    citation: 'ISO 2533, Standard atmosphere, 1975.',
    taken:
      'Gas constant of dry air, 287.05287 J/(kg·K), ratio of its specific heats, 1.4, and the layers of the atmosphere.',
    seen: 'copy',
  },
  'us-1976': {
    citation:
      'U.S. Standard Atmosphere, 1976, National Oceanic and Atmospheric Administration, National Aeronautics and Space Administration, United States Air Force, NOAA-S/T 76-1562.',
    taken:
      'Temperature, pressure and density with height; radius of the earth; molar mass and gas constant of air.',
    seen: 'copy',
  },
  grs80: {
    citation: 'H. Moritz, Geodetic Reference System 1980, Bulletin Géodésique 54, 1980, 395–405.',
    taken: 'The short series of normal gravity with latitude; the loss with height from a copy of its use.',
    seen: 'copy',
  },
  tanaka: {
    citation:
      'M. Tanaka, G. Girard, R. Davis, A. Peuto and N. Bignell, Recommended table for the density of water between 0 °C and 40 °C, Metrologia 38, 2001, 301–309.',
    taken: 'Density of water from 0 °C to 40 °C, equation 1.',
    seen: 'copy',
  },
  kell: {
    citation:
      'G. S. Kell, Density, thermal expansivity, and compressibility of liquid water from 0° to 150 °C, Journal of Chemical and Engineering Data 20, 1975, 97–105.',
    taken: 'Density of water up to 150 °C, equation 16.',
    seen: 'copy',
  },
  'jones-harris': {
    citation:
      'F. E. Jones and G. L. Harris, ITS-90 density of water formulation for volumetric standards calibration, Journal of Research of the National Institute of Standards and Technology 97, 1992, 335–340.',
    taken: 'Density of water from 5 °C to 40 °C, equation 5.',
    seen: 'copy',
  },
  beattie: {
    citation:
      'J. A. Beattie, B. E. Blaisdell, J. Kaye, H. T. Gerry and C. A. Johnson, An experimental study of the absolute temperature scale VIII, Proceedings of the American Academy of Arts and Sciences 74, 1941, 371–388.',
    taken: 'How the volume of mercury grows with temperature.',
    seen: 'memory',
  },
  'older-mercury': {
    citation:
      'Volume of mercury, CRC Handbook of Chemistry and Physics; after O. J. Broch’s reduction (1885) of the measurements of V. Regnault.',
    taken: 'Volume of a gram of mercury in the older tables, in millilitres of 1901.',
    seen: 'copy',
  },
  'iso-68': {
    citation: 'ISO 68-1, ISO general purpose screw threads, basic profile, 1998.',
    taken: 'The triangle of 60° that both metric and Unified threads are cut from.',
    seen: 'copy',
  },
  iso261: {
    citation: 'ISO 261, ISO general purpose metric screw threads, general plan, 1998, table 2.',
    taken: 'Coarse and fine pitches from M1 to M24.',
    seen: 'copy',
  },
  iso724: {
    citation: 'ISO 724, ISO general purpose metric screw threads, basic dimensions, 1993.',
    taken: 'Pitch diameter and minor diameter from diameter and pitch.',
    seen: 'copy',
  },
  iso898: {
    citation:
      'ISO 898-1, Mechanical properties of fasteners, part 1: Bolts, screws and studs, 2013, 9.1.6.1.',
    taken: 'The stress area of a screw.',
    seen: 'copy',
  },
  'asme-b1-1': {
    citation: 'ASME B1.1, Unified inch screw threads.',
    taken:
      'Threads per inch of the UNC and UNF series; the numbered sizes, 0.060 inch and 0.013 inch a number.',
    seen: 'copy',
  },
  bs93: {
    citation: 'BS 93, British Association (B.A.) screw threads.',
    taken: 'The rule of pitches and diameters, rounded to two significant figures, from 0BA to 16BA.',
    seen: 'copy',
  },
  bs84: {
    citation: 'BS 84, Parallel screw threads of Whitworth form.',
    taken: 'Threads per inch of the BSF and BSW series.',
    seen: 'copy',
  },
  iso4032: {
    citation: 'BS EN ISO 4032, Hexagon nuts, style 1, product grades A and B, 2001, tables 1 and 2.',
    taken: 'Height and width across flats from M1.6 to M36.',
    seen: 'copy',
  },
  iso4035: {
    citation: 'BS EN ISO 4035, Hexagon thin nuts (chamfered), product grades A and B, tables 1 and 2.',
    taken: 'Height of thin nuts, the usual lock nuts, from M1.6 to M36.',
    seen: 'copy',
  },
  'ashrae-glycol': {
    citation:
      'ASHRAE Handbook: Fundamentals, density of aqueous solutions of ethylene glycol, reprinted as table 5-16 of a design manual.',
    taken: 'Density of ethylene glycol in water from 0 to 90 % by volume, 40 °F to 120 °F.',
    seen: 'copy',
  },
  'fluid-table': {
    citation:
      'F. M. White, Fluid Mechanics, McGraw-Hill, appendix A, properties of common liquids at 1 atm and 20 °C.',
    taken: 'Density at 20 °C of oils, glycerin, alcohols, petrol and kerosene.',
    seen: 'copy',
  },
  'expansion-table': {
    citation: 'A list of cubic expansions of liquids at 20 °C, without its own source.',
    taken: 'How alcohols, glycerin, glycol, petrol, kerosene and benzene grow with temperature.',
    seen: 'copy',
  },
  'petroleum-tables': {
    citation:
      'American Petroleum Institute, Manual of Petroleum Measurement Standards, chapter 11.1 (ASTM D1250), 2004.',
    taken: 'Expansion of lubricating oils from their density.',
    seen: 'copy',
  },
  isopropanol: {
    citation:
      'J. A. Riddick, W. B. Bunger and T. K. Sakano, Organic Solvents, 4th edition, Wiley, 1986; CRC Handbook of Chemistry and Physics.',
    taken: 'Density of isopropanol at 20 °C and 25 °C.',
    seen: 'copy',
  },
  'liquids-memory': {
    citation: 'Handbook figures without a document at hand.',
    taken: 'Density of light mineral oil; expansion of sea water and carbon tetrachloride.',
    seen: 'memory',
  },
  'flash-points': {
    citation: 'A fire-safety dealer’s list of flash points of common flammable substances.',
    taken: 'Flash points of petrol, kerosene, ethanol, methanol, isopropanol and benzene.',
    seen: 'copy',
  },
  'army-vacuum': {
    citation: 'United States Army Ordnance, lesson on vacuum readings (OD1001).',
    taken: 'The rule of an inch of mercury less for every thousand feet of height.',
    seen: 'read',
  },
  'army-vehicles': {
    citation:
      'Principles of Automotive Vehicles, TM 9-8000, Headquarters, Department of the Army, United States, 1985.',
    taken:
      'What a vacuum gauge finds (17-8); float, needle valve and vents of the bowl (4-14); the idle and low-speed system (4-16).',
    seen: 'copy',
  },
  'army-vacuum-gauge': {
    citation:
      'TM 9-4910-677-14&P, Headquarters, Department of the Army, United States: the readings of a vacuum gauge (pages seen without the title).',
    taken:
      'A low but steady reading comes from what affects all cylinders alike: late ignition, late valves, loose tappets; leaks lower it by a little or by nearly all.',
    seen: 'copy',
  },
  'army-tune-up': {
    citation:
      'Organizational maintenance manual of a fork-lift truck with a petrol engine, TM 10-3930-618-20, Department of the Army, United States.',
    taken:
      'Compression test and test with oil (2-12); what a needle that drops at regular or irregular intervals tells (2-13).',
    seen: 'copy',
  },
  'army-aircraft': {
    citation:
      'General Aircraft Maintenance (General Maintenance and Practices), volume 1, TM 1-1500-204-23-1, Headquarters, Department of the Army, United States, 1992.',
    taken:
      'Compression test: fuel shut, ignition earthed, throttle fully open; the limit of 20 % below the average.',
    seen: 'copy',
  },
  'army-valves': {
    citation:
      'TM 5-3820-245-14&P, Department of the Army, United States: exhaust valve clearance adjustment (page seen without the title).',
    taken:
      'Too little clearance: lost compression, misfiring, burnt seats. Too much: noise and wear. Set cold, because parts grow as they warm.',
    seen: 'copy',
  },
  'wmo-pressure': {
    citation: 'World Meteorological Organization, World Weather and Climate Extremes Archive.',
    taken: 'The highest sea-level pressure below 750 m: 1083.8 hPa.',
    seen: 'read',
  },
  smithsonian: {
    citation: 'R. J. List, Smithsonian Meteorological Tables, 6th edition, 1951, p. 269.',
    taken: 'The altimeter setting of a station, as the United States compute it.',
    seen: 'copy',
  },
  wcag: {
    citation: 'Web Content Accessibility Guidelines (WCAG) 2.2, World Wide Web Consortium, 2023.',
    taken: 'Contrast of words (1.4.6), reflow (1.4.10) and size of what is touched (2.5.5).',
    seen: 'memory',
  },
  'degani-wiener': {
    citation:
      'A. Degani and E. L. Wiener, Cockpit checklists: concepts, design, and use, Human Factors 35, 1993, 28–43.',
    taken: 'An answer names the wanted state, not “checked”; a long list is cut into blocks.',
    seen: 'copy',
  },
  degani: {
    citation:
      'A. Degani, On the typography of flight-deck documentation, NASA Contractor Report 177605, 1992.',
    taken: 'Letters without serifs, no look-alikes, lower case for longer text, no long italics.',
    seen: 'copy',
  },
} as const satisfies Record<string, Source>;

export type SourceId = keyof typeof sources;

export const sourceIds = Object.keys(sources) as [SourceId, ...SourceId[]];
