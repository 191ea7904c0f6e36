/** Answers for tests/data/6-carbon-monoxide.csv: limits, ppm and mg/m³, the mixed room, the Coburn–Forster–Kane equation. */
import {
  alarmPoints,
  carbonMonoxideLimits,
  cfkConstants,
  cfkEquilibriumPpm,
  cfkLinearPercent,
  cfkPeople,
  cfkPercent,
  cfkResistance,
  concentrationPpm,
  findLimits,
  findMeasureUnit,
  limitPpm,
  mgPerM3FromPpm,
  mgPerM3PerPpm,
  minutesToReach,
  mixedAir,
  ppmFromMgPerM3,
  restingPersonOfOpenCode,
  standardAtmospherePa,
  temperatures,
  toSi,
  volumeFlows,
  volumes,
  whoCarboxyhaemoglobinPercent,
} from '../src/calculators/index.ts';
import type {
  Activity,
  CarbonMonoxideLimit,
  CfkPerson,
  MeasureFamily,
  MixedAir,
} from '../src/calculators/index.ts';
import { computed, quoted } from './adapter.ts';
import type { Adapter, Adapters, Answer, Question } from './adapter.ts';
import { inputNamed, parseInputs, plainNumber, valueOf } from './parse-input.ts';
import type { Input } from './parse-input.ts';

const minutesOf: Readonly<Record<string, number>> = {
  s: 1 / 60,
  min: 1,
  minute: 1,
  minutes: 1,
  h: 60,
  hr: 60,
  hour: 60,
  hours: 60,
  d: 1440,
};

const factorOf = (factors: Readonly<Record<string, number>>, unit: string): number => {
  const factor = Object.hasOwn(factors, unit) ? factors[unit] : undefined;
  if (factor === undefined) throw new Error(`no unit “${unit}” here`);
  return factor;
};

const minutesIn = ({ value, unit }: Pick<Input, 'value' | 'unit'>): number =>
  value * factorOf(minutesOf, unit);

const si = (family: MeasureFamily, { value, unit }: Pick<Input, 'value' | 'unit'>): number => {
  const found = findMeasureUnit(unit, family);
  if (found === null) throw new Error(`no ${family.name} “${unit}”`);
  return toSi(value, found);
};

/** `20 degC`; a degree is written in several ways. */
const kelvinsOf = (input: Pick<Input, 'value' | 'unit'>): number => si(temperatures, input);

/** Parts per million by volume, of which a per cent is ten thousand. */
const ppmOf: Readonly<Record<string, number>> = { ppm: 1, ppb: 1e-3, '%': 1e4 };

const ppmIn = ({ value, unit }: Input): number => value * factorOf(ppmOf, unit);

/** A quantity that the row itself is in: ppm to mg/m³ and back, at a temperature, at the standard atmosphere. */
const concentration =
  (convert: typeof mgPerM3FromPpm, from: string, to: string): Adapter =>
  ({ input, inputUnit, expectedUnit }) => {
    const [amount = '', temperature = ''] = input.split(/\bat\b/u);
    const [what, where] = [parseInputs(amount)[0], parseInputs(temperature)[0]];
    if (what === undefined || where === undefined) throw new Error(`no amount at a temperature: “${input}”`);
    const unit = what.unit === '' ? inputUnit : what.unit;
    if (unit !== from || expectedUnit !== to) throw new Error(`no ${unit} to ${expectedUnit} here`);
    return computed(
      valueOf(convert(what.value, { kelvins: kelvinsOf(where), pascals: standardAtmospherePa })),
    );
  };

/** `V=60 m3, ACH=0.5 1/h, CO source=20 L/min, C0=0 ppm`; the last may be left out. */
function roomOf(inputs: readonly Input[]): MixedAir {
  const changes = inputNamed(inputs, 'ACH');
  const start = inputs.find(({ name }) => name.toLowerCase() === 'c0');
  const perHour = 60 / factorOf(minutesOf, changes.unit.replace(/^1\/|^\/|-1$/u, '') || 'h');
  return valueOf(
    mixedAir({
      volumeM3: si(volumes, inputNamed(inputs, 'V')),
      airChangesPerHour: changes.value * perHour,
      sourceLPerMin: si(volumeFlows, inputNamed(inputs, 'CO source')) * 60 * 1000,
      initialPpm: start === undefined ? 0 : ppmIn(start),
    }),
  );
}

const wanted = (question: Question, unit: string): readonly Input[] => {
  if (question.expectedUnit !== unit) throw new Error(`no answer in ${question.expectedUnit} here`);
  return parseInputs(question.input);
};

