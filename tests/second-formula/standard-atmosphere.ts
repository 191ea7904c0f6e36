/**
 * The standard atmosphere from its definition: hydrostatic balance of an ideal gas, integrated in small steps, with
 * the geopotential height as the integral of gravity. It shares no code with the package.
 */
const gas = { us: 8314.32 / 28.9644, iso: 287.05287 };
const g0 = 9.80665;
const radius = 6_356_766;
const steps = 400;

/** Kelvins at a geopotential height, by walking through the layers. */
export function temperature(geopotentialM: number): number {
  let kelvins = 288.15;
  let foot = 0;
  for (const [top, lapse] of [
    [11_000, -0.0065],
    [20_000, 0],
    [32_000, 0.001],
    [47_000, 0.0028],
    [51_000, 0],
    [71_000, -0.0028],
    [Infinity, -0.002],
  ] as const) {
    if (geopotentialM <= top) return kelvins + lapse * (geopotentialM - foot);
    kelvins += lapse * (top - foot);
    foot = top;
  }
  return NaN;
}

/** ∫ f by Simpson's rule, between the corners of the layers so that the rule meets none. */
function integral(f: (h: number) => number, from: number, to: number): number {
  const corners = [11_000, 20_000, 32_000, 47_000, 51_000, 71_000].filter((h) => h > from && h < to);
  const marks = [from, ...corners, to];
  return marks.slice(1).reduce((sum, end, k) => sum + simpson(f, marks[k] ?? 0, end), 0);
}

function simpson(f: (h: number) => number, from: number, to: number): number {
  const step = (to - from) / steps;
  let sum = f(from) + f(to);
  for (let k = 1; k < steps; k += 1) sum += f(from + k * step) * (k % 2 === 1 ? 4 : 2);
  return (sum * step) / 3;
}

/** dp/p = −g₀ dH/(R T). */
export const pressure = (geopotentialM: number, standard: keyof typeof gas = 'us'): number =>
  101_325 * Math.exp(-integral((h) => g0 / (gas[standard] * temperature(h)), 0, geopotentialM));

export const density = (geopotentialM: number): number =>
  pressure(geopotentialM) / (gas.us * temperature(geopotentialM));

/** Gravity falls with the square of the distance from the centre of the earth; H = ∫ g dZ / g₀. */
export const geopotential = (geometricM: number): number =>
  simpson((z) => (radius / (radius + z)) ** 2, 0, geometricM);

/** The height of a pressure, by halving. */
export function heightOfPressure(pascals: number): number {
  let [low, high] = [-5000, 79_000];
  for (let k = 0; k < 60; k += 1) {
    const middle = (low + high) / 2;
    if (pressure(middle) > pascals) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
