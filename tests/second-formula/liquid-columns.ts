/**
 * The relations of liquids once more, slowly: polynomials multiplied out in whole numbers, expansion in small steps, the
 * sine as a series. It shares no code with the package.
 */
import { decimal, over, powerSum, times, toNumber } from './exact-decimal.ts';

const one = decimal(1);

/** Thiesen's form, multiplied out over one denominator. */
export function tanaka(t: number): number {
  const x = decimal(t);
  const square = times(x - decimal('3.983035'), x - decimal('3.983035'));
  const bottom = times(decimal('522528.9'), x + decimal('69.34881'));
  const top = bottom - times(square, x + decimal('301.797'));
  return toNumber(over(times(decimal('999.974950'), top), bottom));
}

export const kell = (t: number): number =>
  toNumber(
    over(
      powerSum(decimal(t), [
        '999.83952',
        '16.945176',
        '-0.0079870401',
        '-0.000046170461',
        '1.0556302e-7',
        '-2.8054253e-10',
      ]),
      powerSum(decimal(t), [1, '0.01687985']),
    ),
  );

export const jonesHarris = (t: number): number =>
  toNumber(powerSum(decimal(t), ['999.85308', '0.0632693', '-0.008523829', '0.00006943248', '-3.821216e-7']));

/** From the volume that a cubic metre at 0 °C fills. */
export const mercury = (t: number): number =>
  toNumber(
    over(
      decimal('13595.08'),
      powerSum(decimal(t), [1, '1.814401e-4', '7.016e-9', '2.8625e-11', '2.617e-14']),
    ),
  );

const olderVolume = (t: number): bigint =>
  times(decimal('0.073554'), powerSum(decimal(t), [1, '0.000181792', '1.75e-10', '3.5116e-11']));
export const mercuryVolumeOlder = (t: number): number => toNumber(olderVolume(t));
export const mercuryOlder = (t: number): number => toNumber(over(one, olderVolume(t)));
export const mercuryVolumeQuadratic = (t: number): number =>
  toNumber(powerSum(decimal(t), ['0.073554', '0.000013245', '1.22823e-9']));

/** Grams in the millilitre of 1901. */
export const waterOlder = (t: number): number => (kell(t) * 1.000028) / 1000;

const glycolAt70F = [62.31, 63.31, 64.33, 65.3, 66.2, 67.05, 67.86, 68.62, 69.35, 70.04];

/** Pounds per cubic foot at 70 °F: a lever between the two nearest columns. */
export function glycol(percent: number): number {
  const below = Math.min(8, Math.floor(percent / 10));
  const weight = percent - 10 * below;
  return (glycolAt70F[below]! * (10 - weight) + glycolAt70F[below + 1]! * weight) / 10;
}

/** A density that shrinks by its expansion, in steps of a ten-thousandth of the way (midpoint rule). */
export function expanding(at20: number, expansion: number, t: number): number {
  const steps = 10_000;
  const step = (t - 20) / steps;
  let density = at20;
  for (let k = 0; k < steps; k += 1) {
    const halfway = density - (expansion * density * step) / 2;
    density -= expansion * halfway * step;
  }
  return density;
}

export const weightOfColumn = (kgPerM3: number, metres: number): number =>
  toNumber(times(times(decimal(kgPerM3), decimal('9.80665')), decimal(metres)));

/** Where the weight of a column passes a pressure, by halving. */
export function heightOfColumn(kgPerM3: number, pascals: number): number {
  let [low, high] = [0, 2 * Math.ceil(pascals)];
  for (let k = 0; k < 80; k += 1) {
    const middle = (low + high) / 2;
    if (kgPerM3 * 9.80665 * middle < pascals) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

export const reducedColumn = (millimetres: number, t: number): number =>
  toNumber(over(times(decimal(millimetres), decimal(mercury(t).toFixed(12))), decimal('13595.1')));

/** cos x by its series. */
function cosine(x: number): number {
  let term = 1;
  let sum = 1;
  for (let k = 1; k < 40; k += 1) {
    term *= (-x * x) / ((2 * k - 1) * (2 * k));
    sum += term;
  }
  return sum;
}

/** With sin² from the cosines of the doubled angles. */
export function gravity(degrees: number): number {
  const angle = (degrees * Math.PI) / 180;
  const sineSquared = (1 - cosine(2 * angle)) / 2;
  const doubledSquared = (1 - cosine(4 * angle)) / 2;
  return 9.780327 * (1 + 0.0053024 * sineSquared - 0.0000058 * doubledSquared);
}
