import { globSync } from 'node:fs';

/*
 * What `npm run test:mutation` changes, group by group, and the tests that must notice: each file of `src/calculators`
 * in one group, with the tests that are about it, so that a mutant costs a few tenths of a second. Names without folder
 * or ending; tests/architecture says so when a file is in none, or in two.
 */
export const groups = {
  // What was typed, pasted or linked becomes numbers.
  numbers: {
    files:
      'parse-{number,pressure,quantity} plain-number unit-spelling reading-list bench-reading calculator-form result value-of-checked',
    unit: 'parse-{number,quantity} plain-number value-of-checked pressure-units bench-reading calculator-link typed-readings',
    property: 'parse-number measure-units',
  },
  lists: {
    files:
      'typed-readings parse-{balance-analyser,gauge-comparison} {balance-analyser,gauge-comparison}-form',
    unit: 'calculator-forms typed-readings balance-analyser balance-analyser-form gauge-comparison',
    property: 'balance-analyser gauge-comparison',
  },
  links: {
    files:
      '{calculator,session,unit-converter,thread-travel-session,checklists}-link plain-text calculator-answer',
    unit: 'calculator-link session-link unit-converter-link checklists thread-travel-budget',
    property: 'session-link checklists',
  },
  places: {
    files:
      'typed-fields measure-limit parse-ambient {parse-,}{ambient-pressure,exhaust-gas-in-a-room,liquid-column}{-form,}',
    unit: 'calculator-forms ambient-pressure exhaust-gas-in-a-room liquid-column',
    property: 'ambient-pressure exhaust-gas-in-a-room liquid-column',
  },
  turns: {
    files: 'parse-{choice,seconds,span,thread,turn-amount} thread-question',
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
      'change-by-chance chance-of-range gauss-legendre mean sample-standard-deviation reading-uncertainty width-at-95 bisect ode',
    unit: 'change-by-chance chance-of-range gauss-legendre mean sample-standard-deviation reading-uncertainty ode',
    property: 'sample-standard-deviation',
  },
  readings: {
    files:
      'balance-{analyser,analysis,difference} check-{balance-readings,number} correct-readings matched-to more-readings readings-needed opening-direction',
    unit: 'balance-analyser balance-analyser-form correct-readings matched-to readings-needed opening-direction check-number measurement-practice-check-values',
    property: 'balance-analyser',
  },
  gauges: {
    files:
      'accuracy-class bracketed-difference standard-uncertainty gauge-{comparison,comparison-words,offset,trial}',
    unit: 'answers gauge-comparison gauge-trial gauge-quality',
    property: 'gauge-comparison',
  },
  flutter: {
    files: 'flutter-and-repeats{,-form,-words} first-order-lag damped-ripple',
    unit: 'answers calculator-forms flutter-and-repeats first-order-lag',
    property: 'flutter-and-repeats',
  },
  air: {
    files:
      'compressible-flow isentropic-relations throttle-{flow,plate} engine-air-flow speed-of-sound firing-frequency dry-air standard-atmosphere station-pressure carried-reading motoring-friction air-shares worth-of-a-difference',
    unit: 'compressible-flow compressible-flow-check-values engine-speed engine-speed-sound-check-values standard-atmosphere atmosphere-check-values ambient-pressure air-shares worth-of-a-difference',
    property: 'compressible-flow standard-atmosphere',
  },
  units: {
    files:
      '{density,engine-speed,length,speed,temperature,temperature-difference,thread-pitch,torque,volume,volume-flow,pressure}-units quantities exact-definitions measure-{unit,unit-entry,units} pressure-unit pressure-unit-table column-{pressure,unit} parse-measure once',
    unit: 'measure-units pressure-units pressure-units-check-values once',
  },
  converter: {
    files: 'conversion-table unit-converter{,-answer,-digits,-form,-measures,-quantities,-words}',
    unit: 'answers calculator-forms unit-converter unit-converter-link',
    property: 'unit-converter',
  },
  liquids: {
    files:
      'liquid liquid-density liquids {gauge,refused}-liquids normal-gravity polynomial expanding-liquid glycol-solution-density mercury-{column-reduced,density,specific-volume} water-density{,-jones-harris,-kell,-tanaka,-of-older-tables} oil-expansion',
    unit: 'liquids liquid-columns-check-values',
    property: 'liquid-columns-second-formula',
  },
  columns: {
    files: '{liquid-column,ambient-pressure}-{answer,words} liquid-column-warnings manometer format-length',
    unit: 'answers liquid-column ambient-pressure',
    property: 'liquid-column ambient-pressure',
  },
  threads: {
    files:
      'threads-{ba,iso,unified,whitworth} hexagon-nuts screw-thread thread-{pitch,profile,tables} inch-fraction',
    unit: 'thread-tables screw-threads-check-values',
    property: 'screw-threads-second-formula',
  },
  travel: {
    files:
      'adjuster-{budget,rows} check-thread-travel short-of-thread thread-travel-budget{,-answer,-fields,-form,-words} thread-travel{,-lines,-warnings} see-saw common-move{,-words}',
    unit: 'answers calculator-forms thread-travel-budget short-of-thread see-saw',
    property: 'thread-travel-budget',
  },
  gas: {
    files:
      'carbon-monoxide-{alarms,concentration,limits} carboxyhaemoglobin cfk-{at-pressure,person} coburn-forster-kane{,-constants} engine-carbon-monoxide rich-exhaust exhaust-gas-{cautions,limit-words,in-a-room-answer,in-a-room-words} mixed-room mixed-room-average format-duration',
    unit: 'answers carbon-monoxide carbon-monoxide-check-values carboxyhaemoglobin mixed-room exhaust-gas-in-a-room',
    property: 'exhaust-gas-in-a-room',
  },
  belief: {
    files: 'advisor/*',
    unit: 'next-step belief chance matrix opening-scale',
  },
  advice: {
    files:
      'next-step check-session linkage most-moved-carburettor sign-off-round wrong-way reading-course example-sessions protocol',
    unit: 'next-step linkage sign-off-round wrong-way reading-course',
    property: 'linkage',
  },
  bench: {
    files: 'bench-{defaults,session,session-example,set-up} running-time',
    unit: 'bench-session bench-set-up running-time session-link',
    property: 'bench-set-up',
  },
  comparison: {
    files: 'session-comparison{,-words} sessions-csv csv-text',
    unit: 'session-comparison sessions-csv csv-text',
  },
  analyser: {
    files: 'balance-analyser-{answer,lines,words} screw-words',
    unit: 'answers balance-analyser balance-analyser-form screw-words',
    property: 'balance-analyser',
  },
  figures: {
    files:
      'format-{chance,number,pressure,reading,running-time,turns} number-in-words pressure-figures with-article answer-line',
    unit: 'format-{number,reading,turns}',
    property: 'format-number',
  },
  problems: {
    files: 'describe-problem problem say-problem',
    unit: 'describe-problem calculator-link',
  },
  checklists: {
    files: 'checklists{,-form,-words} checklist-{after,before,block,during,tools}',
    unit: 'calculator-forms checklists',
    property: 'checklists',
  },
  engine: {
    files: 'practice/{advance,breathing,friction,state,steady}',
    unit: 'practice-{advance,engine} leak-at-speeds',
    property: 'practice-engine',
  },
  hands: {
    files:
      'practice-engine practice/{act,check-exercise,constants,engine,exercise,invent,leak-at-speeds,look,random,review,run}',
    unit: 'practice-{depressions,engine,hands,invent,run} leak-at-speeds',
    property: 'practice-engine',
  },
  lessons: {
    files: 'practice/{advice,counted-turns,lessons,play,replay}',
    unit: 'practice-lessons practice-play',
  },
  job: {
    files: 'practice/operator',
    unit: 'practice-{engine,job,operator}',
  },
  practice: {
    files: 'practice-engine-{answer,faults,form,review-words,words}',
    unit: 'calculator-forms practice-engine-form practice-engine-words practice-play',
  },
  explorables: {
    files: 'explorables/*',
    unit: 'explorables',
    property: 'explorables',
  },
  constants: {
    files: 'constants constants/* molar-gas-constant index',
    unit: 'constants',
  },
};

/** The files that the names of one line stand for; a name that stands for none is given back as it is. */
const listed = (names, folder, ending) =>
  (names ?? '')
    .split(' ')
    .filter(Boolean)
    .flatMap((name) => {
      const pattern = `${folder}/${name}${ending}`;
      const found = globSync(pattern).map((file) => file.replaceAll('\\', '/'));
      return found.length > 0 ? found.toSorted() : [pattern];
    });

/** The files that read what somebody typed; more is asked of their tests. */
export const isParser = (file) =>
  /(?:^|\/)(?:parse-[a-z-]+|plain-[a-z]+|[a-z-]+-link|reading-list|typed-[a-z]+|unit-spelling|bench-reading)\.ts$/u.test(
    file,
  );

export const filesOf = (group) => listed(groups[group].files, 'src/calculators', '.ts');
export const testsOf = (group) => [
  ...listed(groups[group].unit, 'tests/unit', '.test.ts'),
  ...listed(groups[group].property, 'tests/property', '.test.ts'),
];
