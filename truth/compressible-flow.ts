import {
  areaOverThroat,
  chokedFlowFunction,
  criticalPressureRatio,
  densityOverTotal,
  engineAirFlowKgPerS,
  engineSpeeds,
  findMeasureUnit,
  findPressureUnit,
  incompressibleOverCompressible,
  inUnit,
  isentropicFlowFunction,
  lengths,
  motoringFrictionPa,
  pascalsOf,
  pressureOverTotal,
  temperatures,
  throttleMassFlowKgPerS,
  throttlePlateOpenAreaM2,
  toSi,
  volumes,
} from '../src/calculators/index.ts';
import type { MeasureFamily, PressureUnit, Result } from '../src/calculators/index.ts';
import { computed } from './adapter.ts';
import type { Adapter, Adapters, Question } from './adapter.ts';
import { inputNamed, parseInputs, plainNumber, valueOf } from './parse-input.ts';
import type { Input } from './parse-input.ts';

const unknownUnit = (unit: string): never => {
  throw new Error(`unknown unit “${unit}”`);
};

/** A number without a unit. */
const pure = ({ value, unit }: Input): number => (unit === '' ? value : unknownUnit(unit));

const pressureUnitOf = (unit: string): PressureUnit => findPressureUnit(unit) ?? unknownUnit(unit);

const measured = (value: number, unit: string, family: MeasureFamily): number =>
  toSi(value, findMeasureUnit(unit, family) ?? unknownUnit(unit));

const rpmOf = (value: number, unit: string): number => measured(value, unit, engineSpeeds) * 60;

/** `mm2`, `cm²` or `sq in`: the square of a length, in m². */
const squareMetres = (unit: string): number => {
  const length = /^(.*?)\s*(?:2|\^2|²)$/u.exec(unit)?.[1] ?? /^sq\.?\s+(.*)$/u.exec(unit)?.[1];
  return measured(1, length ?? unknownUnit(unit), lengths) ** 2;
};

const radians = ({ value, unit }: Input): number => {
  if (/^(?:deg|degrees?|°)$/u.test(unit)) return (value * Math.PI) / 180;
  return /^rad(?:ians?)?$/u.test(unit) ? value : unknownUnit(unit);
};

const kilograms: Readonly<Record<string, number>> = { mg: 1e-6, g: 1e-3, kg: 1, lb: 0.45359237 };
const seconds: Readonly<Record<string, number>> = { s: 1, min: 60, h: 3600, hr: 3600 };

/** A mass flow in `g/s`, `kg/h` and the like. */
const massFlowIn = (kgPerS: number, unit: string): number => {
  const [mass = '', time = ''] = unit.split('/');
  return (
    (kgPerS / (kilograms[mass.trim()] ?? unknownUnit(unit))) * (seconds[time.trim()] ?? unknownUnit(unit))
  );
};

/** A relation of one number without a unit but `named`. */
const plain =
  (named: RegExp, relation: (value: number) => Result<number> | number): Adapter =>
  ({ input, inputUnit, expectedUnit }) => {
    if (!named.test(inputUnit)) unknownUnit(inputUnit);
    if (expectedUnit !== '1') unknownUnit(expectedUnit);
    const value = relation(plainNumber(input));
    return computed(typeof value === 'number' ? value : valueOf(value));
  };

const ofMach = (relation: (mach: number) => Result<number>): Adapter =>
  plain(/^(?:Mach|M|1|-)$/iu, (mach) => relation(mach));
const ofGamma = (relation: (gamma: number) => Result<number> | number): Adapter =>
  plain(/^(?:gamma|k|1|-)$/iu, relation);
const ofPressures = (relation: (ratio: number) => Result<number> | number): Adapter =>
  plain(/^(?:p2\/p[01]|p\/p0|1|-)$/iu, relation);

const gammaAboveOne = (gamma: number): number => {
  if (!(gamma > 1)) throw new Error(`no ratio of specific heats: ${gamma}`);
  return criticalPressureRatio(gamma);
};

