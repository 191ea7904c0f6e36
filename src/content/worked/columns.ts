import {
  answerLiquidColumn,
  formatSignificant,
  initialForm,
  liquidColumnFields,
  liquidDensity,
  liquidOf,
  pascalsOf,
  pressureUnit,
  standardGravity,
} from '../../calculators/index.ts';
import { valueOf } from '../value-of.ts';

/** Invented: a small difference between two carburettors, and what one of them reads against the air. */
const form = { ...initialForm(liquidColumnFields), difference: '10 mmHg' };

function figureOf(changed: Partial<typeof form>, id: string): string {
  const answered = answerLiquidColumn({ ...form, ...changed });
  if (!answered.ok) throw new Error('the example of the columns has a problem');
  const line = [...answered.answer.levels, ...answered.answer.build].find((each) => each.id === id);
  if (line === undefined) throw new Error(`no figure “${id}”`);
  return line.text;
}

const waterAt = (celsius: number): number => valueOf(liquidDensity(liquidOf('water'), celsius));
const cold = 10;
const warm = 30;

export const columns = {
  difference: form.difference,
  pascals: `${formatSignificant(pascalsOf(10, pressureUnit('mmHg')), 5)}\u00a0Pa`,
  density: figureOf({}, 'density'),
  temperature: form.temperature,
  gravity: `${standardGravity}\u00a0m/s²`,
  level: figureOf({}, 'level'),
  leg: figureOf({}, 'leg'),
  tube: figureOf({}, 'tube'),
  catch: figureOf({}, 'catch'),
  depression: form.depression,
  openSide: figureOf({}, 'open-side'),
  angle: form.angle,
  leaning: figureOf({ kind: 'inclined' }, 'level'),
  coldToWarm: `${formatSignificant(100 * (waterAt(cold) / waterAt(warm) - 1), 1)}\u00a0%`,
  cold: `${cold}\u00a0°C`,
  warm: `${warm}\u00a0°C`,
} as const;
