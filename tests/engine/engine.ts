import type { Random } from './random.ts';

/**
 * A mean-value engine with one throttle per cylinder, for tests. It shares no code with the advice that it tests.
 *
 * Each cylinder: mass flow through its throttle, isentropic and choked (J. B. Heywood, Internal Combustion Engine
 * Fundamentals, 1988, equations C.8 and C.9), equals what it draws, volumetric efficiency × speed × intake density.
 * The throttle hand opens or closes all throttles together until the flow of all cylinders feeds the friction at the
 * speed that is held. Friction against speed: 0.97 + 0.15 s + 0.05 s² bar, s in thousands of rpm (Heywood, equation
 * 13.6). Lifts are areas relative to one cylinder's need. Every other figure is an invented engine's, from memory.
 */
export type EngineDescription = {
  readonly ambientPa: number;
  readonly targetRpm: number;
  /** One column per screw: its share of movement for each cylinder. */
  readonly linkage: readonly (readonly number[])[];
  /** Mean depression of a levelled set at the target speed. */
  readonly meanDepressionPa: number;
  /** Change of one depression with one turn of its own screw, at the mean, the others and the speed held. */
  readonly effectPaPerTurn: number;
  /** Factor on the effect of each screw. */
  readonly screwFactors: readonly number[];
  /** Screw positions that level the set, seen from where the screws stand, in turns. */
  readonly turnsToLevel: readonly number[];
  /** Extra lift of cylinders that no screw can explain, in turns of a screw. */
  readonly restTurns?: readonly number[];
  readonly thread?: readonly ({ readonly closing: number; readonly opening: number } | null)[];
  readonly gauge: { readonly resolutionPa: number; readonly flutterPa: number };
  readonly speedErrorRpm: number;
  readonly tachometerErrorRpm: number;
  readonly lockShiftTurns: number;
  readonly commonShiftTurns: number;
  readonly warmUpPaPerMinute: number;
  /** Chance that a reading is wrong, and by how much. */
  readonly wrongReadings?: { readonly chance: number; readonly byPa: number };
};

export type Reading = { readonly depressionPa: number; readonly rpm: number };

export class TestEngine {
  readonly description: EngineDescription;
  private readonly random: Random;
  private readonly turned: number[];
  private readonly shifts: number[];
  private commonShift = 0;
  private minutes = 0;
  private readonly liftPerTurn: number;
  private readonly leftToTurn: ({ closing: number; opening: number } | null)[];

  constructor(description: EngineDescription, random: Random) {
    this.description = description;
    this.random = random;
    this.turned = description.linkage.map(() => 0);
    this.shifts = description.linkage.map(() => 0);
    this.leftToTurn = description.linkage.map((_, j) => description.thread?.[j] ?? null);
    const ratio = 1 - description.meanDepressionPa / description.ambientPa;
    const step = 1e-4;
    const slope = (areaFor(ratio + step) - areaFor(ratio - step)) / (2 * step * description.ambientPa);
    this.liftPerTurn = description.effectPaPerTurn * slope;
  }

  get cylinders(): number {
    return this.description.linkage[0]!.length;
  }

  /** Turns a screw and locks it; past its thread it does not turn. Returns what was really turned. */
  turn(screw: number, turns: number): number {
    const left = this.leftToTurn[screw - 1] ?? null;
    const made = left ? Math.min(Math.max(turns, -left.closing), left.opening) : turns;
    if (left) this.leftToTurn[screw - 1] = { closing: left.closing + made, opening: left.opening - made };
    this.turned[screw - 1]! += made;
    this.shifts[screw - 1]! += this.random.normal(this.description.lockShiftTurns);
    this.commonShift += this.random.normal(this.description.commonShiftTurns);
    return made;
  }

  /**
   * Turns a screw while the eye watches one gauge, until it shows the wanted depression, and locks it there. The needle
   * swings and the speed is off by as much as in any reading. At most two turns. Returns what was really turned.
   */
  turnUntil(screw: number, cylinder: number, wantedPa: number): number {
    const { gauge, targetRpm, speedErrorRpm } = this.description;
    const rpm = targetRpm + this.random.normal(speedErrorRpm);
    const half = gauge.flutterPa + gauge.resolutionPa / 2;
    const aimPa = wantedPa + this.random.uniform(-half, half);
    const start = this.turned[screw - 1]!;
    let [low, high] = [-2, 2];
    for (let k = 0; k < 14; k++) {
      const middle = (low + high) / 2;
      this.turned[screw - 1] = start + middle;
      if (this.depressionsAt(rpm)[cylinder - 1]! > aimPa) low = middle;
      else high = middle;
    }
    this.turned[screw - 1] = start;
    return this.turn(screw, (low + high) / 2);
  }

  wait(minutes: number): void {
    this.minutes += minutes;
  }

  /** What the eye reads on the damped gauge, with the speed as well held as this hand holds it. */
  read(cylinder: number): Reading {
    const { gauge, targetRpm, wrongReadings } = this.description;
    const rpm = targetRpm + this.random.normal(this.description.speedErrorRpm);
    const truth = this.depressionsAt(rpm)[cylinder - 1]!;
    const flutter = this.random.uniform(-gauge.flutterPa, gauge.flutterPa);
    const wrong =
      wrongReadings && this.random.uniform(0, 1) < wrongReadings.chance
        ? this.random.pick([-1, 1]) * wrongReadings.byPa
        : 0;
    const seen = Math.round((truth + flutter + wrong) / gauge.resolutionPa) * gauge.resolutionPa;
    return {
      depressionPa: Math.min(Math.max(0, seen), this.lastMarkPa),
      rpm: Math.round(rpm + this.random.normal(this.description.tachometerErrorRpm)),
    };
  }

