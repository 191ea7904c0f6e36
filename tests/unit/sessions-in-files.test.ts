import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { eventsInFiles, rememberInFiles } from '../../src/device/sessions-in-files.ts';

const kept = new Map<string, string>();
beforeEach(() => {
  kept.clear();
  vi.stubGlobal('localStorage', {
    getItem: (name: string) => kept.get(name) ?? null,
    setItem: (name: string, value: string) => kept.set(name, value),
  });
});
afterEach(() => vi.unstubAllGlobals());

test('remembers how far each session was saved, the last time', () => {
  expect(eventsInFiles().size).toBe(0);
  rememberInFiles([
    { id: 'session-one', events: 4 },
    { id: 'constructor', events: 2 },
  ]);
  rememberInFiles([{ id: 'session-one', events: 6 }]);
  expect([...eventsInFiles()]).toEqual([
    ['session-one', 6],
    ['constructor', 2],
  ]);
});

test.each(['{', 'null', '{"a":1}', '[1,["x"],["y","2"],[3,3]]'])(
  'what somebody else left there is nothing: %s',
  (text) => {
    kept.set('evendraw-in-files', text);
    expect(eventsInFiles().size).toBe(0);
  },
);
