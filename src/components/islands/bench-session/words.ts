import {
  describeTurnSize,
  formatFixed,
  formatReading,
  handDirection,
  isShort,
  membersWords,
  numberInWords,
  screwWords,
  type Bench,
  type BenchSetUp,
  type OpeningDirection,
} from '../../../calculators/index.ts';

export type Mark = 'point' | 'comma';

/** How numbers are written in this session. */
export type Figures = { readonly unit: string; readonly setUp: BenchSetUp; readonly mark: Mark };

export const figure = (pascals: number, { unit, setUp, mark }: Figures): string =>
  formatReading(pascals, unit, setUp.gauge.resolutionPa, { mark });

export const figureWithUnit = (pascals: number, figures: Figures): string =>
  `${figure(pascals, figures)}\u00a0${figures.unit}`;

/** A screw as it is called at the bench: by the carburettors that it moves. */
export const screwName = (setUp: BenchSetUp, screw: number): string =>
  screwWords(setUp.screws[screw - 1]?.moves ?? []);

/** The same where room is short: `1`, or `3 and 4`. */
export const screwLabel = (setUp: BenchSetUp, screw: number): string =>
  membersWords(setUp.screws[screw - 1]?.moves ?? []);

export const handWords = (opens: OpeningDirection, turns: number): string => handDirection(opens, turns);

/** Words of a move: the sentence in three parts, so that the amount can be pressed. */
export type MoveWords = {
  readonly before: string;
  readonly amount?: string;
  readonly after?: string;
  readonly reason: string;
};

export const moveWords = (bench: Bench, figures: Figures): MoveWords => {
  const { step, estimate } = bench;
  const { setUp } = figures;
  const tolerance = figureWithUnit(setUp.tolerancePa, figures);
  const speed = setUp.targetRpm === undefined ? '' : ` at ${formatFixed(setUp.targetRpm, 0)}\u00a0rpm`;
  switch (step.kind) {
    case 'read':
      return readWords(bench, figures, step.carburettor, step.reason, speed);
    case 'turn': {
      const opens = setUp.opens[step.screw - 1] ?? 'unknown';
      const amount = describeTurnSize(step.turns);
      if (step.trial)
        return {
          before: `Turn ${screwName(setUp, step.screw)} ${handDirection(opens, step.turns)} by `,
          amount,
          reason: `A first small turn shows which way opens it. ${afterTurnWords(setUp, step.read)}`,
        };
      return {
        before: `${step.turns > 0 ? 'Open' : 'Close'} ${screwName(setUp, step.screw)} by `,
        amount,
        reason: `${whyTurn(bench, figures, step.read)} ${afterTurnWords(setUp, step.read)}`,
      };
    }
    case 'done':
      return {
        before: `Stop here: ${allOf(setUp)} are within ${tolerance}`,
        reason: 'Now prove it: every nut locked, every carburettor read once more.',
      };
    case 'sign-off':
      return {
        before: `Balanced: the sign-off round lies within ${tolerance}`,
        reason: `Highest less lowest in this round: ${figureWithUnit(roundSpread(bench), figures)}.`,
      };
    case 'stop':
      return step.reason === 'thread'
        ? {
            before: `Stop: ${shortScrews(bench, setUp)}`,
            reason: 'Levelling needs more turns than are left. Re-centre the screws first.',
          }
        : {
            before: 'Stop: this gauge cannot settle it',
            reason: `${formatFixed(estimate.visits, 0)} readings, and it is still not sure. The cause may not be balance.`,
          };
  }
};

const readWords = (
  bench: Bench,
  figures: Figures,
  carburettor: number,
  reason: string,
  speed: string,
): MoveWords => {
  const name = `carburettor\u00a0${carburettor}`;
  switch (reason) {
    case 'first':
      return { before: `Read ${name}`, reason: `Not read yet. Every reading${speed}.` };
    case 'after-turn':
      return { before: `Read ${name}`, reason: `Its screw was turned. Nut locked, speed back${speed}.` };
    case 'doubtful': {
      const doubt = bench.doubtful;
      const off = doubt
        ? `${figure(doubt.readPa, figures)} does not fit; about ${figure(doubt.expectedPa, figures)} was expected. `
        : '';
      return { before: `Read ${name} again`, reason: `${off}It is set aside, not lost.` };
    }
    case 'sign-off':
      return {
        before: `Read ${name} once more, locked`,
        reason: `Sign-off round: nothing is turned${speed}.`,
      };
    case 'sign-off-again':
      return {
        before: `Read ${name} again`,
        reason: `The round spreads over ${figureWithUnit(roundSpread(bench), figures)}, and this one stands furthest out.`,
      };
    default:
      return { before: `Read ${name}`, reason: `It is the least certain now${speed}.` };
  }
};

/** `both`, `all four`. */
export const allOf = ({ carburettors }: BenchSetUp): string =>
  carburettors === 2 ? 'both' : `all ${numberInWords(carburettors)}`;

const afterTurnWords = (setUp: BenchSetUp, read: number): string => {
  const speed = setUp.targetRpm === undefined ? 'the same' : formatFixed(setUp.targetRpm, 0);
  return `Lock, speed back to\u00a0${speed}, read\u00a0${read}.`;
};

const roundSpread = ({ round }: Bench): number => (round?.kind === 'complete' ? round.spreadPa : 0);

const whyTurn = (bench: Bench, figures: Figures, carburettor: number): string => {
  const stands = bench.estimate.depressionPa[carburettor - 1] ?? 0;
  const becomes =
    bench.step.kind === 'turn' ? (bench.step.expectedDepressionPa[carburettor - 1] ?? stands) : stands;
  const { setUp } = figures;
  const matched = setUp.fixed === undefined ? 'the others' : `carburettor\u00a0${setUp.fixed}`;
  return stands > becomes
    ? `${carburettor} stands too high against ${matched}.`
    : `${carburettor} stands too low against ${matched}.`;
};

const shortScrews = (bench: Bench, setUp: BenchSetUp): string => {
  const short = bench.estimate.turnsLeft.flatMap((left, j) => (left && isShort(left) ? [j + 1] : []));
  return short.length === 1
    ? `${screwName(setUp, short[0] ?? 1)} has no thread left`
    : 'the thread left does not allow it';
};

/** What the strip says, for those who do not see it. */
export const stripWords = (bench: Bench, figures: Figures): string =>
  `Estimated depression: ${bench.estimate.depressionPa
    .map((pascals, i) => `carburettor ${i + 1}, ${figure(pascals, figures)}`)
    .join('; ')} ${figures.unit}.`;
