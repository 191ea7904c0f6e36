import { carburettorLimit } from './check-session.ts';
import type { Problem } from './problem.ts';
import type { Screw, SetUp, TurnsLeft } from './protocol.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

/** How a set of carburettors is joined, and so what its balance screws move. */
export const generations = [
  'separate-cables',
  'all-adjustable',
  'fixed-reference',
  'paired-screws',
  'bypass-screws',
] as const;

export type Generation = (typeof generations)[number];

/**
 * Whether all adjusters may be turned by the same amount, which the stops or the idle-speed screw take
 * back: so where every carburettor has one and none is matched to a carburettor without.
 */
export const hasFreeCommonMove = (generation: Generation): boolean =>
  generation === 'separate-cables' || generation === 'all-adjustable';

export type LinkageOptions = {
  /** The carburettor, counted from 1, that has no balance screw. */
  readonly fixed?: number;
  /** Thread left on each screw, in the order of the screws; null where it is unknown. */
  readonly thread?: readonly (TurnsLeft | null)[];
  /** The carburettors that each screw of `paired-screws` moves together. */
  readonly groups?: readonly (readonly number[])[];
};

/** Usual layouts of a bank with screws between its members (common practice). */
const usualGroups: Readonly<Record<number, readonly (readonly number[])[]>> = {
  2: [[1]],
  3: [[1], [3]],
  4: [[1], [4], [3, 4]],
  6: [[1], [3], [6], [1, 2], [5, 6]],
};

const isMember = (index: number, carburettors: number): boolean =>
  Number.isInteger(index) && index >= 1 && index <= carburettors;

const indexProblem = (field: string, value: number, carburettors: number): Problem => ({
  kind: 'index',
  field,
  value,
  limit: { min: 1, max: carburettors },
});

/** Which carburettors each screw moves: one list of members a screw. */
function membersOf(
  generation: Generation,
  carburettors: number,
  options: LinkageOptions,
): Result<readonly (readonly number[])[]> {
  const { fixed } = options;
  if (generation === 'paired-screws') {
    const groups = options.groups ?? usualGroups[carburettors];
    if (groups === undefined) return fail({ kind: 'groups-needed', value: carburettors });
    if (groups.length === 0) return fail({ kind: 'no-screws' });
    for (const [screw, group] of groups.entries()) {
      if (group.length === 0) {
        return fail({
          kind: 'column-length',
          field: `groups.${screw}`,
          value: 0,
          limit: { min: 1, max: carburettors },
        });
      }
      const wrong = group.find((member) => !isMember(member, carburettors));
      if (wrong !== undefined) return fail(indexProblem(`groups.${screw}`, wrong, carburettors));
    }
    return succeed(groups);
  }
  const each = Array.from({ length: carburettors }, (_, position) => [position + 1]);
  if (generation === 'separate-cables' || generation === 'all-adjustable') return succeed(each);
  if (fixed === undefined) {
    return generation === 'bypass-screws' ? succeed(each) : fail({ kind: 'fixed-needed' });
  }
  if (!isMember(fixed, carburettors)) return fail(indexProblem('fixed', fixed, carburettors));
  return succeed(each.filter(([member]) => member !== fixed));
}

/** The first thing wrong with the thread told, if any. */
function threadProblem(thread: LinkageOptions['thread'], screws: number): Problem | undefined {
  if (thread === undefined) return undefined;
  if (thread.length !== screws) {
    return {
      kind: 'column-length',
      field: 'thread',
      value: thread.length,
      limit: { min: screws, max: screws },
    };
  }
  for (const [screw, left] of thread.entries()) {
    if (left === null) continue;
    for (const side of ['closing', 'opening'] as const) {
      const field = `thread.${screw}.${side}`;
      if (!Number.isFinite(left[side])) return { kind: 'not-finite', field };
      if (left[side] < 0) return { kind: 'out-of-range', field, value: left[side], limit: { min: 0 } };
    }
  }
  return undefined;
}

/**
 * The balance screws of a set: each with its column of the linkage matrix, one entry per
 * carburettor, 1 where the screw moves that carburettor and 0 where it does not.
 *
 * Problems: `carburettor-count` outside 2–8; `fixed-needed` for `fixed-reference` without `fixed`;
 * `groups-needed` for `paired-screws` of an unusual number; `index` for a carburettor that is not
 * there; `no-screws` and `column-length` for groups that are empty; `column-length`, `not-finite`
 * and `out-of-range` for the thread.
 */
export function screwsOf(
  generation: Generation,
  carburettors: number,
  options: LinkageOptions = {},
): Result<SetUp['screws']> {
  if (
    !Number.isInteger(carburettors) ||
    carburettors < carburettorLimit.min ||
    carburettors > carburettorLimit.max
  ) {
    return fail({ kind: 'carburettor-count', value: carburettors, limit: carburettorLimit });
  }
  const members = membersOf(generation, carburettors, options);
  if (!members.ok) return members;
  const problem = threadProblem(options.thread, members.value.length);
  if (problem !== undefined) return fail(problem);
  return succeed(
    members.value.map((group, screw): Screw => {
      const moves = Array.from({ length: carburettors }, (_, position) =>
        group.includes(position + 1) ? 1 : 0,
      );
      const turnsLeft = options.thread?.[screw] ?? null;
      return turnsLeft === null
        ? { moves }
        : { moves, turnsLeft: { closing: turnsLeft.closing, opening: turnsLeft.opening } };
    }),
  );
}
