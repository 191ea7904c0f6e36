import { describe, expect, it } from 'vitest';
import { studyInWords } from '../../src/components/study-in-words.ts';
import { study } from '../../src/content/study.ts';

describe('studyInWords({ … })', () => {
  it('is four carburettors, one adjuster each, with the advice, unless told otherwise', () => {
    const cell = study.cells.find(
      ({ generation, carburettors, method, hardship }) =>
        generation === 'all-adjustable' && carburettors === 4 && method === 'advice' && hardship === 'plain',
    );
    expect(studyInWords({}).looks).toBe(String(cell?.visits.median));
    expect(studyInWords({}).wrong).toMatch(/^\d+\u00a0%$/u);
    expect(studyInWords({}).trueSpread).toMatch(/^[\d.]+\u00a0mmHg$/u);
  });

  it('takes another case by its name, and refuses one that was not studied', () => {
    expect(Number(studyInWords({ method: 'eighth' }).looks)).toBeGreaterThan(Number(studyInWords({}).looks));
    expect(() => studyInWords({ hardship: 'unheard-of' })).toThrow(/unheard-of/u);
  });
});
