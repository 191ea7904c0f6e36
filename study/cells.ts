import { screwsOf, type Generation } from '../src/calculators/linkage.ts';
import type { SetUp } from '../src/calculators/protocol.ts';
import type { EngineDescription } from '../tests/engine/engine.ts';
import { mmHg } from '../tests/engine/invented.ts';
import { handPractices, type HandPractice } from './hand-practice.ts';

export type Method = 'advice' | HandPractice;

/** What is studied: who works, on what engines, and what the advice is told. */
export type Cell = {
  readonly method: Method;
  readonly generation: Generation;
  readonly carburettors: number;
  readonly tolerancePa: number;
  /** Name of what makes the cell hard; `plain` where nothing does. */
  readonly hardship: string;
  readonly fixed?: number;
  /** Changes of the engine against the plain one. */
  readonly engine?: Partial<EngineDescription>;
  readonly effectFactor?: readonly [number, number];
  readonly screwSpread?: number;
  /** Told to the advice in place of the truth. */
  readonly told?: Partial<Pick<SetUp, 'gauge' | 'lockShiftTurns'>>;
  /** The effect told, as a factor on the true one. */
  readonly toldEffectFactor?: number;
  readonly withRpm?: boolean;
  /** Only engines with short threads that a level exists for, or only those without. */
  readonly shortThreads?: 'can-be-levelled' | 'cannot';
};

/** Unless a cell says otherwise: flutter ±3, steps of 5 mmHg. */
export const plainGauge = { resolutionPa: 5 * mmHg, flutterPa: 3 * mmHg };
/** A turn takes 140 mmHg times a factor between these, unknown to the advice. */
export const plainEffectFactor: readonly [number, number] = [0.7, 1.4];

export const counts = [2, 3, 4, 6, 8] as const;
const layouts: readonly { readonly generation: Generation; readonly fixedIn?: (n: number) => number }[] = [
  { generation: 'separate-cables' },
  { generation: 'all-adjustable' },
  { generation: 'fixed-reference', fixedIn: (n) => Math.ceil(n / 2) },
  { generation: 'paired-screws' },
  { generation: 'bypass-screws' },
];

/** Where the generation allows the number: eight with screws between neighbours have no usual layout. */
const plainCells: readonly Cell[] = layouts.flatMap(({ generation, fixedIn }) =>
  counts.flatMap((carburettors) => {
    const fixed = fixedIn ? { fixed: fixedIn(carburettors) } : {};
    if (!screwsOf(generation, carburettors, fixed).ok) return [];
    return (['advice', ...handPractices] as const).map((method) => ({
      method,
      generation,
      carburettors,
      tolerancePa: 10 * mmHg,
      hardship: 'plain',
      ...fixed,
    }));
  }),
);

const widerCells: readonly Cell[] = counts.map((carburettors) => ({
  method: 'advice',
  generation: 'all-adjustable',
  carburettors,
  tolerancePa: 20 * mmHg,
  hardship: 'tolerance-20',
}));

const hard = (hardship: string, changes: Partial<Cell>): Cell => ({
  method: 'advice',
  generation: 'all-adjustable',
  carburettors: 4,
  tolerancePa: 10 * mmHg,
  hardship,
  ...changes,
});

const flutter = (times: number) => ({ gauge: { ...plainGauge, flutterPa: times * plainGauge.flutterPa } });

const hardCells: readonly Cell[] = [
  hard('effect-told-half', { toldEffectFactor: 0.5 }),
  hard('effect-told-double', { toldEffectFactor: 2 }),
  hard('warm-up', { engine: { warmUpPaPerMinute: 2 * mmHg } }),
  hard('speed-60-tachometer', { engine: { speedErrorRpm: 60, tachometerErrorRpm: 10 }, withRpm: true }),
  hard('speed-60', { engine: { speedErrorRpm: 60 } }),
  hard('speed-60-flutter-told-6', { engine: { speedErrorRpm: 60 }, told: flutter(2) }),
  hard('weak-screws', { effectFactor: [0.3, 0.3] }),
  hard('quick-screws', { effectFactor: [2, 2] }),
  hard('uneven-screws', { screwSpread: 0.2 }),
  hard('wrong-readings', { engine: { wrongReadings: { chance: 0.03, byPa: 40 * mmHg } } }),
  hard('short-threads-can', { shortThreads: 'can-be-levelled' }),
  hard('short-threads-cannot', { shortThreads: 'cannot' }),
  hard('flutter-6-untold', { engine: flutter(2) }),
  hard('flutter-6-told', { engine: flutter(2), told: flutter(2) }),
  hard('lock-shift-double-untold', { engine: { lockShiftTurns: 0.03, commonShiftTurns: 0.02 } }),
  hard('lock-shift-double-told', {
    engine: { lockShiftTurns: 0.03, commonShiftTurns: 0.02 },
    told: { lockShiftTurns: 0.04 },
  }),
  hard('tolerance-5', { tolerancePa: 5 * mmHg }),
];

export const cells: readonly Cell[] = [...plainCells, ...widerCells, ...hardCells];