function throttleMassFlow({ input, expectedUnit }: Question): number {
  const inputs = parseInputs(input);
  const area = inputNamed(inputs, 'A');
  const upstream = inputNamed(inputs, 'p0');
  const temperature = inputNamed(inputs, 'T0');
  const upstreamPa = pascalsOf(upstream.value, pressureUnitOf(upstream.unit));
  const behind = inputs.find(({ name }) => name === 'p2');
  const flow = throttleMassFlowKgPerS({
    areaM2: area.value * squareMetres(area.unit),
    dischargeCoefficient: pure(inputNamed(inputs, 'Cd')),
    upstreamPa,
    upstreamK: measured(temperature.value, temperature.unit, temperatures),
    pressureRatio:
      behind === undefined
        ? pure(inputNamed(inputs, 'p2/p0'))
        : pascalsOf(behind.value, pressureUnitOf(behind.unit)) / upstreamPa,
  });
  return massFlowIn(valueOf(flow), expectedUnit);
}

function throttlePlateArea({ input, expectedUnit }: Question): number {
  const inputs = parseInputs(input);
  const bore = inputNamed(inputs, 'D');
  const areaM2 = throttlePlateOpenAreaM2({
    boreM: measured(bore.value, bore.unit, lengths),
    closedRadians: radians(inputNamed(inputs, 'closed')),
    plateRadians: radians(inputNamed(inputs, 'plate at')),
  });
  return valueOf(areaM2) / squareMetres(expectedUnit);
}

function engineAirFlow({ input, expectedUnit }: Question): number {
  const inputs = parseInputs(input);
  const displacement = inputNamed(inputs, 'Vd');
  const speed = inputNamed(inputs, 'N');
  const intake = inputNamed(inputs, 'p_man');
  const temperature = inputNamed(inputs, 'T');
  const efficiency = inputNamed(inputs, 'eta_v');
  if (!['', '(manifold based)'].includes(efficiency.unit)) unknownUnit(efficiency.unit);
  const flow = engineAirFlowKgPerS({
    displacementM3: measured(displacement.value, displacement.unit, volumes),
    rpm: rpmOf(speed.value, speed.unit),
    intakePa: pascalsOf(intake.value, pressureUnitOf(intake.unit)),
    intakeK: measured(temperature.value, temperature.unit, temperatures),
    volumetricEfficiency: efficiency.value,
  });
  return massFlowIn(valueOf(flow), expectedUnit);
}

/** Adapters of tests/data/5-compressible-flow.csv. */
export const compressibleFlowAdapters: Adapters = {
  'isentropic p/pt, gamma 1.4': ofMach((mach) => pressureOverTotal(mach)),
  'isentropic rho/rhot, gamma 1.4': ofMach((mach) => densityOverTotal(mach)),
  'A/A*, gamma 1.4': ofMach((mach) => areaOverThroat(mach)),
  'published p/pt table': ofMach((mach) => pressureOverTotal(mach)),
  'published A/A* table': ofMach((mach) => areaOverThroat(mach)),
  'critical pressure ratio': ofGamma(gammaAboveOne),
  'choked mass-flow function': ofGamma((gamma) => chokedFlowFunction(gamma)),
  'mass-flow function psi(p2/p1), gamma 1.4': ofPressures((ratio) => isentropicFlowFunction(ratio)),
  'incompressible over compressible flow': ofPressures((ratio) => incompressibleOverCompressible(ratio)),
  'throttle mass flow': (question) => computed(throttleMassFlow(question)),
  'throttle plate open area (no shaft)': (question) => computed(throttlePlateArea(question)),
  'motored friction mep, SI engine': ({ input, inputUnit, expectedUnit }) =>
    computed(
      inUnit(valueOf(motoringFrictionPa(rpmOf(plainNumber(input), inputUnit))), pressureUnitOf(expectedUnit)),
    ),
  'engine air flow at idle': (question) => computed(engineAirFlow(question)),
};
