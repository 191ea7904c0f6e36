import { describe, expect, it } from 'vitest';
import { type AskedPage, questionScores, rankAddresses } from '../../src/device/search-questions.ts';
import { questionStems, searchWords } from '../../src/device/search-words.ts';

describe('searchWords', () => {
  it.each([
    ['which way do I turn', ['way', 'turn']],
    ['how many inches is 250 mm', ['inches', 'mm']],
    ['can I do this in the garage?', ['garage']],
    ['1: 212, 2: 248', ['1', '212', '2', '248']],
    ['what is it', ['what', 'is', 'it']],
    ['lock nut, LOCK NUT', ['lock', 'nut']],
    ['', []],
  ])('of “%s” are what it is about', (query, expected) => expect(searchWords(query)).toEqual(expected));

  it('are eight at most', () => {
    expect(searchWords('needle gauge hose tap vent screw nut spanner fan tank')).toHaveLength(8);
  });
});

describe('questionStems', () => {
  it.each([
    ['turned', 'turning'],
    ['carbs', 'carburettor'],
    ['syncing the carb', 'balance the carburettors'],
    ['the needle jumps', 'why does my needle jump'],
    ['valves', 'valve'],
  ])('of “%s” and “%s” are the same', (one, other) => {
    expect(questionStems(one)).toEqual(questionStems(other));
  });

  it('keep a question that is only small words', () => {
    expect(questionStems('what is it')).toEqual(['what', 'is', 'it']);
  });
});

const page = (address: string, ...asks: string[]): AskedPage => ({
  address,
  title: `About ${address}`,
  description: 'x',
  asks,
});

describe('questionScores', () => {
  const pages = [page('nuts', 'lock nut moves the screw'), page('needles', 'needle jumps', 'which screw')];

  it('is 1 for the very question, and between 0 and 1 for one that shares words', () => {
    const scores = questionScores('lock nut moves the screw', pages);
    expect(scores.get('nuts')).toBeCloseTo(1, 12);
    expect(scores.get('needles')).toBeGreaterThan(0);
    expect(scores.get('needles')).toBeLessThan(0.5);
  });

  it('leaves out pages that share nothing', () => {
    expect([...questionScores('exhaust', pages).keys()]).toEqual([]);
    expect([...questionScores('', pages).keys()]).toEqual([]);
  });

  it('weighs a rare word more than a common one', () => {
    const many = [page('a', 'screw'), page('b', 'screw'), page('c', 'screw'), page('d', 'spanner')];
    const scores = questionScores('screw spanner', many);
    expect(scores.get('d')).toBeGreaterThan(scores.get('a')!);
  });
});

describe('rankAddresses', () => {
  it('puts a page that every search finds before one that a common word finds', () => {
    const searches = [
      [{ address: 'both', score: 1 }],
      [
        { address: 'common', score: 90 },
        { address: 'both', score: 30 },
      ],
    ];
    expect(rankAddresses(searches, new Map())).toEqual(['both', 'common']);
  });

  it('lets the fitting question decide, and holds pages that only ask', () => {
    const searches = [[{ address: 'text', score: 5 }]];
    expect(rankAddresses(searches, new Map([['question', 0.9]]))).toEqual(['question', 'text']);
    expect(rankAddresses(searches, new Map([['question', 0.1]]))).toEqual(['text', 'question']);
  });

  it('is empty when nothing is found', () => {
    expect(rankAddresses([[], []], new Map())).toEqual([]);
  });
});
