import { airInKgPerS, airOutKgPerS, openM2, ripplePa, runnerPa } from './breathing.ts';
import {
  fanWPerKM3,
  metalJPerKM3,
  needleSeconds,
  openLineSeconds,
  petrolHeatJPerKg,
  stallRpm,
  stepSeconds,
  stillAirWPerKM3,
  tachometerSeconds,
  ventSeconds,
  wallShare,
  watchSamples,
  watchSeconds,
} from './constants.ts';
import type { PracticeEngine } from './engine.ts';
import { frictionPa } from './friction.ts';
import { rpmOf } from './state.ts';
import type { EngineState } from './state.ts';

/** Places in the vector that is integrated; the air in the intakes follows. */
const places = [
  'kineticJ',
  'crankDegrees',
  'metalK',
  'linePa',
  'needlePa',
  'tachometerRpm',
  'airInKg',
  'airOutKg',
  'fuelJ',
  'indicatedJ',
  'pumpingJ',
  'frictionJ',
  'wallJ',
  'cooledJ',
] as const;
type Place = (typeof places)[number];
const at = Object.fromEntries(places.map((place, index) => [place, index])) as Record<Place, number>;
const runners = places.length;

/**
 * The state of the engine so many seconds later, hands still. Runge and Kutta's method of the fourth order in steps of
 * `stepSeconds`; seconds are rounded to whole steps. The running totals go through the same steps as what they total,
 * so that mass and energy balance to the last digits of a double.
 */
export function advance(engine: PracticeEngine, before: EngineState, seconds: number): EngineState {
  const steps = Math.max(0, Math.round(seconds / stepSeconds));
  const vector = vectorOf(before);
  const count = vector.length;
  const areas = engine.cylinders.map((_, i) => openM2(engine, i, before.lift, before.controls));
  const slopes = [0, 1, 2, 3].map(() => new Float64Array(count)) as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  const tried = new Float64Array(count);
  const watched = [...before.watched];
  const sampleEvery = Math.round(watchSeconds / watchSamples / stepSeconds);
  const doneBefore = Math.round(before.seconds / stepSeconds);
  let running = before.running;

  for (let step = 1; step <= steps; step += 1) {
    const slopeAt = (from: Float64Array, into: Float64Array) =>
      writeSlopes(engine, before, areas, running, from, into);
    slopeAt(vector, slopes[0]);
    for (const [stage, share] of [
      [1, 0.5],
      [2, 0.5],
      [3, 1],
    ] as const) {
      const last = slopes[stage - 1] as Float64Array;
      for (let k = 0; k < count; k += 1) tried[k] = vector[k]! + share * stepSeconds * last[k]!;
      slopeAt(tried, slopes[stage]);
    }
    for (let k = 0; k < count; k += 1)
      vector[k]! +=
        (stepSeconds / 6) * (slopes[0][k]! + 2 * slopes[1][k]! + 2 * slopes[2][k]! + slopes[3][k]!);
    vector[at.crankDegrees]! %= 720;
    if (running && rpmOf(engine, vector[at.kineticJ]!) < stallRpm) running = false;
    if ((doneBefore + step) % sampleEvery === 0) {
      watched.push(vector[at.needlePa]!);
      watched.shift();
    }
  }
  return stateOf(vector, { ...before, seconds: (doneBefore + steps) * stepSeconds, running, watched });
}

