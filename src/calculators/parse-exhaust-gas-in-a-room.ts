import { formReader } from './calculator-form.ts';
import type { Form, FormResult } from './calculator-form.ts';
import { checkNumber } from './check-number.ts';
import { engineSpeeds } from './engine-speed-units.ts';
import { secondsPerMinute, zeroCelsiusKelvins } from './exact-definitions.ts';
import type { ExhaustGasInARoomField as Field } from './exhaust-gas-in-a-room-form.ts';
import type { ExhaustGasGiven, GasSource } from './exhaust-gas-in-a-room.ts';
import type { DecimalMark } from './format-number.ts';
import { lengths } from './length-units.ts';
import type { MeasureFamily } from './measure-unit.ts';
import { fromSi } from './measure-units.ts';
import { parseMeasure } from './parse-measure.ts';
import { parseNumber } from './parse-number.ts';
import type { ParsedNumber } from './parse-number.ts';
import type { Limit } from './problem.ts';
import { temperatures } from './temperature-units.ts';
import { volumeFlows } from './volume-flow-units.ts';
import { volumes } from './volume-units.ts';

type Bounds = Limit & { readonly min: number; readonly max: number };

/** What may be given, in SI: wide enough for a cupboard, a hall and a lorry. */
const bounds = {
  side: { min: 0.5, max: 200 },
  volume: { min: 1, max: 1e6 },
  airChanges: { min: 0, max: 100 },
  displacement: { min: 1e-5, max: 0.03 },
  speed: { min: 1, max: 300 },
  filling: { min: 1, max: 120 },
  carbonMonoxide: { min: 0, max: 15 },
  flow: { min: 0, max: 0.02 },
  temperature: { min: zeroCelsiusKelvins - 40, max: zeroCelsiusKelvins + 60 },
  running: { min: 0.1, max: 480 },
  initial: { min: 0, max: 10_000 },
} as const satisfies Record<string, Bounds>;

const litresPerM3 = 1000;

/**
 * Reads the form, and of it only what its choices ask for. Without a unit a side is in metres, a volume in cubic metres, a
 * displacement in cubic centimetres, a speed in rpm, a flow in litres a minute, a temperature in degrees Celsius.
 * Problems: those of `parseMeasure` and `parseNumber`; out-of-range, in the unit that was typed.
 */
export function parseExhaustGasInARoom(form: Form<Field>): FormResult<ExhaustGasGiven, Field> {
  const { problems, take, blame } = formReader<Field>();
  let mark: DecimalMark = 'point';

  const checked = (field: Field, number: ParsedNumber, limit: Bounds): void => {
    if (number.mark === 'comma') mark = 'comma';
    const problem = checkNumber(field, number.value, limit);
    if (problem !== undefined) blame(field, problem);
  };
  // What is out of its bounds goes on to be computed with and is then thrown away: a problem stands against it.
  const plain = (field: Field, limit: Bounds): number => {
    const number = take(field, parseNumber(form[field], field));
    if (number === undefined) return NaN;
    checked(field, number, limit);
    return number.value;
  };
  const measure = (field: Field, family: MeasureFamily, usualUnit: string, limit: Bounds): number => {
    const parsed = take(field, parseMeasure(form[field], family, usualUnit, field));
    if (parsed === undefined) return NaN;
    const { unit, number, value } = parsed;
    checked(field, number, { min: fromSi(limit.min, unit), max: fromSi(limit.max, unit) });
    return value;
  };
  const side = (field: Field): number => measure(field, lengths, 'm', bounds.side);

  const source = (): GasSource =>
    form.sourceAs === 'flow'
      ? {
          kind: 'flow',
          carbonMonoxideLPerMin:
            measure('flow', volumeFlows, 'L/min', bounds.flow) * litresPerM3 * secondsPerMinute,
        }
      : {
          kind: 'engine',
          engine: {
            displacementM3: measure('displacement', volumes, 'cm3', bounds.displacement),
            rpm: measure('speed', engineSpeeds, 'rpm', bounds.speed) * secondsPerMinute,
            turnsPerFilling: form.cycle === 'two-stroke' ? 1 : 2,
            volumetricEfficiency: plain('filling', bounds.filling) / 100,
            carbonMonoxideShare: plain('carbonMonoxide', bounds.carbonMonoxide) / 100,
          },
        };
  const value: ExhaustGasGiven = {
    volumeM3:
      form.roomAs === 'volume'
        ? measure('volume', volumes, 'm3', bounds.volume)
        : side('length') * side('width') * side('height'),
    airChangesPerHour: plain('airChanges', bounds.airChanges),
    source: source(),
    kelvins: measure('temperature', temperatures, 'C', bounds.temperature),
    runningMinutes: plain('running', bounds.running),
    initialPpm: plain('initial', bounds.initial),
    activity: form.activity === 'rest' ? 'rest' : 'light work',
    scale: form.scale === 'linear' ? 'linear' : 'logarithmic',
    mark,
  };
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value };
}
