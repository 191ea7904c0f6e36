import { adjusterRow } from './adjuster-rows.ts';
import type { AdjusterRow } from './adjuster-rows.ts';
import type { AnswerLine } from './answer-line.ts';
import { describeCommonMove, whyNoCommonMove } from './common-move-words.ts';
import type { DescribedCommonMove } from './common-move-words.ts';
import { formatFixed } from './format-number.ts';
import { describeTurnSize } from './format-turns.ts';
import type { ThreadTravelQuestion } from './thread-travel-budget-form.ts';
import { threadTravelLines } from './thread-travel-lines.ts';
import { sessionLinkOf } from './thread-travel-session-link.ts';
import { threadTravelWarnings } from './thread-travel-warnings.ts';
import type { RunningOut, ThreadTravelBudget } from './thread-travel.ts';

/** One screw of the plot, in turns from where it stands now; positive opens. */
export type TravelMark = {
  /** The number of the adjuster; null for the idle-speed screw. */
  readonly adjuster: number | null;
  readonly closing: number;
  readonly opening: number;
  readonly planned: number;
  /** Plan and common move together; null where there is none. */
  readonly shifted: number | null;
};

export type DescribedThreadTravel = {
  readonly lead: string;
  readonly warnings: readonly string[];
  readonly lines: readonly AnswerLine[];
  readonly rows: readonly AdjusterRow[];
  /** The common move that leaves the most thread; null with `noShift` saying why. */
  readonly shift: DescribedCommonMove | null;
  readonly noShift: string;
  readonly marks: readonly TravelMark[];
  /** What the plot shows, for those who do not see it. */
  readonly plot: string;
  /** Keys of a link into the bench session. */
  readonly sessionLink: Readonly<Record<string, string>> | null;
  readonly announcement: string;
};

const side = { closing: 'to close', opening: 'to open' } as const;
const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** The budget as words and digits. Rounding happens here, once. */
export function describeThreadTravelBudget(
  question: ThreadTravelQuestion,
  budget: ThreadTravelBudget,
): DescribedThreadTravel {
  const lead = leadOf(question, budget);
  const { commonMove } = budget;
  const shift = commonMove && describeCommonMove(commonMove, question.travel);
  const marks = marksOf(budget);
  return {
    lead,
    warnings: threadTravelWarnings(question.travel, budget),
    lines: threadTravelLines(question, budget),
    rows: budget.adjusters.map(adjusterRow),
    shift,
    noShift: whyNoCommonMove(question.travel, budget),
    marks,
    plot: marks.map(markWords).join(' '),
    sessionLink: sessionLinkOf(question.travel, budget),
    announcement: shift === null ? lead : `${lead} ${shift.lead}`,
  };
}

const leftWords = ({ adjuster, side: which, turnsLeft }: RunningOut): string =>
  `adjuster\u00a0${adjuster} ${turnsLeft < 0 ? 'lacks' : 'has'} ${describeTurnSize(turnsLeft)} ${turnsLeft < 0 ? '' : 'left '}${side[which]}`;

function leadOf({ travel }: ThreadTravelQuestion, { fits, runsOutFirst }: ThreadTravelBudget): string {
  const planned = travel.adjusters.some(({ plannedTurns = 0 }) => plannedTurns !== 0);
  if (!fits) return `The plan does not fit: ${leftWords(runsOutFirst)}.`;
  const first = `${leftWords(runsOutFirst)}, the least of all`;
  return planned ? `The plan fits. After it ${first}.` : `${capital(first)}.`;
}

function marksOf({ adjusters, commonMove, idleScrewLeft }: ThreadTravelBudget): readonly TravelMark[] {
  const marks = adjusters.map(({ adjuster, turnsLeft, turns }): TravelMark => ({
    adjuster,
    ...turnsLeft,
    planned: turns,
    shifted: commonMove === null ? null : turns + commonMove.turns,
  }));
  return idleScrewLeft === null
    ? marks
    : [
        ...marks,
        { adjuster: null, ...idleScrewLeft, planned: 0, shifted: commonMove?.idleScrewTurns ?? null },
      ];
}

const markWords = ({ adjuster, closing, opening, planned, shifted }: TravelMark): string =>
  `${adjuster === null ? 'Idle-speed screw' : `Adjuster ${adjuster}`}: ${formatFixed(closing, 2)} to close, ${formatFixed(opening, 2)} to open, planned ${formatFixed(planned, 2)}${shifted === null ? '' : `, with the common move ${formatFixed(shifted, 2)}`}.`;
