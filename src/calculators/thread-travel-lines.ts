import type { AnswerLine } from './answer-line.ts';
import { formatTrimmed } from './format-number.ts';
import { describeTurnsInWords } from './format-turns.ts';
import { threadsPerInchOfPitchMm } from './thread-pitch.ts';
import type { ThreadTravelQuestion } from './thread-travel-budget-form.ts';
import type { ThreadTravelBudget } from './thread-travel.ts';

/** A length of a screw as printed: `0.067 mm`. */
export const millimetres = (value: number): string => `${formatTrimmed(value, 3)}\u00a0mm`;

/** A figure of an answer, copied with plain spaces and signs. */
export const line = (id: string, label: string, text: string, note?: string): AnswerLine => ({
  id,
  label,
  text,
  copied: text.replaceAll('\u00a0', ' ').replaceAll('−', '-'),
  ...(note !== undefined && { note }),
});

/** What one turn goes, and what else the screws have: engagement, lock nut, idle-speed screw. */
export function threadTravelLines(
  { travel, thread, minimumFrom, nut }: ThreadTravelQuestion,
  budget: ThreadTravelBudget,
): readonly AnswerLine[] {
  const { travelPerTurnMm, travelPerClockHourMm, idleScrewLeft, leastNutRoom } = budget;
  const { engagementMm, minimumEngagementMm, lockNut } = travel;
  const perInch = `${formatTrimmed(threadsPerInchOfPitchMm(thread.pitchMm), 2)} to the inch`;
  const measured = thread.thread === null;
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
    ...(lockNut === undefined || nut === null || leastNutRoom === null
      ? []
      : [
          line('nut', 'Lock nut', millimetres(lockNut.heightMm), nutNote[nut]),
          line(
            'nut-room',
            'Room beyond the nut, at the least',
            leastNutRoom.roomMm < 0
              ? `${millimetres(-leastNutRoom.roomMm)} missing`
              : millimetres(leastNutRoom.roomMm),
            `adjuster\u00a0${leastNutRoom.adjuster}, after the plan`,
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
