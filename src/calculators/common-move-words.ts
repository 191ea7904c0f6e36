import { adjusterRow } from './adjuster-rows.ts';
import type { AdjusterRow } from './adjuster-rows.ts';
import type { AnswerLine } from './answer-line.ts';
import { describeTurnSize, describeTurnsInWords } from './format-turns.ts';
import { numberInWords } from './number-in-words.ts';
import { line } from './thread-travel-lines.ts';
import type { CommonMove, ThreadTravel, ThreadTravelBudget } from './thread-travel.ts';

/** The common move in a sentence, in figures, and what it leaves of every adjuster. */
export type DescribedCommonMove = {
  readonly lead: string;
  readonly lines: readonly AnswerLine[];
  readonly rows: readonly AdjusterRow[];
};

/** The way that turns go, as a verb. */
export const verb = (turns: number): string => (turns > 0 ? 'open' : 'close');
/** Less than half a minute of a clock face: nobody turns it. */
const smallestTurn = 1 / 120;
const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** What the common move leaves, or what is missing even then. */
function thenWords(least: number): string {
  const are = Math.abs(least) > 1 ? 'are' : 'is';
  return least < 0
    ? `Then at the worst ${describeTurnSize(least)} ${are} still missing: re-centre the screws first, by the service manual.`
    : `Then at least ${describeTurnsInWords(least)} ${are} left everywhere.`;
}

const adjustersWords = (count: number): string =>
  count === 1 ? 'the adjuster' : count === 2 ? 'both adjusters' : `all ${numberInWords(count)} adjusters`;

/** The common move in words. */
export function describeCommonMove(move: CommonMove, travel: ThreadTravel): DescribedCommonMove {
  const rows = move.adjusters.map(adjusterRow);
  const least = move.leastLeftTurns;
  const leastText = least < 0 ? `${describeTurnSize(least)} missing` : describeTurnsInWords(least);
  const leastLine = line('least', 'Then left at the worst', leastText);
  if (Math.abs(move.turns) < smallestTurn) {
    const lead = move.limitedByIdleScrew
      ? 'The idle-speed screw has no thread left to undo a common move.'
      : 'The adjusters stand in the middle already: no common move leaves more thread.';
    return { lead, lines: [leastLine], rows };
  }
  const which = adjustersWords(travel.adjusters.length);
  const all = `${verb(move.turns)} ${which} by ${describeTurnSize(move.turns)}`;
  const undo = `${verb(move.idleScrewTurns)} the idle-speed screw by ${describeTurnSize(move.idleScrewTurns)}`;
  const after = move.idleScrewAfterwards;
  return {
    lead: `${capital(all)}, and ${undo}. ${thenWords(least)}`,
    lines: [
      line(
        'all',
        'All adjusters',
        `${verb(move.turns)} ${describeTurnSize(move.turns)}`,
        'on top of the plan',
      ),
      line(
        'idle',
        'Idle-speed screw, to undo it',
        `${verb(move.idleScrewTurns)} ${describeTurnSize(move.idleScrewTurns)}`,
        after === null ? 'if it has the same thread and lever' : undefined,
      ),
      leastLine,
      ...(after === null
        ? []
        : [
            line(
              'idle-after-closing',
              'Idle-speed screw, then to close',
              describeTurnsInWords(after.closing),
            ),
            line('idle-after-opening', 'Idle-speed screw, then to open', describeTurnsInWords(after.opening)),
          ]),
    ],
    rows,
  };
}

const noShiftWords = {
  'separate-cables': '',
  'all-adjustable': '',
  'fixed-reference':
    'This kind has no free common move: one carburettor has no adjuster, and all others are matched to it.',
  'paired-screws':
    'This kind has no free common move: its screws stand between carburettors and move them against each other.',
  'bypass-screws':
    'This kind has no free common move: nothing takes back what all bypass screws do together.',
} as const;

/** Why a set has no free common move; empty where it has one. */
export const whyNoCommonMove = (travel: ThreadTravel, { fits }: ThreadTravelBudget): string => {
  const words = noShiftWords[travel.generation];
  return words === '' || fits
    ? words
    : `${words} Re-centre the screws before the plan, by the service manual.`;
};
