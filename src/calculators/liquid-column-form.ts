import type { FormFields } from './calculator-form.ts';
import { densities } from './density-units.ts';
import { standardAtmospherePa } from './exact-definitions.ts';
import { lengths } from './length-units.ts';
import { liquids } from './liquids.ts';
import { usualGlycolPercent } from './liquid-density.ts';
import type { MeasureLimit } from './measure-limit.ts';
import type { Limit } from './problem.ts';

const text = (initially: string) => ({ kind: 'text', initially }) as const;
export const columnKinds = ['u-tube', 'well', 'inclined'] as const;
export const columnSides = ['difference', 'depression'] as const;
/** A liquid whose density the reader gives. */
export const ownLiquid = 'own';
export const liquidChoices: readonly string[] = [...liquids.map(({ id }) => id), ownLiquid];

/**
 * The fields of the page “Liquid column”. Their first values are the worked example, invented: a U-tube of water between
 * two of four carburettors that read about 250 mmHg and are up to 30 mmHg apart.
 */
export const liquidColumnFields = {
  kind: { kind: 'choice', initially: 'u-tube', choices: columnKinds },
  sides: { kind: 'choice', initially: 'difference', choices: columnSides },
  liquid: { kind: 'choice', initially: 'water', choices: liquidChoices },
  strength: text(`${usualGlycolPercent} %`),
  density: text('1000 kg/m³'),
  temperature: text('20 °C'),
  difference: text('30 mmHg'),
  depression: text('250 mmHg'),
  bore: text('6 mm'),
  wellBore: text('60 mm'),
  angle: text('20°'),
  reading: text(''),
} as const satisfies FormFields<string>;

export type LiquidColumnField = keyof typeof liquidColumnFields;

/**
 * What is believed. In a narrower bore the liquid clings, a wider one takes litres; below 5° a leaning level is too long
 * drawn to be read: all from memory.
 */
export const columnLimits = {
  bore: { family: lengths, unitId: 'mm', min: 2, max: 25 },
  wellBore: { family: lengths, unitId: 'mm', min: 10, max: 500 },
  reading: { family: lengths, unitId: 'm', min: 0, max: 20 },
  density: { family: densities, unitId: 'kg/m3', min: 500, max: 15_000 },
  angle: { min: 5, max: 90 },
  pressure: { above: 0, max: standardAtmospherePa },
} as const satisfies Record<string, MeasureLimit | Limit>;