/** d/dt of everything. */
function writeSlopes(
  engine: PracticeEngine,
  { controls }: EngineState,
  areas: readonly number[],
  running: boolean,
  from: Float64Array,
  into: Float64Array,
): void {
  const { cylinders, ambientPa, ambientK } = engine;
  const rpm = rpmOf(engine, from[at.kineticJ]!);
  const cyclesPerS = rpm / 120;
  let [airIn, airOut, pumpingW, displacementM3, takeOffPa] = [0, 0, 0, 0, ambientPa];
  for (const [i, cylinder] of cylinders.entries()) {
    const pa = runnerPa(cylinder, from[runners + i]!);
    const inKgPerS = airInKgPerS(engine, cylinder, areas[i]!, pa);
    const outKgPerS = airOutKgPerS(cylinder, pa, rpm);
    into[runners + i] = inKgPerS - outKgPerS;
    airIn += inKgPerS;
    airOut += outKgPerS;
    pumpingW += (ambientPa - pa) * cylinder.displacementM3 * cyclesPerS;
    displacementM3 += cylinder.displacementM3;
    if (controls.selected === i + 1) takeOffPa = pa + ripplePa(cylinder, pa, from[at.crankDegrees]!);
  }
  const metalK = from[at.metalK]!;
  const fuelW = running ? (airOut / engine.airToFuel) * petrolHeatJPerKg : 0;
  const indicatedW = engine.indicatedEfficiency * fuelW;
  const frictionW = frictionPa(rpm, metalK, engine.frictionFactor) * displacementM3 * cyclesPerS;
  const wallW = wallShare * fuelW + frictionW;
  const airWPerK = (stillAirWPerKM3 + (controls.fan ? fanWPerKM3 : 0)) * displacementM3;
  const cooledW = airWPerK * (metalK - ambientK);
  const linePa = from[at.linePa]!;

  into[at.kineticJ] = indicatedW - pumpingW - frictionW;
  into[at.crankDegrees] = 6 * rpm;
  into[at.metalK] = (wallW - cooledW) / (metalJPerKM3 * displacementM3);
  into[at.linePa] =
    (controls.selected === null ? 0 : (takeOffPa - linePa) * openingRate(engine, controls.tap)) +
    (controls.venting ? ((ambientPa - linePa) * (1 - engine.blockedVent)) / ventSeconds : 0);
  into[at.needlePa] = (ambientPa - linePa - from[at.needlePa]!) / needleSeconds;
  into[at.tachometerRpm] = (rpm - from[at.tachometerRpm]!) / tachometerSeconds;
  into[at.airInKg] = airIn;
  into[at.airOutKg] = airOut;
  into[at.fuelJ] = fuelW;
  into[at.indicatedJ] = indicatedW;
  into[at.pumpingJ] = pumpingW;
  into[at.frictionJ] = frictionW;
  into[at.wallJ] = wallW;
  into[at.cooledJ] = cooledW;
}

/** One over the time constant of the line, 1/s: a tap that is half open lets a quarter through; from memory. */
function openingRate({ deadTap }: PracticeEngine, tap: number): number {
  const open = Math.max(0, (tap - deadTap) / (1 - deadTap));
  return open ** 2 / openLineSeconds;
}

function vectorOf(state: EngineState): Float64Array {
  const vector = new Float64Array(runners + state.runnerKg.length);
  for (const place of places)
    vector[at[place]] =
      place in state.ledger ? state.ledger[place as keyof EngineState['ledger']] : state[place as 'metalK'];
  vector.set(state.runnerKg, runners);
  return vector;
}

function stateOf(vector: Float64Array, before: EngineState): EngineState {
  const value = (place: Place): number => vector[at[place]]!;
  return {
    ...before,
    kineticJ: value('kineticJ'),
    crankDegrees: value('crankDegrees'),
    metalK: value('metalK'),
    linePa: value('linePa'),
    needlePa: value('needlePa'),
    tachometerRpm: value('tachometerRpm'),
    runnerKg: [...vector.subarray(runners)],
    ledger: {
      airInKg: value('airInKg'),
      airOutKg: value('airOutKg'),
      fuelJ: value('fuelJ'),
      indicatedJ: value('indicatedJ'),
      pumpingJ: value('pumpingJ'),
      frictionJ: value('frictionJ'),
      wallJ: value('wallJ'),
      cooledJ: value('cooledJ'),
      starterJ: before.ledger.starterJ,
    },
  };
}
