import type { Generation } from '../linkage.ts';
import type { Gauge, TurnsLeft } from '../protocol.ts';

/** One cylinder with its carburettor or throttle and the length of intake behind it. */
export type PracticeCylinder = {
  readonly displacementM3: number;
  /** From the throttle to the intake valve. */
  readonly runnerM3: number;
  readonly volumetricEfficiency: number;
  readonly dischargeCoefficient: number;
  /** Open area with every screw where it stood at first and the hand off the throttle. */
  readonly areaM2: number;
  /** Air that enters behind the throttle: the area of a leak, 0 in a sound engine. */
  readonly leakM2: number;
  /** Crank angle at which its intake stroke begins, 0…720. */
  readonly intakeAtDegrees: number;
};

export type PracticeScrew = {
  /** Its column of the linkage matrix. */
  readonly moves: readonly number[];
  readonly areaPerTurnM2: number;
  /** Thread each way from where it stood at first. */
  readonly thread: TurnsLeft;
  /** How far the lock nut drags it: standard deviation with the screw held; let go, it is four times as far. */
  readonly lockShiftTurns: number;
};

/** What the air and the power of an engine at rest hang on: all that the relations of `steady.ts` read. */
export type SteadyCylinder = Omit<PracticeCylinder, 'runnerM3' | 'intakeAtDegrees'>;
export type SteadyEngine = Pick<
  PracticeEngine,
  'ambientPa' | 'ambientK' | 'handM2' | 'airToFuel' | 'indicatedEfficiency' | 'frictionFactor' | 'targetRpm'
> & {
  readonly cylinders: readonly SteadyCylinder[];
  readonly screws: readonly Pick<PracticeScrew, 'moves' | 'areaPerTurnM2'>[];
  readonly idleScrew: Pick<PracticeEngine['idleScrew'], 'areaPerTurnM2'>;
};

/** Faults to find. None of them is a matter of balance. */
export const practiceFaults = [
  'air-leak',
  'trapped-depression',
  'shut-tap',
  'slipped-nut',
  'end-of-thread',
  'sticking-cable',
] as const;
export type PracticeFault = (typeof practiceFaults)[number];

/** An invented engine with its gauge, as it stands before the first action. */
export type PracticeEngine = {
  readonly generation: Generation;
  readonly fixed: number | null;
  readonly ambientPa: number;
  readonly ambientK: number;
  readonly cylinders: readonly PracticeCylinder[];
  readonly screws: readonly PracticeScrew[];
  readonly idleScrew: { readonly areaPerTurnM2: number; readonly thread: TurnsLeft };
  /** Area that the hand adds to every throttle at full reach; the exercise needs a quarter of it. */
  readonly handM2: number;
  /** Share of the hand's reach that a sticking cable does not follow; 0 in a sound engine. */
  readonly cableStick: number;
  readonly inertiaKgM2: number;
  readonly airToFuel: number;
  /** Share of the fuel's heat that pushes the pistons. */
  readonly indicatedEfficiency: number;
  /** Friction of this engine, warm, as a multiple of the cited relation. */
  readonly frictionFactor: number;
  readonly startK: number;
  readonly gauge: Gauge & { readonly fullScalePa: number };
  readonly tachometer: { readonly errorRpm: number; readonly stepRpm: number };
  readonly targetRpm: number;
  readonly tolerancePa: number;
  /** What the vent leaves in the line: 0 works, 1 does nothing. */
  readonly blockedVent: number;
  /** Share of the tap's range within which it is shut; small in a sound tap. */
  readonly deadTap: number;
  readonly fault: PracticeFault | null;
};
