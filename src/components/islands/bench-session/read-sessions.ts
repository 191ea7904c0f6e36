import { mergeRecord } from '../../../device/merge-record.ts';
import { readSessionsFile } from '../../../device/session-collection.ts';
import type { SessionRecord } from '../../../device/session-record.ts';
import { eventsInFiles, rememberInFiles } from '../../../device/sessions-in-files.ts';
import type { StoredSession } from '../../../device/stored-session.ts';
import { differsWords, faultWords, mergeWords, type MergeCounts } from './merge-words.ts';
import { recordFrom, storedFrom } from './sessions.ts';

export type TakenFile = {
  readonly ok: boolean;
  readonly said: string;
  readonly changed: readonly StoredSession[];
};

/** What a file does to the sessions that are here, in words, and those that have to be written. */
export const readSessions = async (file: File, sessions: readonly StoredSession[]): Promise<TakenFile> => {
  const read = await readSessionsFile(file);
  if (!read.ok) return { ok: false, said: faultWords(read.fault, file.name), changed: [] };
  const known = new Map<string, SessionRecord>(
    sessions.map((session) => [session.head.id, recordFrom(session)]),
  );
  const changed = new Map<string, StoredSession>();
  const counts: MergeCounts = { added: 0, extended: 0, diverged: 0, same: 0, behind: 0 };
  const inFiles = new Map(eventsInFiles());
  for (const given of read.records) {
    const merged = mergeRecord([...known.values()], given, differsWords);
    counts[merged.kind]++;
    const id = 'record' in merged ? merged.record.id : merged.id;
    if (given.events.length > (inFiles.get(id) ?? 0)) inFiles.set(id, given.events.length);
    if (!('record' in merged)) continue;
    const { record } = merged;
    known.set(record.id, record);
    const before = sessions.find(({ head }) => head.id === record.id);
    const stored = storedFrom(record);
    changed.set(
      record.id,
      before ? { ...stored, head: { ...stored.head, timer: before.head.timer } } : stored,
    );
  }
  rememberInFiles([...inFiles].map(([id, events]) => ({ id, events })));
  return {
    ok: read.whole && read.faults.length === 0,
    said: mergeWords(file.name, counts, read.faults.length, read.whole),
    changed: [...changed.values()],
  };
};
