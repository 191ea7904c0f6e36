import { checkNumber } from './check-number.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';
import { richExhaust } from './rich-exhaust.ts';

export type RunningEngine = {
  readonly displacementM3: number;
  readonly rpm: number;
  /** Turns of the crankshaft for one filling of each cylinder: 2 in a four-stroke, 1 in a two-stroke. */
  readonly turnsPerFilling: 1 | 2;
  /** Air that goes in, at the state of the room, over what the displacement would hold: small behind a closed throttle. */
  readonly volumetricEfficiency: number;
  /** Of the dry exhaust, by volume. */
  readonly carbonMonoxideShare: number;
};

export type EngineGas = {
  readonly airLPerMin: number;
  readonly exhaustLPerMin: number;
  readonly carbonMonoxideLPerMin: number;
  /** λ, see `richExhaust`. */
  readonly airRatio: number;
};

const litresPerM3 = 1000;

/**
 * Carbon monoxide that a running engine gives off, in litres a minute at the state of the room: the air that it draws
 * (Heywood 1988, eq. 2.27, from memory), the dry exhaust of that air, and its share of carbon monoxide.
 * Problems: `not-finite`, `out-of-range` of each (displacement and speed above 0), and those of `richExhaust`.
 */
export function engineCarbonMonoxide(engine: RunningEngine): Result<EngineGas> {
  const { displacementM3, rpm, turnsPerFilling, volumetricEfficiency, carbonMonoxideShare } = engine;
  const problem =
    checkNumber('displacementM3', displacementM3, { above: 0 }) ??
    checkNumber('rpm', rpm, { above: 0 }) ??
    checkNumber('volumetricEfficiency', volumetricEfficiency, { min: 0 });
  if (problem) return fail(problem);
  const burnt = richExhaust(carbonMonoxideShare);
  if (!burnt.ok) return burnt;
  const airLPerMin = (litresPerM3 * displacementM3 * volumetricEfficiency * rpm) / turnsPerFilling;
  const exhaustLPerMin = airLPerMin * burnt.value.dryPerAir;
  return succeed({
    airLPerMin,
    exhaustLPerMin,
    carbonMonoxideLPerMin: exhaustLPerMin * carbonMonoxideShare,
    airRatio: burnt.value.airRatio,
  });
}
