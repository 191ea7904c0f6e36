/*
 * What `npm run test:mutation` changes, group by group, and the tests that must notice: each file with the tests that
 * are about it, so that a mutant costs a few tenths of a second. Names without folder or ending.
 */
export const groups = {
  // What was typed, pasted or linked becomes numbers.
  numbers: {
    files:
      'parse-{measure,number,pressure,quantity} unit-spelling reading-list bench-reading calculator-form',
    unit: 'parse-{number,quantity} pressure-units measure-units bench-reading calculator-link typed-readings',
    property: 'parse-number measure-units',
  },
  lists: {
    files: 'typed-readings parse-{balance-analyser,gauge-comparison}',
    unit: 'typed-readings balance-analyser balance-analyser-form gauge-comparison',
    property: 'balance-analyser gauge-comparison',
  },
  links: {
    files: 'calculator-link session-link unit-converter-link thread-travel-session-link checklists-link',
    unit: 'calculator-link session-link unit-converter-link checklists thread-travel-budget',
    property: 'session-link checklists',
  },
  places: {
    files: 'typed-fields parse-{ambient,ambient-pressure,exhaust-gas-in-a-room,liquid-column}',
    unit: 'ambient-pressure exhaust-gas-in-a-room liquid-column',
    property: 'ambient-pressure exhaust-gas-in-a-room liquid-column',
  },
  turns: {
    files: 'parse-{choice,seconds,span,thread,turn-amount}',
    unit: 'thread-tables gauge-quality parse-turn-amount thread-travel-budget',
  },
  // Numbers.
  distributions: {
    files: 'normal student-t student-t-{beta,nearly-normal,quantile} continued-fraction gamma-ratio',
    unit: 'normal student-t continued-fraction gamma-ratio',
    property: 'student-t',
  },
  uncertainty: {
    files:
      'chance-of-range gauss-legendre mean sample-standard-deviation standard-uncertainty reading-uncertainty polynomial bisect ode',
    unit: 'chance-of-range gauss-legendre mean sample-standard-deviation reading-uncertainty ode',
    property: 'sample-standard-deviation',
  },
  readings: {
    files:
      'balance-analyser balance-analysis balance-difference check-balance-readings correct-readings matched-to more-readings readings-needed bracketed-difference opening-direction accuracy-class gauge-offset gauge-trial',
    unit: 'balance-analyser correct-readings matched-to readings-needed opening-direction gauge-comparison gauge-trial gauge-quality measurement-practice-check-values',
    property: 'gauge-comparison',
  },
  air: {
    files:
      'compressible-flow isentropic-relations throttle-flow throttle-plate engine-air-flow speed-of-sound firing-frequency first-order-lag damped-ripple standard-atmosphere station-pressure normal-gravity carried-reading ambient-pressure motoring-friction air-shares worth-of-a-difference',
    unit: 'compressible-flow compressible-flow-check-values engine-speed engine-speed-sound-check-values first-order-lag standard-atmosphere atmosphere-check-values ambient-pressure air-shares worth-of-a-difference flutter-and-repeats',
    property: 'compressible-flow standard-atmosphere',
  },
  liquids: {
    files:
      'liquid-column liquid-density liquids manometer column-{pressure,unit} expanding-liquid glycol-solution-density mercury-{column-reduced,density,specific-volume} water-density water-density-{jones-harris,kell,tanaka,of-older-tables} oil-expansion pressure-units conversion-table unit-converter unit-converter-{digits,measures,quantities}',
    unit: 'liquids liquid-column liquid-columns-check-values manometers pressure-units pressure-units-check-values unit-converter',
    property: 'pressure-units liquid-column unit-converter',
  },
  threads: {
    files:
      'adjuster-{budget,rows} check-thread-travel screw-thread short-of-thread thread-{pitch,profile,question,tables,travel-budget} common-move inch-fraction see-saw',
    unit: 'thread-travel-budget thread-tables screw-threads-check-values short-of-thread see-saw',
    property: 'thread-travel-budget',
  },
  gas: {
    files:
      'carbon-monoxide-concentration carboxyhaemoglobin cfk-{at-pressure,person} coburn-forster-kane engine-carbon-monoxide rich-exhaust exhaust-gas-in-a-room mixed-room mixed-room-average',
    unit: 'carbon-monoxide carbon-monoxide-check-values carboxyhaemoglobin mixed-room exhaust-gas-in-a-room',
    property: 'exhaust-gas-in-a-room',
  },
  advice: {
    files:
      'advisor/{account,belief,chance,matrix,normal-vectors,opening-scale,plan} next-step check-session check-number linkage most-moved-carburettor bench-session sign-off-round wrong-way running-time',
    unit: 'next-step belief chance matrix opening-scale sessions linkage bench-session sign-off-round wrong-way check-number running-time',
    property: 'linkage',
  },
  figures: {
    files:
      'format-{chance,duration,length,number,pressure,reading,running-time,turns} number-in-words pressure-figures',
    unit: 'format-{number,reading,turns} running-time readings-needed describe-problem chance',
    property: 'format-number',
  },
};

const listed = (names, folder, ending) =>
  (names ?? '')
    .split(' ')
    .filter(Boolean)
    .map((name) => `${folder}/${name}${ending}`);

/** The files that read what somebody typed; more is asked of their tests. */
export const isParser = (file) =>
  /(?:^|\/)(?:parse-[a-z-]+|[a-z-]+-link|reading-list|typed-[a-z]+|unit-spelling|bench-reading)\.ts$/u.test(
    file,
  );

export const filesOf = (group) => listed(groups[group].files, 'src/calculators', '.ts');
export const testsOf = (group) => [
  ...listed(groups[group].unit, 'tests/unit', '.test.ts'),
  ...listed(groups[group].property, 'tests/property', '.test.ts'),
];
