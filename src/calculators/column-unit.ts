import { columnPressurePa } from './column-pressure.ts';
import { inchesPerFoot, metresPerInch } from './exact-definitions.ts';
import type { Exactness, PressureUnit } from './pressure-unit.ts';

type Height = {
  readonly symbol: string;
  readonly metres: number;
  readonly composition: string;
  /** The spoken plural first, then what else people type. */
  readonly words: readonly [string, ...string[]];
};

type Column = {
  readonly symbol: string;
  /** The spoken name first, then what else people type. */
  readonly words: readonly [string, ...string[]];
  readonly densityKgPerM3: number;
  readonly exactness: Exactness;
  readonly source: string;
  /** Temperature spellings, the printed one first; none for the conventional columns. */
  readonly temperatures: readonly string[];
};

export const heights = {
  mm: {
    symbol: 'mm',
    metres: 0.001,
    composition: '0.001 m',
    words: ['millimetres', 'millimetre', 'millimeters', 'millimeter', 'mm'],
  },
  cm: {
    symbol: 'cm',
    metres: 0.01,
    composition: '0.01 m',
    words: ['centimetres', 'centimetre', 'centimeters', 'centimeter', 'cm'],
  },
  in: {
    symbol: 'in',
    metres: metresPerInch,
    composition: '0.0254 m',
    words: ['inches', 'inch', 'in', 'ins'],
  },
  ft: {
    symbol: 'ft',
    metres: inchesPerFoot * metresPerInch,
    composition: '12 × 0.0254 m',
    words: ['feet', 'foot', 'ft'],
  },
} as const satisfies Record<string, Height>;

/** A unit of pressure that is a height of a liquid: density × standard gravity × height. */
export function columnUnit(height: Height, column: Column, rare: boolean): PressureUnit {
  const [printed, ...otherTemperatures] = column.temperatures;
  const at = printed === undefined ? '' : ` ${printed}`;
  return {
    id: `${height.symbol}${column.symbol.replace('₂', '2')}${at.replace(/[ °]/gu, (mark) => (mark === ' ' ? '-' : ''))}`,
    symbol: `${height.symbol}${column.symbol}${at && ` (${printed?.replace('°', ' °')})`}`,
    name: `${height.words[0]} of ${column.words[0]}${at && ` at ${printed?.replace('°', ' °')}`}`,
    // Many, and seldom asked for.
    get aliases() {
      return height.words.flatMap((tall) =>
        column.words.flatMap((liquid) =>
          (printed === undefined ? [''] : [printed, ...otherTemperatures]).flatMap((temperature) => [
            `${tall} ${liquid} ${temperature}`,
            `${tall} of ${liquid} ${temperature}`,
          ]),
        ),
      );
    },
    pascals: columnPressurePa(column.densityKgPerM3, height.metres),
    exactness: column.exactness,
    composition: `${column.densityKgPerM3} kg/m³ × 9.80665 m/s² × ${height.composition}`,
    source: column.source,
    rare,
  };
}
