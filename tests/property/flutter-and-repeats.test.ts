import oracleQuantile from '@stdlib/stats-base-dists-t-quantile';
import fc from 'fast-check';
import { Solver } from 'odex';
import { expect, test } from 'vitest';
import {
  amplitudeRatio,
  answerFlutterAndRepeats,
  computeFlutterAndRepeats,
  dampedRipple,
  flutterAndRepeatsFields,
  initialForm,
  phaseLag,
  readingsNeeded,
  resolvableDifference,
  sampleStandardDeviation,
  sayProblem,
  shareReached,
  studentTQuantile,
  timeConstantOfRatio,
  timeConstantOfWait,
  waitingTimeS,
} from '../../src/calculators/index.ts';
import type { FlutterQuestion } from '../../src/calculators/index.ts';
import { seededNormal, seededRandom } from '../seeded-random.ts';
import { tries } from '../property-runs.ts';
import { tolerances } from '../tolerances.ts';

const size = (min: number, max: number) =>
  fc.double({ min: Math.log(min), max: Math.log(max), noNaN: true }).map(Math.exp);
const hertz = size(1, 200);
const seconds = size(0.005, 20);
const share = fc.double({ min: 0.001, max: 0.9999, noNaN: true });
const { ownInverse, integratedLag } = tolerances;

test('times and shares are each other’s inverse, and so are swings and time constants', () => {
  fc.assert(
    fc.property(share, seconds, hertz, (part, timeConstant, f) => {
      const wait = waitingTimeS(part, timeConstant);
      expect(Math.abs(shareReached(wait, timeConstant) / part - 1)).toBeLessThanOrEqual(ownInverse.relative);
      expect(Math.abs(timeConstantOfWait(wait, part) / timeConstant - 1)).toBeLessThanOrEqual(ownInverse.relative);
      const back = amplitudeRatio(f, timeConstantOfRatio(part, f));
      expect(Math.abs(back / part - 1)).toBeLessThanOrEqual(ownInverse.relative);
    }),
  );
}); // prettier-ignore

/** τ dy/dt + y = x(t) by an independent solver, from `start`. */
function follow(x: (t: number) => number, timeConstantS: number, start: number, from: number, to: number) {
  const solver = new Solver(1);
  solver.absoluteTolerance = 1e-11;
  solver.relativeTolerance = 1e-11;
  return solver.solve((t, [y = NaN]) => [(x(t) - y) / timeConstantS], from, [start], to).y[0] ?? NaN;
}

test('a step and a ripple as the differential equation has them', () => {
  const random = seededRandom(9);
  for (let k = 0; k < 50; k += 1) {
    const timeConstantS = 0.02 * 50 ** random();
    const wait = waitingTimeS(0.2 + 0.79 * random(), timeConstantS);
    const step = follow(() => 1, timeConstantS, 0, 0, wait);
    expect(Math.abs(step - shareReached(wait, timeConstantS))).toBeLessThanOrEqual(integratedLag.absolute);
    // Begun where the settled ripple is, it stays on it: share left and lag are those of the equation.
    const f = 5 + 30 * random();
    const samples = dampedRipple(1, f, timeConstantS, 2, 7);
    const x = (t: number) => Math.sin(2 * Math.PI * f * t);
    for (const { timeS, before, after } of samples.slice(1)) {
      const followed = follow(x, timeConstantS, samples[0]?.after ?? NaN, 0, timeS);
      expect(Math.abs(followed - after)).toBeLessThanOrEqual(integratedLag.absolute);
      expect(Math.abs(before - x(timeS))).toBeLessThanOrEqual(integratedLag.absolute);
    }
  }
});

test('more damping leaves less swing, lags more and takes longer', () => {
  fc.assert(
    fc.property(hertz, seconds, size(1.01, 10), (f, timeConstantS, factor) => {
      expect(amplitudeRatio(f, factor * timeConstantS)).toBeLessThan(amplitudeRatio(f, timeConstantS));
      expect(phaseLag(f, factor * timeConstantS)).toBeGreaterThan(phaseLag(f, timeConstantS));
      expect(waitingTimeS(0.99, factor * timeConstantS)).toBeGreaterThan(waitingTimeS(0.99, timeConstantS));
    }),
  );
});

const scatters = fc.record({ scatterPa: size(10, 3000), resolutionPa: size(1, 1000) });

test('the number of readings is the first that resolves, counted one by one with another t', () => {
  fc.assert(
    fc.property(scatters, size(1.02, 30), ({ scatterPa, resolutionPa }, factor) => {
      const finest = 1.959963984540054 * Math.sqrt(resolutionPa ** 2 / 6);
      const difference = Math.max(factor * finest, scatterPa / 5);
      const found = readingsNeeded({ scatterPa, resolutionPa }, difference, { confidence: 0.95 });
      const half = (count: number): number => {
        const [a, r] = [(2 * scatterPa ** 2) / count, resolutionPa ** 2 / 6];
        const degreesOfFreedom = (2 * (count - 1) * (a + r) ** 2) / a ** 2;
        return oracleQuantile(0.975, degreesOfFreedom) * Math.sqrt(a + r);
      };
      let count = 2;
      while (count < 10_000 && half(count) > difference) count += 1;
      expect(found).toEqual(count < 10_000 ? { ok: true, value: count } : found);
    }),
    tries(60),
  );
});

