import { dryAirGasConstant } from '../dry-air.ts';
import { intakeK, startRpm, watchSamples } from './constants.ts';
import type { PracticeEngine } from './engine.ts';
import { randomState } from './random.ts';
import type { RandomState } from './random.ts';

/** Where the person's hands have left everything. */
export type Controls = {
  /** Reach of the hand on the throttle, 0…1. */
  readonly hand: number;
  readonly idleTurns: number;
  /** Turns of each screw from where it stood at first; positive opens. */
  readonly screwTurns: readonly number[];
  readonly nutTight: readonly boolean[];
  /** The cylinder that the selector connects, from 1; null for none. */
  readonly selected: number | null;
  /** Damping tap: 0 shut, 1 open. */
  readonly tap: number;
  readonly venting: boolean;
  readonly fan: boolean;
};

/** Those that open the throttles and stay. */
export type Settings = Pick<Controls, 'idleTurns' | 'screwTurns'>;

/** Running totals in joules and kilograms, from the start; with them mass and energy can be drawn up. */
export type Ledger = {
  readonly airInKg: number;
  readonly airOutKg: number;
  readonly fuelJ: number;
  readonly indicatedJ: number;
  readonly pumpingJ: number;
  readonly frictionJ: number;
  readonly wallJ: number;
  readonly cooledJ: number;
  /** Work of the starter, which sets the crank in motion at once. */
  readonly starterJ: number;
};

export type EngineState = {
  readonly seconds: number;
  readonly running: boolean;
  readonly kineticJ: number;
  readonly crankDegrees: number;
  readonly metalK: number;
  /** Air in the intake of each cylinder. */
  readonly runnerKg: readonly number[];
  /** Reach of the throttles themselves: behind the hand where the cable sticks. */
  readonly lift: number;
  readonly linePa: number;
  readonly needlePa: number;
  readonly tachometerRpm: number;
  /** The needle's last second, oldest first. */
  readonly watched: readonly number[];
  readonly controls: Controls;
  readonly ledger: Ledger;
  readonly random: RandomState;
};

export const kineticJOf = (engine: PracticeEngine, rpm: number): number =>
  0.5 * engine.inertiaKgM2 * ((rpm * 2 * Math.PI) / 60) ** 2;

export const rpmOf = (engine: PracticeEngine, kineticJ: number): number =>
  (Math.sqrt((2 * Math.max(kineticJ, 0)) / engine.inertiaKgM2) * 60) / (2 * Math.PI);

/** The engine just started, its hand a little up so that it runs on, and the gauge at rest on the first cylinder. */
export function firstState(engine: PracticeEngine, seed: number): EngineState {
  const { cylinders, screws, ambientPa } = engine;
  return {
    seconds: 0,
    running: true,
    kineticJ: kineticJOf(engine, startRpm),
    crankDegrees: 0,
    metalK: engine.startK,
    runnerKg: cylinders.map(({ runnerM3 }) => (0.7 * ambientPa * runnerM3) / (dryAirGasConstant * intakeK)),
    lift: 0,
    linePa: ambientPa,
    needlePa: 0,
    tachometerRpm: startRpm,
    watched: Array.from({ length: watchSamples }, () => 0),
    controls: {
      hand: 0,
      idleTurns: 0,
      screwTurns: screws.map(() => 0),
      nutTight: screws.map(() => true),
      selected: 1,
      tap: 1,
      venting: false,
      fan: false,
    },
    ledger: {
      airInKg: 0,
      airOutKg: 0,
      fuelJ: 0,
      indicatedJ: 0,
      pumpingJ: 0,
      frictionJ: 0,
      wallJ: 0,
      cooledJ: 0,
      starterJ: kineticJOf(engine, startRpm),
    },
    random: randomState(seed, 7),
  };
}