const roomConcentration: Adapter = (question) => {
  const inputs = wanted(question, 'ppm');
  return computed(concentrationPpm(roomOf(inputs), minutesIn(inputNamed(inputs, 't'))));
};

const timeToLimit: Adapter = (question) => {
  const inputs = parseInputs(question.input);
  const minutes = minutesToReach(roomOf(inputs), ppmIn(inputNamed(inputs, 'limit')));
  if (minutes === null) throw new Error(`never reached: “${question.input}”`);
  return computed(minutes / factorOf(minutesOf, question.expectedUnit));
};

const activityIn = (inputs: readonly Input[], otherwise?: Activity): Activity => {
  const activities = Object.keys(cfkPeople) as Activity[];
  const found =
    activities.find((activity) => inputs.some(({ text }) => text.toLowerCase() === activity)) ?? otherwise;
  if (found === undefined) throw new Error(`none of ${activities.join(', ')} in the input`);
  return found;
};

/** `50 ppm, 60 min, rest, COHb0=0.8 %`; activity and start may be left out where the row says `standard`. */
const carboxyhaemoglobin =
  (
    solve: typeof cfkPercent,
    standard?: { readonly activity: Activity; readonly startPercent: number },
  ): Adapter =>
  (question) => {
    const inputs = wanted(question, '% COHb');
    const ppm = inputs.find(({ name, unit }) => name === '' && Object.hasOwn(ppmOf, unit));
    const time = inputs.find(({ name, unit }) => name === '' && Object.hasOwn(minutesOf, unit));
    if (ppm === undefined || time === undefined) throw new Error(`no exposure in “${question.input}”`);
    const start = inputs.find(({ name }) => name.toLowerCase() === 'cohb0')?.value ?? standard?.startPercent;
    if (start === undefined) throw new Error(`no COHb0 in “${question.input}”`);
    const person = cfkPeople[activityIn(inputs, standard?.activity)];
    return computed(valueOf(solve(person, ppmIn(ppm), minutesIn(time), start)));
  };

/** `light work`, or the figures themselves: `DL=30, VA=6000, PB=760`. */
const resistance: Adapter = (question) => {
  const inputs = wanted(question, 'mmHg min/mL');
  const named = (name: string): number | undefined =>
    inputs.find((input) => input.name.toLowerCase() === name)?.value;
  const person: CfkPerson = cfkPeople[activityIn(inputs, named('dl') === undefined ? undefined : 'rest')];
  return computed(
    cfkResistance({
      ...person,
      diffusingCapacityMlPerMinMmHg: named('dl') ?? person.diffusingCapacityMlPerMinMmHg,
      ventilationMlPerMin: named('va') ?? person.ventilationMlPerMin,
      barometricMmHg: named('pb') ?? person.barometricMmHg,
    }),
  );
};

const equilibrium: Adapter = ({ input, inputUnit, expectedUnit }) => {
  if (inputUnit !== '% COHb' || expectedUnit !== 'ppm')
    throw new Error(`no ${inputUnit} to ${expectedUnit} here`);
  return computed(valueOf(cfkEquilibriumPpm(restingPersonOfOpenCode, plainNumber(input))));
};

/** A limit in the unit asked for: as set, or as the body prints it in the other unit. */
function limitIn(limit: CarbonMonoxideLimit | undefined, unit: string, of: string): Answer {
  if (limit === undefined) throw new Error(`no limit “${of}”`);
  if (limit.unit === unit) return quoted(limit.value);
  if (limit.inOtherUnit !== undefined && (unit === 'ppm' || unit === 'mg/m3'))
    return quoted(limit.inOtherUnit);
  if (unit !== 'ppm') throw new Error(`“${of}” is not published in ${unit}`);
  return computed(
    limitPpm(limit, valueOf(mgPerM3PerPpm({ kelvins: 298.15, pascals: standardAtmospherePa }))),
  );
}

/** An averaging time: `15 min`, `8 h` in the input, or its unit in the next cell; undefined where the row says `-`. */
function averagingMinutes({ input, inputUnit }: Question): number | undefined {
  if (input.trim() === '-') return undefined;
  const [time] = parseInputs(input);
  if (time === undefined) throw new Error(`no averaging time in “${input}”`);
  return minutesIn({ value: time.value, unit: time.unit === '' ? inputUnit : time.unit });
}

