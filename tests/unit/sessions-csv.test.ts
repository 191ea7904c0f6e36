import { describe, expect, test } from 'vitest';
import { pascalsOf, pressureUnit, sessionsCsv, type TabledSession } from '../../src/calculators/index.ts';
import { recordOf } from './invented-records.ts';

const session = (changes: Partial<TabledSession> = {}): TabledSession => ({
  ...recordOf('paired-screws'),
  name: 'The grey one',
  events: [
    {
      kind: 'reading',
      carburettor: 2,
      depressionPa: pascalsOf(212.5, pressureUnit('mmHg')),
      rpm: 2150,
      minute: 0.25,
      typed: '212,5',
    },
    { kind: 'turn', screw: 3, turns: -0.25, minute: 1 },
  ],
  signOff: { verdict: 'within' },
  ...changes,
});
const rows = (...sessions: TabledSession[]): string[] => sessionsCsv(sessions).split('\r\n');

describe('sessionsCsv(sessions)', () => {
  test('writes one event a row, units in the head, times as ISO 8601, a negative number as a number', () => {
    expect(rows(session())).toEqual([
      'session,engine,started (ISO 8601),outcome,event,engine running (min),kind,carburettor,screw,screw moves,turns (+ opens),depression (Pa),depression (mmHg),engine speed (rpm),as typed',
      'invented-paired-screws,The grey one,2026-04-11T09:30:00+02:00,within,1,0.25,reading,2,,,,28331.0073257,212.5,2150,"212,5"',
      'invented-paired-screws,The grey one,2026-04-11T09:30:00+02:00,within,2,1,turn,,3,3 and 4,-0.25,,,,',
      '',
    ]);
  });

  test('without a session there is the head alone, in pascals', () => {
    const [head = '', ...lines] = rows();
    expect(head).toContain('depression (Pa),engine speed');
    expect(lines).toEqual(['']);
  });

  test('a turn of a screw that the set-up does not have moves nothing', () => {
    const [, line = ''] = rows(session({ events: [{ kind: 'turn', screw: 99, turns: 0.5 }] }));
    expect(line).toContain(',turn,,99,,0.5,');
  });

  test('sessions of several units stand in pascals alone', () => {
    const [head = '', ...lines] = rows(session(), session({ unit: 'hPa', signOff: null }));
    expect(head).toContain('depression (Pa),engine speed');
    expect(head).not.toContain('mmHg');
    expect(lines.filter(Boolean)).toHaveLength(4);
    expect(lines[2]).toContain(',open,1,');
  });

  test('a name or a typed word that begins like a formula is text', () => {
    const [reading] = session().events;
    const [, line = ''] = rows(session({ name: '=HYPERLINK("x")', events: [{ ...reading!, typed: '@1' }] }));
    expect(line).toContain(`,"'=HYPERLINK(""x"")",`);
    expect(line).toMatch(/,'@1$/u);
    const [, minus = ''] = rows(session({ name: '-1', events: [{ ...reading!, typed: '-2+3' }] }));
    expect(minus).toMatch(/,-1,.*,'-2\+3$/u);
  });

  test('no sessions are a head alone', () => {
    expect(rows()).toHaveLength(2);
  });
});
