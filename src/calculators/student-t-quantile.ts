import { normalQuantile } from './normal.ts';
import { checkDegreesOfFreedom, studentTCentre, studentTDensity, studentTTail } from './student-t.ts';

/** The t below which a value lies with the probability p, 0 < p < 1. */
export function studentTQuantile(p: number, degreesOfFreedom: number): number {
  checkDegreesOfFreedom(degreesOfFreedom);
  if (!(p > 0 && p < 1)) throw new RangeError(`probability ${p}`);
  if (degreesOfFreedom === Infinity) return normalQuantile(p);
  if (p === 0.5) return 0;
  return p > 0.5
    ? upperQuantile(1 - p, p - 0.5, degreesOfFreedom)
    : -upperQuantile(p, 0.5 - p, degreesOfFreedom);
}

/**
 * Newton's steps inside a bracket that shrinks, in ln t, where every tail is close to a straight
 * line or a parabola. `tail` ≤ 1/2 is the probability above t, `centre` that between 0 and t.
 */
function upperQuantile(tail: number, centre: number, degreesOfFreedom: number): number {
  const nearMiddle = centre < 0.25;
  let below = Math.log(centre / studentTDensity(0, degreesOfFreedom));
  let above = Infinity;
  let logT = Math.max(below, Math.log(Math.abs(normalQuantile(tail))));
  for (let step = 0, settled = false; step < 200 && !settled; step += 1) {
    const t = Math.exp(logT);
    if (t === Infinity) return Infinity;
    const probability = nearMiddle ? studentTCentre(t, degreesOfFreedom) : studentTTail(t, degreesOfFreedom);
    const error = nearMiddle ? Math.log(probability / centre) : Math.log(tail / probability);
    if (error === 0) return t;
    if (error > 0) above = logT;
    else below = logT;
    let next = logT - error / ((t * studentTDensity(t, degreesOfFreedom)) / probability);
    if (!(next > below && next < above)) next = above === Infinity ? logT + 2 : (below + above) / 2;
    settled = Math.abs(next - logT) <= 2e-16 * Math.max(1, Math.abs(logT));
    logT = next;
  }
  return Math.exp(logT);
}
