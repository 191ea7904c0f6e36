import { readSetting, writeSetting } from './settings.ts';

const setting = 'in-files';

/** How many events of each session are in a file that was saved or read here, by the session's id. */
export const eventsInFiles = (): ReadonlyMap<string, number> => {
  try {
    const kept: unknown = JSON.parse(readSetting(setting) ?? '[]');
    const pairs = (Array.isArray(kept) ? kept : []).filter(
      (pair): pair is [string, number] =>
        Array.isArray(pair) && typeof pair[0] === 'string' && typeof pair[1] === 'number',
    );
    return new Map(pairs);
  } catch {
    return new Map();
  }
};

/** Remembers that these sessions are in a file as far as they have come. */
export const rememberInFiles = (
  sessions: readonly { readonly id: string; readonly events: number }[],
): void =>
  writeSetting(
    setting,
    JSON.stringify([
      ...new Map([...eventsInFiles(), ...sessions.map(({ id, events }) => [id, events] as const)]),
    ]),
  );
