/* Engine speed and sound once more: events counted on a turning crank, and sound from pressure over density. */

const degreesPerTurn = 360;
const secondsPerMinute = 60;

/** Firings of an even-firing four-stroke engine in `cycles` working cycles, and the seconds that these take. */
function turnTheCrank(cylinders: number, rpm: number, cycles: number) {
  let firings = 0;
  for (let cycle = 0; cycle < cycles; cycle += 1)
    for (let cylinder = 0; cylinder < cylinders; cylinder += 1) firings += 1;
  const degreesPerSecond = (rpm * degreesPerTurn) / secondsPerMinute;
  return { firings, seconds: (cycles * 2 * degreesPerTurn) / degreesPerSecond };
}

export function slowFiringHz(cylinders: number, rpm: number): number {
  const { firings, seconds } = turnTheCrank(cylinders, rpm, 1000);
  return firings / seconds;
}

export function slowFiringIntervalS(cylinders: number, rpm: number): number {
  const { firings, seconds } = turnTheCrank(cylinders, rpm, 1000);
  return seconds / firings;
}

/** The speed at which the crank gives so many firings a second, by halving. */
export function slowRpm(cylinders: number, firingHz: number): number {
  let low = 0;
  let high = 1e9;
  for (let halving = 0; halving < 200; halving += 1) {
    const middle = (low + high) / 2;
    if (slowFiringHz(cylinders, middle) < firingHz) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Degrees between firings, by adding degree after degree until the shares of the cycle are spent. */
export const slowFiringDegrees = (cylinders: number): number =>
  Array.from({ length: 2 * degreesPerTurn }, () => 1 / cylinders).reduce((sum, share) => sum + share, 0);

/** Length of arc of a unit circle that passes in a second, from a polygon of a million sides. */
export function slowRadPerS(rpm: number): number {
  const sides = 1e6;
  const circumference = sides * 2 * Math.sin(Math.asin(1) * (2 / sides));
  return (rpm / secondsPerMinute) * circumference;
}

/** √(γ p/ϱ) at one atmosphere (Newton, Laplace), with the molar constants of the standard atmosphere, Heron's root. */
export function slowSoundMPerS(celsius: number): number {
  const molarGasConstant = 8314.32; // J/(kmol·K), ISO 2533
  const molarMass = 28.96442; // kg/kmol, ISO 2533
  const pascals = 101325;
  const density = (pascals * molarMass) / (molarGasConstant * (celsius + 273.15));
  const square = (1.4 * pascals) / density;
  let root = square;
  for (let step = 0; step < 100; step += 1) root = (root + square / root) / 2;
  return root;
}
