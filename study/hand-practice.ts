import type { TestEngine } from '../tests/engine/engine.ts';

/** The three ways of working by hand that the advice is compared with; all three are careful ones. */
export const handPractices = ['eighth', 'proportional', 'watch'] as const;
export type HandPractice = (typeof handPractices)[number];

export type HandOutcome = {
  readonly called: 'done' | 'visits';
  readonly trueSpreadPa: number;
  readonly visits: number;
  readonly moves: number;
  readonly turns: number;
};

type Match = { readonly screw: number; readonly moved: number; readonly against: number };

/** Minutes for a look, and for a turn with locking and bringing the speed back; the advice takes the same. */
const minutesPerEvent = 0.4;
/** A hand that has looked so often for each carburettor gives up. */
const visitsPerCarburettor = 40;
const mostTries = 16;
const firstTurn = 1 / 8;
const smallestTurn = 1 / 32;
const largestTurn = 1 / 2;
/** Far below what a gauge shows: two readings one step apart differ by the step and the tail of a binary fraction. */
const tiniestPa = 1e-6;

/**
 * Balances an engine by hand. Every carburettor is read; each that differs from its reference is brought to it, the
 * reference being read anew before and after each turn, and both twice where they are close; then all are read again.
 * Done only after two full rounds, one after the other, within the tolerance.
 */
export const balanceByHand = (
  practice: HandPractice,
  engine: TestEngine,
  tolerancePa: number,
  fixed: number | undefined,
): HandOutcome => {
  const hand = handOf(engine);
  const n = engine.cylinders;
  const effectsPaPerTurn = new Map<number, number>();
  let matches: readonly Match[] | null = null;
  let roundsWithin = 0;
  const most = visitsPerCarburettor * n;
  while (hand.visits < most) {
    const readings = readAll(hand, tolerancePa);
    if (spreadOf(readings) <= tolerancePa + tiniestPa) {
      if (++roundsWithin === 2) return hand.outcome('done');
      continue;
    }
    roundsWithin = 0;
    matches ??= matchesOf(engine, readings, fixed);
    for (const match of matches) {
      const apart = readings[match.moved - 1]! - readings[match.against - 1]!;
      if (Math.abs(apart) < tolerancePa / 2 - tiniestPa) continue;
      bringTogether(practice, hand, match, tolerancePa, effectsPaPerTurn, most);
    }
  }
  return hand.outcome('visits');
};

/** A full round. Where the spread is near the tolerance, highest and lowest get a second look and their mean counts. */
const readAll = (hand: Hand, tolerancePa: number): readonly number[] => {
  const readings = Array.from({ length: hand.engine.cylinders }, (_, i) => hand.look(i + 1));
  const spread = spreadOf(readings);
  if (spread <= tolerancePa + tiniestPa || spread > 2 * tolerancePa + tiniestPa) return readings;
  const [lowest, highest] = [
    readings.indexOf(Math.min(...readings)),
    readings.indexOf(Math.max(...readings)),
  ];
  return readings.map((reading, i) =>
    i === lowest || i === highest ? (reading + hand.look(i + 1)) / 2 : reading,
  );
};

const spreadOf = (readings: readonly number[]): number => Math.max(...readings) - Math.min(...readings);

/** What each screw is turned for: the fixed carburettor, the one that reads in the middle, or the neighbour inwards. */
const matchesOf = (
  engine: TestEngine,
  readings: readonly number[],
  fixed: number | undefined,
): readonly Match[] => {
  const groups = engine.description.linkage.map((moves) =>
    moves.flatMap((share, i) => (share === 0 ? [] : [i + 1])),
  );
  const n = engine.cylinders;
  const isTree = fixed === undefined && groups.length < n;
  const middle = [...readings].sort((a, b) => a - b)[Math.ceil(n / 2) - 1]!;
  const reference = fixed ?? readings.indexOf(middle) + 1;
  return groups.flatMap((group, j) => {
    const [first, last] = [group[0]!, group.at(-1)!];
    const isLeft = first + last < n + 1;
    if (isTree)
      return [{ screw: j + 1, moved: isLeft ? last : first, against: isLeft ? last + 1 : first - 1 }];
    return first === reference ? [] : [{ screw: j + 1, moved: first, against: reference }];
  });
};

