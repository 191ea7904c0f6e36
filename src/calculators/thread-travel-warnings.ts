import { verb } from './common-move-words.ts';
import { describeTurnSize } from './format-turns.ts';
import { joinedNumbers } from './screw-words.ts';
import { millimetres } from './thread-travel-lines.ts';
import type { ThreadTravel, ThreadTravelBudget } from './thread-travel.ts';

/** What has to be known before the answer is used. */
export function threadTravelWarnings(travel: ThreadTravel, budget: ThreadTravelBudget): readonly string[] {
  const { adjusters, commonMove, engagementShort } = budget;
  const { engagementMm = 0, minimumEngagementMm = 0 } = travel;
  const bare = adjusters.filter(({ nutRoomMm }) => nutRoomMm !== null && nutRoomMm < 0);
  const bareNumbers = joinedNumbers(bare.map(({ adjuster }) => adjuster));
  return [
    ...(engagementShort
      ? [
          `Less thread holds than has to: ${millimetres(engagementMm)} of ${millimetres(minimumEngagementMm)}. Screw in first what is missing, engine off.`,
        ]
      : []),
    ...(bare.length > 0
      ? [
          `No room for the lock nut on adjuster${bare.length > 1 ? 's' : ''} ${bareNumbers} after the plan: a nut that is not full of thread does not hold.`,
        ]
      : []),
    ...(commonMove?.limitedByIdleScrew === true
      ? [
          `The idle-speed screw ends first. With more thread on it, all adjusters could ${verb(commonMove.unlimitedTurns)} by ${describeTurnSize(commonMove.unlimitedTurns)}.`,
        ]
      : []),
  ];
}
