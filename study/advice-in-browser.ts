import { screwsOf } from '../src/calculators/linkage.ts';
import { nextStep } from '../src/calculators/next-step.ts';
import type { SetUp } from '../src/calculators/protocol.ts';
import { inventedEngine, mmHg } from '../tests/engine/invented.ts';
import { randomFrom } from '../tests/engine/random.ts';
import { runSession } from '../tests/engine/session.ts';
import { plainGauge } from './cells.ts';
import { quantile } from './summary.ts';

const sessions = 3;
const repeats = 5;

/**
 * Milliseconds of every step of some whole sessions on invented engines, each the median of five; bundled and run in a page by
 * `npm run bench:browser`.
 */
export function timeAdvice(carburettors: number): readonly number[] {
  const screws = screwsOf('all-adjustable', carburettors);
  if (!screws.ok) throw new Error(JSON.stringify(screws.problem));
  const setUp: SetUp = {
    carburettors,
    screws: screws.value,
    tolerancePa: 10 * mmHg,
    gauge: plainGauge,
  };
  const linkage = setUp.screws.map(({ moves }) => moves);
  return Array.from({ length: sessions }, (_, session) => {
    const { events } = runSession(setUp, inventedEngine({ linkage }, randomFrom(session + 1)));
    return events.map((_event, end) =>
      quantile(
        Array.from({ length: repeats }, () => {
          const start = performance.now();
          nextStep(setUp, events.slice(0, end + 1));
          return performance.now() - start;
        }),
        0.5,
      ),
    );
  }).flat();
}