const bringTogether = (
  practice: HandPractice,
  hand: Hand,
  match: Match,
  tolerancePa: number,
  effectsPaPerTurn: Map<number, number>,
  most: number,
): void => {
  const { screw, moved } = match;
  const moves = hand.engine.description.linkage[screw - 1]!;
  const movesHalf = 2 * moves.filter((share) => share !== 0).length === moves.length;
  let step = firstTurn;
  let before: { readonly apartPa: number; readonly turned: number } | null = null;
  for (let tries = 0; tries < mostTries && hand.visits < most; tries++) {
    const { referencePa, apartPa } = compare(hand, match, tolerancePa);
    if (before) {
      const effect = (before.apartPa - apartPa) / before.turned;
      // A change that the needle's swing could feign teaches nothing.
      if (Math.abs(before.apartPa - apartPa) >= tolerancePa && effect > 0)
        effectsPaPerTurn.set(screw, effect);
      if (before.apartPa * apartPa < 0) step = Math.max(step / 2, smallestTurn);
    }
    if (Math.abs(apartPa) <= tolerancePa / 2 + tiniestPa) return;
    const known = effectsPaPerTurn.get(screw) ?? [...effectsPaPerTurn.values()].at(-1);
    const inProportion = known === undefined ? firstTurn : Math.abs(apartPa) / known;
    const wanted = practice === 'eighth' ? step : Math.min(Math.max(inProportion, smallestTurn), largestTurn);
    // Where as many move as stay, the others go as far the other way: half the difference is the aim.
    const aimPa = movesHalf ? referencePa + apartPa / 2 : referencePa;
    const turned =
      practice === 'watch' ? hand.watch(screw, moved, aimPa) : hand.turn(screw, Math.sign(apartPa) * wanted);
    if (turned === 0) return;
    before = { apartPa, turned };
  }
};

/** How far a carburettor stands above its reference: one look each, and the mean of two where a second can decide. */
const compare = (
  hand: Hand,
  { moved, against }: Match,
  tolerancePa: number,
): { readonly referencePa: number; readonly apartPa: number } => {
  const reference = hand.look(against);
  const own = hand.look(moved);
  const apartPa = own - reference;
  if (Math.abs(apartPa) < tolerancePa / 4 || Math.abs(apartPa) > 1.5 * tolerancePa + tiniestPa)
    return { referencePa: reference, apartPa };
  const referencePa = (reference + hand.look(against)) / 2;
  return { referencePa, apartPa: (own + hand.look(moved)) / 2 - referencePa };
};

type Hand = ReturnType<typeof handOf>;

/** Looks and turns, counted. */
const handOf = (engine: TestEngine) => {
  const count = { visits: 0, moves: 0, turns: 0 };
  const move = (turned: number): number => {
    count.moves++;
    count.turns += Math.abs(turned);
    return turned;
  };
  return {
    engine,
    get visits() {
      return count.visits;
    },
    look: (cylinder: number): number => {
      engine.wait(minutesPerEvent);
      count.visits++;
      return engine.read(cylinder).depressionPa;
    },
    turn: (screw: number, turns: number): number => {
      engine.wait(minutesPerEvent);
      return move(engine.turn(screw, turns));
    },
    /** Watching is a look too. */
    watch: (screw: number, cylinder: number, wantedPa: number): number => {
      engine.wait(minutesPerEvent);
      count.visits++;
      return move(engine.turnUntil(screw, cylinder, wantedPa));
    },
    outcome: (called: HandOutcome['called']): HandOutcome => ({
      called,
      trueSpreadPa: engine.spreadPa,
      ...count,
    }),
  };
};
