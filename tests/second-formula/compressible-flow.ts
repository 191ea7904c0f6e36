/**
 * The relations of compressible flow a second time, slowly and from elsewhere: from the equations of motion by
 * quadrature, from geometry strip by strip, and in whole numbers. Shares no code with the package.
 */

/** Simpson’s rule with so many steps that halving them changes nothing beyond 1e-12. */
function quadrature(f: (x: number) => number, from: number, to: number, steps = 4000): number {
  const step = (to - from) / steps;
  let sum = f(from) + f(to);
  for (let k = 1; k < steps; k += 1) sum += f(from + k * step) * (k % 2 === 1 ? 4 : 2);
  return (sum * step) / 3;
}

function bisect(f: (x: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  const rising = f(high) > 0;
  for (let k = 0; k < 60; k += 1) {
    const middle = (low + high) / 2;
    if (f(middle) > 0 === rising) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

/** dp/p = −γ M/(1 + (γ − 1)/2 · M²) dM along a streamline. */
export const pressureOverTotal = (mach: number, gamma: number): number =>
  Math.exp(-quadrature((m) => (gamma * m) / (1 + ((gamma - 1) / 2) * m * m), 0, mach));

/** dϱ/ϱ = −M/(1 + (γ − 1)/2 · M²) dM. */
export const densityOverTotal = (mach: number, gamma: number): number =>
  Math.exp(-quadrature((m) => m / (1 + ((gamma - 1) / 2) * m * m), 0, mach));

/** dA/A = (M² − 1)/(1 + (γ − 1)/2 · M²) d ln M, from the throat on. */
export const areaOverThroat = (mach: number, gamma: number): number =>
  Math.exp(
    quadrature(
      (x) => {
        const square = Math.exp(2 * x);
        return (square - 1) / (1 + ((gamma - 1) / 2) * square);
      },
      0,
      Math.log(mach),
    ),
  );

/** u²/2 = ∫ dp/ϱ from the pressure r to 1, with ϱ = r^(1/γ); pressure, density and R T₀ are 1 upstream. */
const kineticEnergy = (r: number, gamma: number): number =>
  quadrature((x) => Math.exp(x * (1 - 1 / gamma)), Math.log(r), 0);

/** The pressure at which the flow is as fast as sound, a² = γ p/ϱ. */
export const criticalPressureRatio = (gamma: number): number =>
  bisect((r) => 2 * kineticEnergy(r, gamma) - gamma * r ** (1 - 1 / gamma), 0.2, 0.95);

/** ϱ u, or that at the speed of sound where the pressure behind is too low to be felt. */
export function flowFunction(ratio: number, gamma: number): number {
  const r = Math.max(ratio, criticalPressureRatio(gamma));
  return r ** (1 / gamma) * Math.sqrt(2 * kineticEnergy(r, gamma));
}

/** A plate that shuts a bore at ψ₀ is an ellipse; seen along the bore its short axis is cos ψ / cos ψ₀ of the bore. */
export function plateOpenArea(bore: number, closed: number, plate: number): number {
  const radius = bore / 2;
  const shortened = cosine(plate) / cosine(closed);
  const strip = (angle: number) => {
    const half = radius * cosine(angle);
    return 2 * (half - shortened * half) * radius * cosine(angle);
  };
  return quadrature(strip, -Math.PI / 2, Math.PI / 2);
}

/** The series of the cosine. */
function cosine(x: number): number {
  let [term, sum] = [1, 1];
  for (let k = 2; k < 40; k += 2) {
    term *= (-x * x) / (k * (k - 1));
    sum += term;
  }
  return sum;
}

/** A decimal as a numerator over a power of ten. */
function decimal(text: string): readonly [bigint, bigint] {
  const [whole = '', digits = ''] = text.split('.');
  return [BigInt(whole + digits), 10n ** BigInt(digits.length)];
}

const quotient = (top: bigint, bottom: bigint): number => Number((top * 10n ** 30n) / bottom) / 1e30;

/** 0.97 + 0.15 (N/1000) + 0.05 (N/1000)² = (19,400,000 + 3000 N + N²)/20,000,000, in bar and whole numbers. */
export function motoringFrictionBar(rpm: string): number {
  const [n, one] = decimal(rpm);
  return quotient(19_400_000n * one * one + 3000n * n * one + n * n, 20_000_000n * one * one);
}

/** η p V N / (120 R T) of decimals, in g/s: litres, revolutions per minute, kilopascals, kelvins. */
export function engineAirFlow(
  litres: string,
  rpm: string,
  kilopascals: string,
  kelvins: string,
  share: string,
): number {
  const [top, bottom] = [litres, rpm, kilopascals, share]
    .map(decimal)
    .reduce(([a, b], [c, d]) => [a * c, b * d], [1n, 1n]);
  const [t, one] = decimal(kelvins);
  // 1 L × 1 kPa = 1 J; R = 287.05 J/(kg K) = 0.28705 J/(g K).
  return quotient(top * one * 100_000n, bottom * t * 120n * 28_705n);
}
