import { cpus } from 'node:os';
import { times, type Matrix } from '../src/calculators/advisor/matrix.ts';
import { screwsOf } from '../src/calculators/linkage.ts';
import { nextStep } from '../src/calculators/next-step.ts';
import {
  advance,
  firstState,
  inventEngine,
  practiceEngineExample,
} from '../src/calculators/practice-engine.ts';
import type { SessionEvent, SetUp } from '../src/calculators/protocol.ts';
import { inventedEngine, mmHg } from '../tests/engine/invented.ts';
import { randomFrom, type Random } from '../tests/engine/random.ts';
import { benchConversions } from './bench-conversions.ts';
import { plainGauge } from './cells.ts';
import { quantile } from './summary.ts';

/** Conversions of pressures beside two anchors; then times one `nextStep`, as medians, beside a plain product of two square matrices of the state's dimension. */
const carburettorCounts = [2, 3, 4, 5, 6, 7, 8] as const;
const eventCounts = [10, 20, 30, 40, 50, 60] as const;
const repeats = 41;
const productsAtOnce = 200;

/** Depressions, the effect of a turn, one unevenness a screw, speed, warm-up. */
const stateDimension = (carburettors: number, screws: number): number => carburettors + 1 + screws + 2;

const medianMs = (work: () => unknown): number => {
  for (let k = 0; k < 5; k++) work();
  return quantile(
    Array.from({ length: repeats }, () => {
      const start = performance.now();
      work();
      return performance.now() - start;
    }),
    0.5,
  );
};

const setUpOf = (carburettors: number): SetUp => {
  const screws = screwsOf('all-adjustable', carburettors);
  if (!screws.ok) throw new Error(JSON.stringify(screws.problem));
  return { carburettors, screws: screws.value, tolerancePa: 10 * mmHg, gauge: plainGauge };
};

/** Readings of an invented engine with a small turn after every second one. */
const eventsOf = (setUp: SetUp, count: number, random: Random): readonly SessionEvent[] => {
  const engine = inventedEngine({ linkage: setUp.screws.map(({ moves }) => moves) }, random);
  const n = setUp.carburettors;
  return Array.from({ length: count }, (_, k): SessionEvent => {
    if (k >= n && k % 3 === 2) {
      const turns = random.uniform(-0.1, 0.1);
      engine.turn((k % n) + 1, turns);
      return { kind: 'turn', screw: (k % n) + 1, turns };
    }
    const { depressionPa } = engine.read((k % n) + 1);
    return { kind: 'reading', carburettor: (k % n) + 1, depressionPa };
  });
};

const productMs = (dimension: number, random: Random): number => {
  const square = (): Matrix =>
    Array.from({ length: dimension }, () => Array.from({ length: dimension }, () => random.uniform(-1, 1)));
  const [a, b] = [square(), square()];
  const all = medianMs(() => {
    for (let k = 0; k < productsAtOnce; k++) times(a, b);
  });
  return all / productsAtOnce;
};

const random = randomFrom(1);
const cores = cpus();
console.log(
  `Node ${process.versions.node} on ${process.platform} ${process.arch}, ${cores.length} cores. Medians of ${repeats}.`,
);
const conversionsKept = benchConversions();
console.log('Milliseconds for one step after so many events; the last columns compare.\n');
const cell = (text: string): string => text.padStart(9);
console.log(
  ['n', ...eventCounts.map(String), 'product', 'products', '60 : 10'].map(cell).join(''),
  ' (products: those that the 60-event step takes)',
);
let growsTooFast = false;
for (const carburettors of carburettorCounts) {
  const setUp = setUpOf(carburettors);
  const steps = eventCounts.map((count) => {
    const events = eventsOf(setUp, count, random);
    return medianMs(() => nextStep(setUp, events));
  });
  const product = productMs(stateDimension(carburettors, setUp.screws.length), random);
  const [first, last] = [steps[0]!, steps.at(-1)!];
  const growth = last / first;
  // Six times the events may take six times as long, and no longer; a fifth is left for the clock.
  if (growth > (1.2 * eventCounts.at(-1)!) / eventCounts[0]) growsTooFast = true;
  console.log(
    [
      String(carburettors),
      ...steps.map((ms) => ms.toFixed(3)),
      product.toFixed(5),
      (last / product).toFixed(0),
      growth.toFixed(1),
    ]
      .map(cell)
      .join(''),
  );
}
console.log('\nThe practice engine: simulated seconds for one second of this machine, gauge and all.');
for (const carburettors of [2, 4, 6]) {
  const engine = inventEngine({ ...practiceEngineExample, carburettors });
  if (!engine.ok) throw new Error(JSON.stringify(engine.problem));
  const state = advance(engine.value, firstState(engine.value, 1), 5);
  const ms = medianMs(() => advance(engine.value, state, 1));
  console.log(`${carburettors} cylinders: ${(1000 / ms).toFixed(0)} times as fast as the clock.`);
}

console.log(
  growsTooFast ? '\nThe cost grows faster than the events.' : '\nThe cost grows no faster than the events.',
);
process.exitCode = growsTooFast || !conversionsKept ? 1 : 0;
