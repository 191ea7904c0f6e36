import { checkNumber, checkOptionalNumber } from './check-number.ts';
import { carburettorLimit } from './check-session.ts';
import type { Problem } from './problem.ts';
import type { ThreadShowing, ThreadTravel } from './thread-travel.ts';

/** The most starts that a screw of this size has; two and three are made. From memory. */
const startsLimit = { min: 1, max: 4 } as const;

/** The first thing that is wrong with a thread to be budgeted, or undefined: `not-finite`, `out-of-range`, `no-screws`. */
export function checkThreadTravel(given: ThreadTravel): Problem | undefined {
  const { adjusters, idleScrew, starts = 1 } = given;
  const problem =
    checkNumber('pitchMm', given.pitchMm, { above: 0 }) ??
    checkNumber('starts', starts, startsLimit) ??
    checkNumber('starts', starts, { min: Math.round(starts), max: Math.round(starts) }) ??
    checkOptionalNumber('engagementMm', given.engagementMm, { min: 0 }) ??
    checkOptionalNumber('minimumEngagementMm', given.minimumEngagementMm, { min: 0 }) ??
    checkOptionalNumber('lockNut.heightMm', given.lockNut?.heightMm, { min: 0 });
  if (problem !== undefined) return problem;
  if (adjusters.length === 0) return { kind: 'no-screws' };
  const tooMany = checkNumber('adjusters', adjusters.length, { max: carburettorLimit.max });
  if (tooMany !== undefined) return tooMany;
  for (const [position, { showing, plannedTurns }] of adjusters.entries()) {
    const field = `adjusters.${position}`;
    const wrong = checkShowing(field, showing) ?? checkOptionalNumber(`${field}.plannedTurns`, plannedTurns);
    if (wrong !== undefined) return wrong;
  }
  if (idleScrew === undefined) return undefined;
  return (
    checkNumber('idleScrew.pitchMm', idleScrew.pitchMm, { above: 0 }) ??
    checkOptionalNumber('idleScrew.turnsPerAdjusterTurn', idleScrew.turnsPerAdjusterTurn, { above: 0 }) ??
    checkShowing('idleScrew', idleScrew.showing)
  );
}

const checkShowing = (field: string, showing: ThreadShowing): Problem | undefined =>
  checkNumber(`${field}.showing.closingMm`, showing.closingMm, { min: 0 }) ??
  checkNumber(`${field}.showing.openingMm`, showing.openingMm, { min: 0 });