test('more readings resolve less, and a larger difference never needs more of them', () => {
  fc.assert(
    fc.property(scatters, fc.integer({ min: 2, max: 500 }), share, (scatter, count, p) => {
      const resolving = { confidence: p };
      expect(resolvableDifference(scatter, count + 1, resolving)).toBeLessThan(
        resolvableDifference(scatter, count, resolving),
      );
      const resolved = resolvableDifference(scatter, count, resolving);
      const needed = readingsNeeded(scatter, resolved, resolving);
      const easier = readingsNeeded(scatter, 1.5 * resolved, resolving);
      expect(needed).toEqual({ ok: true, value: count });
      expect(easier.ok && easier.value).toBeLessThanOrEqual(count);
    }),
    tries(200),
  );
});

test('tried out: with the number for a power of 0.9, nine of ten differences are seen', () => {
  const random = seededRandom(31);
  const normal = seededNormal(random);
  for (const difference of [1, 1.6, 2.5]) {
    const scatter = { scatterPa: 1, resolutionPa: 0 };
    const needed = readingsNeeded(scatter, difference, { confidence: 0.95, power: 0.9 });
    const count = needed.ok ? needed.value : 0;
    const t = studentTQuantile(0.975, 2 * (count - 1));
    const trials = 4000;
    let seen = 0;
    for (let trial = 0; trial < trials; trial += 1) {
      const sample = (centre: number) => {
        const [first, second, ...others] = Array.from({ length: count }, () => centre + normal());
        const values = [first ?? 0, second ?? 0, ...others] as const;
        return {
          mean: values.reduce((sum, value) => sum + value, 0) / count,
          deviation: sampleStandardDeviation(values),
        };
      };
      const [a, b] = [sample(0), sample(difference)];
      const pooled = Math.sqrt((a.deviation ** 2 + b.deviation ** 2) / 2);
      if (Math.abs(b.mean - a.mean) > t * pooled * Math.sqrt(2 / count)) seen += 1;
    }
    expect(seen / trials, `difference ${difference}, ${count} readings`).toBeGreaterThan(
      0.9 - 3 * Math.sqrt(0.09 / trials),
    );
  }
});

const questions: fc.Arbitrary<FlutterQuestion> = fc.record({
  cylinders: fc.integer({ min: 1, max: 8 }),
  rpm: size(100, 20_000),
  openFlutterPa: size(0.1, 50_000),
  distribution: fc.constantFrom('rectangular', 'triangular', 'u-shaped'),
  timeConstantS: fc.oneof(fc.constant(0), seconds),
  resolutionPa: size(1, 5000),
  readings: fc.integer({ min: 2, max: 1000 }),
  differencePa: size(1, 50_000),
});

test('what is answered hangs together, whatever is asked', () => {
  fc.assert(
    fc.property(questions, (question) => {
      const answer = computeFlutterAndRepeats(question);
      if (!answer.ok) throw new Error(JSON.stringify(answer.problem));
      const { tap, goodSettlingS, flutterLeftPa, needed, neededToSee, resolvedPa, finestPa } = answer.value;
      const steps = (2 * flutterLeftPa) / question.resolutionPa;
      if (tap === 'just-moving') expect(steps >= 1 && steps <= 2).toBe(true);
      expect(goodSettlingS === null).toBe(tap === 'calm');
      if (goodSettlingS) expect(goodSettlingS.from).toBeLessThan(goodSettlingS.to);
      expect(answer.value.firingHz).toBeCloseTo(question.cylinders * answer.value.intakeHz, 8);
      expect(resolvedPa).toBeGreaterThanOrEqual(finestPa);
      if (needed !== null) expect(needed <= question.readings).toBe(resolvedPa <= question.differencePa);
      if (needed !== null && neededToSee !== null) expect(neededToSee).toBeGreaterThanOrEqual(needed);
    }),
  );
});

test('any text in any field is answered in words or with a sentence', () => {
  const form = initialForm(flutterAndRepeatsFields);
  const fields = ['rpm', 'flutter', 'damping', 'resolution', 'readings', 'difference'] as const;
  const typed = fc.oneof(fc.string(), fc.double().map(String), fc.constantFrom('½', '1e9', '-0', '1,5 bar'));
  fc.assert(
    fc.property(fc.constantFrom(...fields), typed, (field, text) => {
      const answer = answerFlutterAndRepeats({ ...form, [field]: text });
      if (answer.ok) expect(answer.answer.move).not.toMatch(/NaN|undefined/u);
      else for (const { sentence } of answer.problems.map(sayProblem)) expect(sentence).toMatch(/\.$/u);
    }),
    tries(500),
  );
});
