import type { TurnsLeft } from './protocol.ts';
import type { AdjusterBudget, AdjusterThread, NutRoom, RunningOut, ThreadTravel } from './thread-travel.ts';

/** What one turn of an adjuster goes: pitch × starts. */
export const leadMmOf = ({ pitchMm, starts = 1 }: ThreadTravel): number => pitchMm * starts;

/** Engagement that may be given up, or, negative, is owed. */
export const spareEngagementMm = ({
  engagementMm = 0,
  minimumEngagementMm = engagementMm,
}: ThreadTravel): number => engagementMm - minimumEngagementMm;

/**
 * One adjuster, by its position, after so many turns. Turns left are the thread that shows over the lead, less what the
 * lock nut keeps on its side; on the side on which the screw comes out of its thread, also the engagement above the minimum.
 */
export function adjusterBudget(
  given: ThreadTravel,
  { showing }: AdjusterThread,
  position: number,
  turns: number,
): AdjusterBudget {
  const { unscrewsWhen, lockNut } = given;
  const leadMm = leadMmOf(given);
  const free = (side: 'closing' | 'opening'): number => {
    const spareMm = unscrewsWhen === side ? spareEngagementMm(given) : 0;
    const nutMm = lockNut?.side === side ? lockNut.heightMm : 0;
    return Math.max(0, showing[`${side}Mm`] + spareMm - nutMm) / leadMm;
  };
  const turnsLeft: TurnsLeft = { closing: free('closing'), opening: free('opening') };
  const travelMm = turns * leadMm;
  const nutRoomMm =
    lockNut === undefined
      ? null
      : showing[`${lockNut.side}Mm`] - lockNut.heightMm + (lockNut.side === 'closing' ? travelMm : -travelMm);
  return {
    adjuster: position + 1,
    turnsLeft,
    turns,
    travelMm,
    afterwards: { closing: turnsLeft.closing + turns, opening: turnsLeft.opening - turns },
    nutRoomMm,
  };
}

/** The side with the least left; among equals the lowest number, and closing before opening. */
export function leastLeft(adjusters: readonly AdjusterBudget[]): RunningOut {
  const sides = adjusters.flatMap(({ adjuster, afterwards }): RunningOut[] => [
    { adjuster, side: 'closing', turnsLeft: afterwards.closing },
    { adjuster, side: 'opening', turnsLeft: afterwards.opening },
  ]);
  return sides.reduce((least, side) => (side.turnsLeft < least.turnsLeft ? side : least));
}

/** The adjuster whose lock nut has the least thread beyond it; null where there is no nut. */
export function leastNutRoom(adjusters: readonly AdjusterBudget[]): NutRoom | null {
  const rooms = adjusters.flatMap(({ adjuster, nutRoomMm }): NutRoom[] =>
    nutRoomMm === null ? [] : [{ adjuster, roomMm: nutRoomMm }],
  );
  return rooms.length === 0
    ? null
    : rooms.reduce((least, room) => (room.roomMm < least.roomMm ? room : least));
}
