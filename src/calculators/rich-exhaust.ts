import { bisect } from './bisect.ts';
import { checkNumber } from './check-number.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';

/*
 * What a rich mixture burns to: CO2, CO, H2O, H2 and N2, no oxygen and no fuel left, with the water–gas balance as it
 * freezes in the cylinder. From memory: J. B. Heywood, Internal Combustion Engine Fundamentals (1988), section 4.9.2;
 * R. S. Spindt, Air-fuel ratios from exhaust gas analysis, SAE 650507 (1965).
 */

/** Hydrogen to carbon of petrol, and nitrogen to oxygen of air (Heywood, from memory). */
export const hydrogenPerCarbon = 1.85;
export const nitrogenPerOxygen = 3.773;
/** (CO · H2O)/(CO2 · H2) frozen near 1740 K (Heywood and Spindt, from memory). */
export const waterGas = 3.5;

/** Excess-air ratio below which the balance no longer holds: soot. */
export const richestAirRatio = 0.6;

type Exhaust = {
  /** Share of carbon monoxide by volume of the dry exhaust, as an analyser shows it. */
  readonly carbonMonoxideShare: number;
  /** Volumes of dry exhaust from a volume of air, both at the same state. */
  readonly dryPerAir: number;
};

/** Exhaust of one mole of carbon at an excess-air ratio from 0.6 to 1. */
function exhaustOf(airRatio: number): Exhaust {
  const oxygen = airRatio * (1 + hydrogenPerCarbon / 4);
  // With c of carbon monoxide: H2O = wet + c and H2 = dry − c, of which the balance makes a square equation.
  const wet = 2 * oxygen - 2;
  const dry = hydrogenPerCarbon / 2 - wet;
  // c (wet + c) = K (1 − c)(dry − c): (K − 1) c² − (K (1 + dry) + wet) c + K dry = 0; the smaller root.
  const half = (waterGas * (1 + dry) + wet) / 2;
  const root = Math.sqrt(half ** 2 - (waterGas - 1) * waterGas * dry);
  const monoxide = (waterGas * dry) / (half + root);
  const dryMoles = 1 + (dry - monoxide) + nitrogenPerOxygen * oxygen;
  return {
    carbonMonoxideShare: monoxide / dryMoles,
    dryPerAir: dryMoles / ((1 + nitrogenPerOxygen) * oxygen),
  };
}

/** The largest share that the balance gives, about 0.14. */
export const richestShare = exhaustOf(richestAirRatio).carbonMonoxideShare;

export type RichExhaust = Exhaust & {
  /** Air over what the fuel needs, λ: below 1 where carbon monoxide is made. */
  readonly airRatio: number;
};

/**
 * The mixture behind a share of carbon monoxide in the dry exhaust, and how much exhaust the air makes.
 * Problems: `not-finite`, `out-of-range` of `carbonMonoxideShare`, from 0 to `richestShare`.
 */
export function richExhaust(carbonMonoxideShare: number): Result<RichExhaust> {
  const problem = checkNumber('carbonMonoxideShare', carbonMonoxideShare, { min: 0, max: richestShare });
  if (problem) return fail(problem);
  const airRatio = bisect(
    (ratio) => carbonMonoxideShare - exhaustOf(ratio).carbonMonoxideShare,
    richestAirRatio,
    1,
  );
  return succeed({ airRatio, carbonMonoxideShare, dryPerAir: exhaustOf(airRatio).dryPerAir });
}