const publishedLimit =
  (name: string): Adapter =>
  (question) => {
    const minutes = averagingMinutes(question);
    return limitIn(findLimits(name, minutes)[0], question.expectedUnit, `${name}, ${minutes} min`);
  };

const alarm =
  (end: 'earliestMinutes' | 'latestMinutes'): Adapter =>
  ({ input, inputUnit, expectedUnit }) => {
    const ppm = plainNumber(input) * factorOf(ppmOf, inputUnit);
    const point = alarmPoints.find((each) => each.ppm === ppm);
    if (point === undefined) throw new Error(`no alarm point at ${ppm} ppm`);
    return quoted(point[end] / factorOf(minutesOf, expectedUnit));
  };

const constant =
  ({ value, unit }: { readonly value: number; readonly unit: string }): Adapter =>
  ({ expectedUnit }) => {
    if (expectedUnit !== unit) throw new Error(`the constant is in ${unit}, not ${expectedUnit}`);
    return quoted(value);
  };

/** How the constants of the equation are called in the check values. */
const constantNames: Readonly<Record<string, keyof typeof cfkConstants>> = {
  'Haldane constant M': 'haldaneRatio',
  'blood volume Vb': 'bloodVolume',
  'endogenous CO production Vco': 'endogenousProduction',
  'endogenous production Vco': 'endogenousProduction',
  'alveolar ventilation at rest': 'ventilationAtRest',
  'alveolar ventilation at light work': 'ventilationAtLightWork',
  'diffusing capacity DL at rest': 'diffusingCapacityAtRest',
  'diffusing capacity at rest': 'diffusingCapacityAtRest',
  'lung diffusing capacity at rest': 'diffusingCapacityAtRest',
  'diffusing capacity DL at light work': 'diffusingCapacityAtLightWork',
  'oxyhaemoglobin at full saturation': 'oxygenCapacity',
  PcO2: 'capillaryOxygen',
  'mean pulmonary capillary PcO2': 'capillaryOxygen',
  'PcO2, alternative (sea level 159-49)': 'capillaryOxygenAtSeaLevel',
  'barometric pressure PB': 'barometricPressure',
  'water vapour pressure PH2O': 'waterVapour',
};

const work = new Set(
  carbonMonoxideLimits.map(({ name }) => name).filter((name) => /^(OSHA|NIOSH|US) /u.test(name)),
);

export const carbonMonoxideAdapters: Adapters = {
  ...Object.fromEntries([...work].map((name) => [`exposure limit: ${name}`, publishedLimit(name)])),
  'WHO 2000 guideline': publishedLimit('WHO 2000 guideline'),
  'WHO 2010 indoor guideline': publishedLimit('WHO 2010 indoor guideline'),
  'WHO 2021 AQG level': publishedLimit('WHO 2021 AQG level'),
  'WHO 2000 basis: COHb not to exceed': constant({ value: whoCarboxyhaemoglobinPercent, unit: '% COHb' }),
  'AEGL-2 for CO': publishedLimit('AEGL-2 for CO'),
  'AEGL-3 for CO': publishedLimit('AEGL-3 for CO'),
  'UL 2034 alarm: earliest': alarm('earliestMinutes'),
  'UL 2034 alarm: latest': alarm('latestMinutes'),
  'ppm to mg/m3 at 101325 Pa': concentration(mgPerM3FromPpm, 'ppm', 'mg/m3'),
  'mg/m3 to ppm at 101325 Pa': concentration(ppmFromMgPerM3, 'mg/m3', 'ppm'),
  'mg/m3 to ppm, published': concentration(ppmFromMgPerM3, 'mg/m3', 'ppm'),
  'well-mixed room concentration': roomConcentration,
  'well-mixed room time to limit': timeToLimit,
  ...Object.fromEntries(
    Object.entries(constantNames).map(([name, key]) => [
      `CFK constant: ${name}`,
      constant(cfkConstants[key]),
    ]),
  ),
  'CFK factor B = 1/DL + (PB-47)/VA': resistance,
  'CFK linear solution, COHb': carboxyhaemoglobin(cfkLinearPercent),
  'CFK nonlinear solution, COHb': carboxyhaemoglobin(cfkPercent),
  'CFK nonlinear washout in clean air, COHb': carboxyhaemoglobin(cfkPercent),
  'CFK equilibrium CO for a COHb level': equilibrium,
  'NIOSH 35 ppm 8 h basis': carboxyhaemoglobin(cfkPercent, {
    activity: 'rest',
    startPercent: cfkConstants.startOfNonSmoker.value,
  }),
};
