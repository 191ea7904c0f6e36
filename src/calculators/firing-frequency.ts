import { checkNumber } from './check-number.ts';
import { secondsPerMinute } from './exact-definitions.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

/** Degrees of crank angle in the working cycle of a four-stroke engine: two revolutions. */
export const fourStrokeCycleDegrees = 720;
export const revolutionsPerCycle = 2;

const checkCylinders = (cylinders: number) =>
  Number.isInteger(cylinders) || !Number.isFinite(cylinders)
    ? checkNumber('cylinders', cylinders, { min: 1 })
    : ({ kind: 'out-of-range', field: 'cylinders', value: cylinders, limit: { min: 1 } } as const);

/**
 * How often a four-stroke engine fires, and so draws in, with all its cylinders: f = n N/120, in hertz.
 * `rpm` is above 0, `cylinders` a whole number from 1. Problems: `not-finite`, `out-of-range`.
 * Source: J. B. Heywood, Internal Combustion Engine Fundamentals (1988), §2.2: one power stroke in two revolutions.
 */
export function firingFrequencyHz(rpm: number, cylinders: number): Result<number> {
  const problem = checkNumber('rpm', rpm, { above: 0 }) ?? checkCylinders(cylinders);
  return problem ? fail(problem) : succeed((rpm * cylinders) / (secondsPerMinute * revolutionsPerCycle));
}

/** The speed at which an engine fires so often: N = 120 f/n, in rpm. Limits and problems as above, on `frequencyHz`. */
export function rpmOfFiringFrequency(frequencyHz: number, cylinders: number): Result<number> {
  const problem = checkNumber('frequencyHz', frequencyHz, { above: 0 }) ?? checkCylinders(cylinders);
  return problem
    ? fail(problem)
    : succeed((frequencyHz * secondsPerMinute * revolutionsPerCycle) / cylinders);
}

/** Crank angle from one firing to the next of an evenly firing four-stroke engine: 720°/n. Problems as above. */
export function firingIntervalDegrees(cylinders: number): Result<number> {
  const problem = checkCylinders(cylinders);
  return problem ? fail(problem) : succeed(fourStrokeCycleDegrees / cylinders);
}

/** Time from one firing to the next of an evenly firing four-stroke engine, in seconds: 120/(n N). Problems as above. */
export function firingIntervalS(rpm: number, cylinders: number): Result<number> {
  const frequency = firingFrequencyHz(rpm, cylinders);
  return frequency.ok ? succeed(1 / frequency.value) : frequency;
}

/** How often one cylinder draws in, and so how often the gauge on its own take-off is pulled: once in two turns, N/120. */
export const intakeFrequencyHz = (rpm: number): Result<number> => firingFrequencyHz(rpm, 1);
