import { screwsOf } from '../src/calculators/linkage.ts';
import type { SetUp } from '../src/calculators/protocol.ts';
import type { TestEngine } from '../tests/engine/engine.ts';
import { inventedEngine } from '../tests/engine/invented.ts';
import { randomFrom, type Random } from '../tests/engine/random.ts';
import { runSession } from '../tests/engine/session.ts';
import { plainEffectFactor, plainGauge, type Cell } from './cells.ts';
import { balanceByHand } from './hand-practice.ts';
import { seedOf } from './seeds.ts';
import { summaryOf, type CellSummary, type Run } from './summary.ts';

/** Every engine of a cell, worked on by the cell's method. The four methods meet the same engines. */
export const runCell = (cell: Cell, engines: number, seed: number): CellSummary =>
  summaryOf(
    cell,
    Array.from({ length: engines }, (_, k) => runOne(cell, seedOf(seed, placeOf(cell), k))),
  );

const placeOf = (cell: Cell): string => [cell.hardship, cell.generation, cell.carburettors].join('/');

const runOne = (cell: Cell, seed: number): Run => {
  const random = randomFrom(seed);
  const layout = screwsOf(
    cell.generation,
    cell.carburettors,
    cell.fixed === undefined ? {} : { fixed: cell.fixed },
  );
  if (!layout.ok) throw new Error(JSON.stringify(layout.problem));
  const linkage = layout.value.map(({ moves }) => moves);
  const engine = engineFor(cell, linkage, random);
  if (cell.method !== 'advice')
    return { ...balanceByHand(cell.method, engine, cell.tolerancePa, cell.fixed), claims: [] };
  const { targetRpm, thread, effectPaPerTurn } = engine.description;
  const setUp: SetUp = {
    carburettors: cell.carburettors,
    screws: linkage.map((moves, j) => {
      const turnsLeft = thread?.[j];
      return turnsLeft ? { moves, turnsLeft } : { moves };
    }),
    tolerancePa: cell.tolerancePa,
    gauge: plainGauge,
    targetRpm,
    ...(cell.toldEffectFactor && { effectPaPerTurn: cell.toldEffectFactor * effectPaPerTurn }),
    ...cell.told,
  };
  return runSession(setUp, engine, { withRpm: cell.withRpm ?? false });
};

/** An engine of the cell; with short threads, the first drawn that can, or cannot, be levelled. */
const engineFor = (cell: Cell, linkage: readonly (readonly number[])[], random: Random): TestEngine => {
  for (;;) {
    const thread = linkage.map(() => ({
      closing: random.uniform(0.3, 1.6),
      opening: random.uniform(0.3, 1.6),
    }));
    const engine = inventedEngine(
      {
        linkage,
        effectFactor: cell.effectFactor ?? plainEffectFactor,
        ...(cell.screwSpread !== undefined && { screwSpread: cell.screwSpread }),
        changes: { ...cell.engine, ...(cell.shortThreads && { thread }) },
      },
      random,
    );
    if (!cell.shortThreads) return engine;
    if (canBeLevelled(engine) === (cell.shortThreads === 'can-be-levelled')) return engine;
  }
};

/** Whether some common level leaves 0.1 turn on both sides of every screw; each moves its own carburettor. */
const canBeLevelled = ({ description }: TestEngine): boolean => {
  const spare = 0.1;
  const levels = description.turnsToLevel.map((turns, j) => {
    const { closing, opening } = description.thread![j]!;
    const factor = description.screwFactors[j]!;
    return { low: factor * (spare - closing - turns), high: factor * (opening - spare - turns) };
  });
  return Math.max(...levels.map(({ low }) => low)) <= Math.min(...levels.map(({ high }) => high));
};
