import type { AnswerLine } from './answer-line.ts';
import { formatFixed, formatTrimmed } from './format-number.ts';
import { describeTurns, describeTurnSize, describeTurnsInWords } from './format-turns.ts';
import { isShort } from './short-of-thread.ts';
import { threadsPerInchOfPitchMm } from './thread-pitch.ts';
import type { ThreadTravelQuestion } from './thread-travel-budget-form.ts';
import { sessionLinkOf } from './thread-travel-session-link.ts';
import type { AdjusterBudget, CommonMove, RunningOut, ThreadTravelBudget } from './thread-travel.ts';

/** One side of an adjuster as printed: `0.75`, and whether it is short or missing. */
export type SideCell = { readonly text: string; readonly short: boolean };

/** One adjuster of a table, in turns. */
export type AdjusterRow = {
  readonly adjuster: number;
  readonly now: { readonly closing: SideCell; readonly opening: SideCell };
  /** Signed: `+1/2`, `−1/4`, `0`. */
  readonly turns: string;
  readonly afterwards: { readonly closing: SideCell; readonly opening: SideCell };
};

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
  readonly shift: {
    readonly lead: string;
    readonly lines: readonly AnswerLine[];
    readonly rows: readonly AdjusterRow[];
  } | null;
  readonly noShift: string;
  readonly marks: readonly TravelMark[];
  /** What the plot shows, for those who do not see it. */
  readonly plot: string;
  /** Keys of a link into the bench session. */
  readonly sessionLink: Readonly<Record<string, string>> | null;
  readonly announcement: string;
};

const millimetres = (value: number): string => `${formatTrimmed(value, 3)}\u00a0mm`;
const side = { closing: 'to close', opening: 'to open' } as const;
const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
/** “Open … by 1/2 turn”: verb and amount of a move; nothing smaller than a person sets by eye. */
const verb = (turns: number): string => (turns > 0 ? 'open' : 'close');
const smallestTurn = 1 / 120;