  /** The last mark of the scale below the ambient pressure: no gauge shows more than an empty manifold. */
  private get lastMarkPa(): number {
    const { gauge, ambientPa } = this.description;
    return (Math.ceil(ambientPa / gauge.resolutionPa) - 1) * gauge.resolutionPa;
  }

  /** The truth, at the target speed. */
  get depressionsPa(): readonly number[] {
    return this.depressionsAt(this.description.targetRpm);
  }

  get spreadPa(): number {
    return Math.max(...this.depressionsPa) - Math.min(...this.depressionsPa);
  }

  private depressionsAt(rpm: number): readonly number[] {
    const { ambientPa, meanDepressionPa, targetRpm, warmUpPaPerMinute } = this.description;
    const warming = warmUpPaPerMinute * this.minutes;
    const ratioNeeded =
      (1 - (meanDepressionPa + warming) / ambientPa) * (frictionBar(rpm) / frictionBar(targetRpm));
    const lifts = this.lifts();
    const speed = rpm / targetRpm;
    const ratiosWith = (hand: number): number[] =>
      lifts.map((lift) => ratioFor(Math.max(lift + hand, leastLift) / speed));
    const hand = rootOf(
      (tried) => {
        const ratios = ratiosWith(tried);
        return {
          value: ratios.reduce((sum, ratio) => sum + ratio, 0) - ratioNeeded * lifts.length,
          slope: ratios.reduce((sum, ratio) => sum + 1 / (areaSlopeAt(ratio) * speed), 0),
        };
      },
      [-40, 40],
    );
    return ratiosWith(hand).map((ratio) => ambientPa * (1 - ratio));
  }

  private lifts(): number[] {
    const { linkage, screwFactors, turnsToLevel, restTurns, meanDepressionPa, ambientPa } = this.description;
    const levelLift = areaFor(1 - meanDepressionPa / ambientPa);
    return Array.from({ length: this.cylinders }, (_, i) => {
      let turns = this.commonShift + (restTurns?.[i] ?? 0);
      linkage.forEach((column, j) => {
        turns += column[i]! * screwFactors[j]! * (this.turned[j]! + this.shifts[j]! - turnsToLevel[j]!);
      });
      return levelLift + this.liftPerTurn * turns;
    });
  }
}

const kappa = 1.4;

const criticalRatio = (2 / (kappa + 1)) ** (kappa / (kappa - 1));
const leastLift = 1e-6;

/** Flow per area over that at the ambient state, relative to its choked value. */
const flowPerArea = (ratio: number): number => {
  const throat = Math.max(ratio, criticalRatio);
  return (
    throat ** (1 / kappa) * Math.sqrt(((2 * kappa) / (kappa - 1)) * (1 - throat ** ((kappa - 1) / kappa)))
  );
};

/** The area, relative, that keeps a cylinder at a pressure ratio. */
const areaFor = (ratio: number): number => ratio / flowPerArea(ratio);

/** d area / d ratio: area times the logarithmic slopes of ratio and of flow. */
const areaSlopeAt = (ratio: number): number => {
  const flow = flowPerArea(ratio);
  if (ratio <= criticalRatio) return 1 / flow;
  const power = ratio ** ((kappa - 1) / kappa);
  const flowLogSlope = 1 / (kappa * ratio) - (((kappa - 1) / kappa) * power) / (2 * ratio * (1 - power));
  return (1 / flow) * (1 - ratio * flowLogSlope);
};

/**
 * The pressure ratio that an area keeps: exact where choked, else one Newton step from a table that is even in
 * 1 / area², in which the ratio is nearly straight.
 */
const ratioFor = (area: number): number => {
  if (area <= chokedArea) return area * flowPerArea(criticalRatio);
  const place = (tableSize * chokedArea ** 2) / area ** 2;
  const k = Math.min(Math.floor(place), tableSize - 1);
  const guess = ratioTable[k]! + (place - k) * (ratioTable[k + 1]! - ratioTable[k]!);
  return Math.min(guess - (areaFor(guess) - area) / areaSlopeAt(guess), largestRatio);
};

const largestRatio = 1 - 1e-9;
const frictionBar = (rpm: number): number => 0.97 + 0.15 * (rpm / 1000) + 0.05 * (rpm / 1000) ** 2;

/** The root of a rising function: Newton's steps, halving the bracket where one would leave it. */
const rootOf = (
  f: (x: number) => { readonly value: number; readonly slope: number },
  bracket: readonly [number, number],
): number => {
  let [a, b] = bracket;
  let x = (a + b) / 2;
  for (let k = 0; k < 100; k++) {
    const { value, slope } = f(x);
    if (value > 0) b = x;
    else a = x;
    const newton = x - value / slope;
    const next = newton > a && newton < b ? newton : (a + b) / 2;
    if (Math.abs(next - x) < 1e-12) return next;
    x = next;
  }
  return x;
};

const chokedArea = areaFor(criticalRatio);
const tableSize = 4096;
const ratioTable = Array.from({ length: tableSize + 1 }, (_, k) => {
  const area = chokedArea / Math.sqrt(Math.max(k, 1e-6) / tableSize);
  return rootOf(
    (ratio) => ({ value: areaFor(ratio) - area, slope: areaSlopeAt(ratio) }),
    [criticalRatio, largestRatio],
  );
});
