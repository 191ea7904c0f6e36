/*
 * A needle behind a damping tap as a first-order instrument: τ dy/dt + y = x. The tap lets through what it is driven
 * by, the air behind it fills in proportion. Source: E. O. Doebelin, Measurement Systems: Application and Design (4th
 * edition, 1990), chapter 3, first-order instruments (from memory). Checked against a published figure: τ = 0.2 s leaves
 * 0.04 of 20 Hz.
 * Times in seconds and frequencies in hertz, from 0; shares from 0 and below 1.
 */

/** Share of the swing of a ripple that is left: 1/√(1 + (2πfτ)²). */
export const amplitudeRatio = (frequencyHz: number, timeConstantS: number): number =>
  1 / Math.hypot(1, 2 * Math.PI * frequencyHz * timeConstantS);

/** How far the needle is behind the ripple, in radians from 0 to π/2: arctan(2πfτ). */
export const phaseLag = (frequencyHz: number, timeConstantS: number): number =>
  Math.atan(2 * Math.PI * frequencyHz * timeConstantS);

/** Share of a step that the needle has gone after a time: 1 − e^(−t/τ); at once without damping. */
export const shareReached = (timeS: number, timeConstantS: number): number =>
  timeConstantS === 0 ? 1 : -Math.expm1(-timeS / timeConstantS);

/** Time until the needle has gone a share of its way: τ ln(1/(1 − share)); for 99 % it is τ ln 100. */
export const waitingTimeS = (share: number, timeConstantS: number): number =>
  -timeConstantS * Math.log1p(-share);

/** Time constant of a needle that takes so long to go a share of its way: τ = t/ln(1/(1 − share)). */
export const timeConstantOfWait = (timeS: number, share: number): number => -timeS / Math.log1p(-share);

/** Time constant that leaves a share above 0 of the swing: τ = √(1/share² − 1)/(2πf). The frequency is above 0. */
export const timeConstantOfRatio = (ratio: number, frequencyHz: number): number =>
  Math.sqrt((1 - ratio) * (1 + ratio)) / ratio / (2 * Math.PI * frequencyHz);
