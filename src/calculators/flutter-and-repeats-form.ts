import { formReader } from './calculator-form.ts';
import type { Form, FormFields, FormResult } from './calculator-form.ts';
import { checkNumber } from './check-number.ts';
import { standardAtmospherePa } from './exact-definitions.ts';
import { timeConstantOfWait } from './first-order-lag.ts';
import { settledShare } from './flutter-and-repeats.ts';
import type { FlutterQuestion } from './flutter-and-repeats.ts';
import type { DecimalMark } from './format-number.ts';
import { parseChoice } from './parse-choice.ts';
import { parseNumber } from './parse-number.ts';
import { parsePressure } from './parse-pressure.ts';
import { parseSeconds } from './parse-seconds.ts';
import { pressureUnits } from './pressure-unit-table.ts';
import { pressureUnit } from './pressure-units.ts';
import type { Limit } from './problem.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';
import type { Distribution } from './standard-uncertainty.ts';

const text = (initially: string) => ({ kind: 'text', initially }) as const;
const cylinders = ['1', '2', '3', '4', '5', '6', '7', '8'] as const;
const distributions = ['rectangular', 'triangular', 'u-shaped'] as const satisfies readonly Distribution[];

/**
 * The fields of the page “Flutter and repeats”. Their first values are the worked example, invented: a four-cylinder
 * engine held at a working speed, a dial marked every 5 mmHg whose needle swings by 40 mmHg either way with the tap
 * open and settles in half a second with the tap as it will be used.
 */
export const flutterAndRepeatsFields = {
  cylinders: { kind: 'choice', initially: '4', choices: cylinders },
  rpm: text('2100'),
  unit: { kind: 'choice', initially: 'mmHg', choices: pressureUnits.map(({ id }) => id) },
  flutter: text('40'),
  damping: text('0.5 s'),
  dampingKind: { kind: 'choice', initially: 'settling', choices: ['settling', 'time-constant'] },
  resolution: text('5'),
  distribution: { kind: 'choice', initially: 'rectangular', choices: distributions },
  readings: text('3'),
  difference: text('6'),
} as const satisfies FormFields<string>;

export type FlutterField = keyof typeof flutterAndRepeatsFields;

export type FlutterTyped = FlutterQuestion & {
  readonly unit: string;
  readonly mark: DecimalMark;
};

/** Wide enough for every engine and gauge; from memory. */
export const flutterLimits = {
  rpm: { min: 100, max: 20_000 },
  pressurePa: { min: 0, max: standardAtmospherePa },
  positivePa: { above: 0, max: standardAtmospherePa },
  seconds: { min: 0, max: 600 },
  readings: { min: 2, max: 1000 },
} as const satisfies Record<string, Limit>;

/**
 * Reads the form: pressures in the chosen unit or with their own, times in seconds, or `400 ms`. With one reading
 * of each, nothing shows how far readings scatter, so that two are the fewest.
 * Problems: those of `parsePressure`, `parseNumber` and `parseSeconds`; `out-of-range`; `not-whole`; `too-few-readings`.
 */
export function parseFlutterAndRepeats(form: Form<FlutterField>): FormResult<FlutterTyped, FlutterField> {
  const { problems, take } = formReader<FlutterField>();
  const usual = pressureUnit(form.unit);
  let mark: DecimalMark = 'point';
  const noteMark = (typed: DecimalMark | null): void => {
    if (typed === 'comma') mark = 'comma';
  };
  const pressure = (field: 'flutter' | 'resolution' | 'difference', limit: Limit): number | undefined => {
    const parsed = take(field, parsePressure(form[field], usual, field));
    if (parsed === undefined) return undefined;
    noteMark(parsed.number.mark);
    return take(field, within(`${field}Pa`, parsed.pascals, limit));
  };
  const rpm = take('rpm', speed(form.rpm));
  const openFlutterPa = pressure('flutter', flutterLimits.pressurePa);
  const damping = take('damping', parseSeconds(form.damping, 'damping'));
  noteMark(damping?.number.mark ?? null);
  const dampingS = damping && take('damping', within('damping', damping.seconds, flutterLimits.seconds));
  const resolutionPa = pressure('resolution', flutterLimits.positivePa);
  const readings = take('readings', countOfReadings(form.readings));
  const differencePa = pressure('difference', flutterLimits.positivePa);
  const distribution = take('distribution', parseChoice(form.distribution, distributions, 'distribution'));
  if (
    rpm === undefined ||
    openFlutterPa === undefined ||
    dampingS === undefined ||
    resolutionPa === undefined ||
    readings === undefined ||
    differencePa === undefined ||
    distribution === undefined
  )
    return { ok: false, problems };
  return {
    ok: true,
    value: {
      cylinders: Number(form.cylinders),
      rpm,
      openFlutterPa,
      distribution,
      timeConstantS: form.dampingKind === 'settling' ? timeConstantOfWait(dampingS, settledShare) : dampingS,
      resolutionPa,
      readings,
      differencePa,
      unit: usual.id,
      mark,
    },
  };
}

const within = (field: string, value: number, limit: Limit): Result<number> => {
  const problem = checkNumber(field, value, limit);
  return problem ? fail(problem) : succeed(value);
};

function speed(typed: string): Result<number> {
  const parsed = parseNumber(typed.replace(/\s*(?:rpm|r\/min|1\/min)\s*$/iu, ''), 'rpm');
  return parsed.ok ? within('rpm', parsed.value.value, flutterLimits.rpm) : parsed;
}

function countOfReadings(typed: string): Result<number> {
  const parsed = parseNumber(typed, 'readings');
  if (!parsed.ok) return parsed;
  const { value } = parsed.value;
  if (!Number.isInteger(value)) return fail({ kind: 'not-whole', field: 'readings', typed });
  return value < flutterLimits.readings.min || value > flutterLimits.readings.max
    ? fail({ kind: 'too-few-readings', field: 'readings', value, limit: flutterLimits.readings })
    : succeed(value);
}
