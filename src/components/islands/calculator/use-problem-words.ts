import { useEffect, useState } from 'preact/hooks';
import type { SaidProblem, UnsaidProblem } from '../../../calculators/index.ts';

type Say = <Field extends string>(problem: UnsaidProblem<Field>) => SaidProblem<Field>;

const sayOnly =
  (sentence: string): Say =>
  ({ field, problem }) => ({ field, problem, sentence });

const onTheirWay = sayOnly('This cannot be read. One moment: the words for it are on their way.');
const notHere = sayOnly(
  'This cannot be read, and the words for it did not arrive. Load the page again once there is a network.',
);

/**
 * What says problems. Its words come when the calculator has started: a problem is told after a pause in the typing,
 * and an answer does not wait for words that it does not need.
 */
export function useProblemWords(): Say {
  const [say, setSay] = useState<Say>(() => onTheirWay);
  useEffect(() => {
    const fetchWords = () =>
      // Past the table of contents of the package, which would bring all of it.
      import('../../../calculators/say-problem.ts').then(
        ({ sayProblem }) => setSay(() => sayProblem),
        () => setSay(() => notHere),
      );
    // Behind the answer to what was typed before the calculator started.
    const waiting = setTimeout(() => void fetchWords());
    return () => clearTimeout(waiting);
  }, []);
  return say;
}