/** The budget as words and digits. Rounding happens here, once. */
export function describeThreadTravelBudget(
  question: ThreadTravelQuestion,
  budget: ThreadTravelBudget,
): DescribedThreadTravel {
  const lead = leadOf(question, budget);
  const { commonMove } = budget;
  const shift = commonMove && shiftOf(commonMove, question);
  const marks = marksOf(budget);
  return {
    lead,
    warnings: warningsOf(question, budget),
    lines: linesOf(question, budget),
    rows: budget.adjusters.map(rowOf),
    shift,
    noShift: noShiftOf(question, budget),
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

const cell = (turns: number, which: 'closing' | 'opening'): SideCell => ({
  text: formatFixed(turns, 2),
  short: isShort({ [which]: turns }),
});

const rowOf = ({ adjuster, turnsLeft, turns, afterwards }: AdjusterBudget): AdjusterRow => ({
  adjuster,
  now: { closing: cell(turnsLeft.closing, 'closing'), opening: cell(turnsLeft.opening, 'opening') },
  turns: `${turns > 0 ? '+' : ''}${describeTurns(turns)}`,
  afterwards: { closing: cell(afterwards.closing, 'closing'), opening: cell(afterwards.opening, 'opening') },
});

const line = (id: string, label: string, text: string, note?: string): AnswerLine => ({
  id,
  label,
  text,
  copied: text.replaceAll('\u00a0', ' ').replaceAll('−', '-'),
  ...(note !== undefined && { note }),
});

function linesOf({ travel, thread, minimumFrom, nut }: ThreadTravelQuestion, budget: ThreadTravelBudget) {
  const { travelPerTurnMm, travelPerClockHourMm, idleScrewLeft } = budget;
  const { engagementMm, minimumEngagementMm, lockNut } = travel;
  const perInch = `${formatTrimmed(threadsPerInchOfPitchMm(thread.pitchMm), 2)} to the inch`;
  const measured = thread.thread === null;
  const [firstNut] = [...budget.adjusters].sort((a, b) => (a.nutRoomMm ?? 0) - (b.nutRoomMm ?? 0));
  const nutNote = { thin: 'thin, ISO 4035, at most', regular: 'ISO 4032, at most', measured: 'as measured' };
  return [
    line(
      'turn',
      'One turn',
      millimetres(travelPerTurnMm),
      measured ? 'as measured' : `${thread.thread.name.replace('x', ' × ')}, ${perInch}`,
    ),
    line('hour', 'One hour of a clock face', millimetres(travelPerClockHourMm), '1/12 turn'),
    ...(minimumEngagementMm === undefined || engagementMm === undefined
      ? []
      : [
          line(
            'engagement',
            'Engagement to keep',
            millimetres(minimumEngagementMm),
            `of ${millimetres(engagementMm)}${minimumFrom === 'one-diameter' ? '; one diameter, common practice' : ''}`,
          ),
        ]),
    ...(lockNut === undefined || nut === null
      ? []
      : [
          line('nut', 'Lock nut', millimetres(lockNut.heightMm), nutNote[nut]),
          line(
            'nut-room',
            'Thread beyond the nut, at the least',
            millimetres(firstNut?.nutRoomMm ?? 0),
            `adjuster\u00a0${firstNut?.adjuster ?? 1}, after the plan`,
          ),
        ]),
    ...(idleScrewLeft === null
      ? []
      : [
          line(
            'idle-closing',
            'Idle-speed screw, left to close',
            describeTurnsInWords(idleScrewLeft.closing),
          ),
          line('idle-opening', 'Idle-speed screw, left to open', describeTurnsInWords(idleScrewLeft.opening)),
        ]),
  ];
}

function shiftOf(move: CommonMove, { travel }: ThreadTravelQuestion): DescribedThreadTravel['shift'] {
  const rows = move.adjusters.map(rowOf);
  const least = move.leastLeftTurns;
  const leastText = least < 0 ? `${describeTurnSize(least)} missing` : describeTurnsInWords(least);
  const leastLine = line('least', 'Then left at the worst', leastText);
  if (Math.abs(move.turns) < smallestTurn) {
    const lead = move.limitedByIdleScrew
      ? 'The idle-speed screw has no thread left to undo a common move.'
      : 'The adjusters stand in the middle already: no common move leaves more thread.';
    return { lead, lines: [leastLine], rows };
  }
  const all = `${verb(move.turns)} all ${travel.adjusters.length} adjusters by ${describeTurnSize(move.turns)}`;
  const undo = `${verb(move.idleScrewTurns)} the idle-speed screw by ${describeTurnSize(move.idleScrewTurns)}`;
  const after = move.idleScrewAfterwards;
  return {
    lead: `${capital(all)}, and ${undo}. Then ${least < 0 ? `${leastText} at the worst: it still does not fit` : `at least ${leastText} ${least > 1 ? 'are' : 'is'} left everywhere`}.`,
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

const noShiftOf = ({ travel }: ThreadTravelQuestion, { fits }: ThreadTravelBudget): string => {
  const words = noShiftWords[travel.generation];
  return words === '' || fits
    ? words
    : `${words} Re-centre the screws before the plan, by the service manual.`;
};

function warningsOf({ travel }: ThreadTravelQuestion, budget: ThreadTravelBudget): readonly string[] {
  const { adjusters, commonMove, engagementShort } = budget;
  const { engagementMm = 0, minimumEngagementMm = 0 } = travel;
  const bare = adjusters.filter(({ nutRoomMm }) => nutRoomMm !== null && nutRoomMm < 0);
  const bareNumbers = bare.map(({ adjuster }) => String(adjuster)).join(', ');
  return [
    ...(engagementShort
      ? [
          `Less thread holds than has to: ${millimetres(engagementMm)} of ${millimetres(minimumEngagementMm)}. Screw in first what is missing, engine off.`,
        ]
      : []),
    ...(bare.length > 0
      ? [
          `No room for the lock nut on adjuster ${bareNumbers} after the plan: a nut that is not full of thread does not hold.`,
        ]
      : []),
    ...(commonMove?.limitedByIdleScrew === true
      ? [
          `The idle-speed screw ends first. With more thread on it, all adjusters could ${verb(commonMove.unlimitedTurns)} by ${describeTurnSize(commonMove.unlimitedTurns)}.`,
        ]
      : []),
  ];
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
