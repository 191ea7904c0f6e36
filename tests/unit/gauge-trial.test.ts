import { describe, expect, it } from 'vitest';
import { computeGaugeTrial, describeGaugeTrial, type GaugeTrialTyped } from '../../src/calculators/index.ts';
import { randomFrom } from '../engine/random.ts';

/** Conventional millimetre of mercury in pascals (ISO 80000-4). */
const mmHg = 133.322387415;
const trial = (changes: Partial<GaugeTrialTyped>) =>
  computeGaugeTrial(
    { swing: '228; 234', repeats: '230; 231; 230; 230; 231', locking: '', ...changes },
    'mmHg',
  );

const valueOf = (changes: Partial<GaugeTrialTyped>) => {
  const result = trial(changes);
  if (!result.ok) throw new Error(result.problem.kind);
  return result.value;
};

describe('computeGaugeTrial(typed, unit)', () => {
  it('takes half of highest less lowest as the swing, and the smallest step between two readings', () => {
    const measured = valueOf({});
    expect(measured.flutterPa / mmHg).toBeCloseTo(3, 9);
    expect(measured.resolutionPa / mmHg).toBeCloseTo(1, 9);
    expect(measured).toMatchObject({ raised: false, lockShiftTurns: null });
  });

  it('raises the swing where the repeats scatter more: s² = a²/3 + r²/12', () => {
    // Sample variance of 220, 240, 220, 240, 230 is 100 (by hand); the step is 2.
    const measured = valueOf({ swing: '229; 231', repeats: '220; 240; 220; 240; 230', locking: '' });
    expect(measured.raised).toBe(true);
    expect((measured.flutterPa / mmHg) ** 2 / 3 + (measured.resolutionPa / mmHg) ** 2 / 12).toBeCloseTo(
      100,
      6,
    );
  });

  it('raises it as soon as the repeats scatter more than swing and step explain', () => {
    // Variances of 18/6 = 3 and 16.8/4 = 4.2, against 3²/3 + 1²/12 = 3.08.
    const measured = valueOf({ swing: '227; 233', repeats: '228; 232; 229; 231; 228; 232; 230' });
    expect(measured.raised).toBe(false);
    expect(valueOf({ swing: '227; 233', repeats: '228; 232; 228; 232; 231' }).raised).toBe(true);
  });

  it('finds the step whatever the order, and not from the last digit of a fraction', () => {
    const measured = valueOf({ swing: '220; 250', repeats: '220; 250; 235; 220; 250' });
    expect(measured.resolutionPa / mmHg).toBeCloseTo(15, 9);
  });

  it('takes what two readings differ by chance out of the slip, by hand; a reading without its second is left', () => {
    // (10² + 10² + 20²)/3 = 200, less 2 (3²/3 + 1²/12); 100 mmHg a turn.
    const typed = {
      swing: '227; 233',
      repeats: '230; 231; 230; 230; 231',
      locking: '230; 240; 230; 220; 230; 250; 230',
    };
    const measured = computeGaugeTrial(typed, 'mmHg', undefined, 100 * mmHg);
    expect(measured.ok && measured.value.lockShiftTurns).toBeCloseTo(Math.sqrt(200 - 37 / 6) / 100, 9);
    expect(computeGaugeTrial({ ...typed, locking: ' ' }, 'mmHg')).toMatchObject({
      value: { lockShiftTurns: null },
    });
  });

  it('finds the slip on locking that made the changes, within the doubt of a long test', () => {
    const random = randomFrom(5);
    const pairs = Array.from({ length: 400 }, () => {
      const before = 230 + random.uniform(-3, 3);
      const after = 230 + random.normal(0.05 * 140) + random.uniform(-3, 3);
      return `${before.toFixed(3)}; ${after.toFixed(3)}`;
    });
    const { lockShiftTurns } = valueOf({ swing: '227; 233', locking: pairs.slice(0, 200).join('; ') });
    // Sampling error of a standard deviation from 200 pairs is 5 %; three of them.
    expect(lockShiftTurns! / 0.05).toBeGreaterThan(0.85);
    expect(lockShiftTurns! / 0.05).toBeLessThan(1.15);
  });

  it('says no slip where the changes are no larger than chance', () => {
    expect(valueOf({ locking: '230; 231; 230; 230; 231; 230' }).lockShiftTurns).toBe(0);
  });

  it.each([
    ['swing', { swing: '' }, 'too-few-readings'],
    ['repeats', { repeats: '230; 231' }, 'too-few-readings'],
    ['locking', { locking: '230; 231' }, 'too-few-readings'],
    ['swing', { swing: '-3; 4' }, 'negative-depression'],
    ['repeats', { repeats: '230; x; 1; 2; 3' }, 'not-a-number'],
    ['swing', { swing: '230; 230', repeats: '230; 230; 230; 230; 230' }, 'all-equal'],
  ] as const)('names the field %s with its problem: %o', (field, changes, kind) => {
    const result = trial(changes);
    expect(result).toMatchObject({ ok: false, problem: { field, kind } });
  });
});

describe('computeGaugeTrial(typed, unit, ambientPa)', () => {
  it('holds the readings to the ambient pressure that is told', () => {
    const typed = { swing: '700; 706', repeats: '700; 701; 702; 703; 704', locking: '' };
    expect(computeGaugeTrial(typed, 'mmHg').ok).toBe(true);
    expect(computeGaugeTrial(typed, 'mmHg', 705 * mmHg)).toMatchObject({
      problem: { kind: 'depression-beyond-ambient', field: 'swing' },
    });
  });
});

describe('describeGaugeTrial(trial, unit)', () => {
  it('leaves the slip empty where it was not tried', () => {
    expect(describeGaugeTrial(valueOf({}), 'kPa')).toEqual({
      resolution: '0.13',
      flutter: '0.40',
      lockShift: '',
    });
  });

  it('gives the answers of the set-up in two digits', () => {
    expect(describeGaugeTrial({ ...valueOf({}), lockShiftTurns: 0.01849 }, 'mmHg')).toEqual({
      resolution: '1.0',
      flutter: '3.0',
      lockShift: '0.018',
    });
  });
});
