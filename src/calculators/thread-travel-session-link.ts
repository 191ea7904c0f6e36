import { defaultAnswers } from './bench-set-up.ts';
import { formatFixed } from './format-number.ts';
import { writeSessionLink } from './session-link.ts';
import type { ThreadTravel, ThreadTravelBudget } from './thread-travel.ts';

/** Hundredths of a turn: finer than anybody counts them. */
const turnDecimals = 2;

/** Carburettors of a set by its adjusters: where one carburettor or one joint has none, there is one more. */
const carburettorsOf = ({ generation, adjusters }: ThreadTravel): number =>
  adjusters.length + (generation === 'fixed-reference' || generation === 'paired-screws' ? 1 : 0);

/**
 * The keys of a link into the bench session with the kind of set and the thread left now on each adjuster; null where the
 * set has fewer than two or more than eight carburettors.
 */
export function sessionLinkOf(
  travel: ThreadTravel,
  budget: ThreadTravelBudget,
): Readonly<Record<string, string>> | null {
  const carburettors = carburettorsOf(travel);
  if (carburettors < 2 || carburettors > 8) return null;
  const typed = (turns: number): string => formatFixed(turns, turnDecimals);
  const answers = {
    ...defaultAnswers('mmHg'),
    generation: travel.generation,
    carburettors: String(carburettors),
    thread: budget.adjusters.map(({ turnsLeft: { closing, opening } }) => ({
      closing: typed(closing),
      opening: typed(opening),
    })),
    ...(travel.generation === 'bypass-screws' && { fixed: '' }),
  };
  return writeSessionLink(answers, '');
}
