import { amplitudeRatio, phaseLag } from './first-order-lag.ts';

/** A needle at one moment, from the middle of its swing, in the unit of the swing. */
export type RippleSample = { readonly timeS: number; readonly before: number; readonly after: number };

/**
 * The swing of a take-off over so many of its periods, as it is and behind the damping, at even intervals. Taken as a
 * sine, which a real take-off is not: it is pulled once in two turns, and the pull is sharper than a sine. The finer
 * parts of that pull are damped more than the sine is, so more is left in the drawing than on the needle.
 * `frequencyHz` above 0, `periods` and `samples` whole numbers from 1.
 */
export function dampedRipple(
  halfSwing: number,
  frequencyHz: number,
  timeConstantS: number,
  periods: number,
  samples: number,
): readonly RippleSample[] {
  const left = halfSwing * amplitudeRatio(frequencyHz, timeConstantS);
  const behind = phaseLag(frequencyHz, timeConstantS);
  return Array.from({ length: samples + 1 }, (_, k) => {
    const timeS = (k * periods) / samples / frequencyHz;
    const phase = 2 * Math.PI * frequencyHz * timeS;
    return { timeS, before: halfSwing * Math.sin(phase), after: left * Math.sin(phase - behind) };
  });
}
