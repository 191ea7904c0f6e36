import { formatExact } from './format-number.ts';
import { pressureUnit } from './pressure-units.ts';
import { convertPressure } from './pressure-units.ts';

/**
 * What the set-up offers before anybody has answered. Origins: steps and swing of a damped dial marked in tens of mmHg,
 * from memory; tolerance, what such a gauge can settle (simulation, page "Method"); speed, middle of 2000–2500 rpm,
 * common practice; rest after 15 minutes of running, from memory; a gap of 5 minutes is asked about, from memory.
 */
export const benchDefaults = {
  resolutionMmHg: 5,
  flutterMmHg: 3,
  tolerancePressureMmHg: 10,
  targetRpm: 2100,
  restAfterMinutes: 15,
  /** Minutes before the rest at which the reminder begins. */
  reminderMinutes: 2,
  /** A gap of so many minutes, in which the device slept, is no engine time until somebody says so. */
  unwatchedMinutes: 5,
  /** Without a tachometer the speed is held by ear: the told swing is raised to this (simulation). */
  flutterWithoutTachometerMmHg: 6,
  /** The first turn of a screw whose direction is not known. */
  trialTurns: 1 / 8,
} as const;

/** So many mmHg in another unit, to one significant digit, as a person would say it. */
export const roundInUnit = (valueMmHg: number, unitId: string): string =>
  formatExact(Number(convertPressure(valueMmHg, pressureUnit('mmHg'), pressureUnit(unitId)).toPrecision(1)), {
    minus: 'hyphen',
  });
