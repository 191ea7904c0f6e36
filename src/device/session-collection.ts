import * as v from 'valibot';
import { checksumOf } from './checksum.ts';
import { readTextFile } from './read-text-file.ts';
import {
  canonical,
  largestRecordBytes,
  parseJson,
  recordOf,
  sealRecord,
  type RecordFault,
  type SessionRecord,
} from './session-record.ts';

/** A file of many sessions: each as it stands in a file of its own, so that a damaged one takes no other with it. */
export const collectionFormat = 'evendraw-sessions';
export const collectionSchema = 1;
/** Some hundreds of sessions; more of them go into further files. */
export const largestCollectionBytes = 5_000_000;
const mostSessions = 2_000;

type Sealed = ReturnType<typeof sealRecord>;

/** The checksum of those of the sessions: it shows that one is missing. */
const checksumOfAll = (app: string, checksums: readonly unknown[]): string =>
  checksumOf(canonical({ format: collectionFormat, schema: collectionSchema, app, checksums }));

const collectionText = (app: string, sessions: readonly Sealed[]): string => {
  const checksum = checksumOfAll(
    app,
    sessions.map((session) => session.checksum),
  );
  return `${JSON.stringify({ format: collectionFormat, schema: collectionSchema, app, sessions, checksum })}\n`;
};

/** All sessions as the texts of as many files as they need, nearly always one. */
export const writeCollections = (records: readonly SessionRecord[], app: string): readonly string[] => {
  const room = largestCollectionBytes - largestRecordBytes;
  const files: Sealed[][] = [[]];
  let bytes = 0;
  for (const session of records.map(sealRecord)) {
    const size = new TextEncoder().encode(JSON.stringify(session)).length;
    if (bytes + size > room || files.at(-1)!.length === mostSessions) {
      files.push([]);
      bytes = 0;
    }
    files.at(-1)!.push(session);
    bytes += size;
  }
  return files.map((sessions) => collectionText(app, sessions));
};

export type ReadSessions =
  | {
      readonly ok: true;
      readonly records: readonly SessionRecord[];
      /** What is wrong with those that could not be read. */
      readonly faults: readonly RecordFault[];
      /** False where sessions are missing from the file, or were put into it. */
      readonly whole: boolean;
    }
  | { readonly ok: false; readonly fault: RecordFault };

const refuse = (fault: RecordFault): ReadSessions => ({ ok: false, fault });

const headSchema = v.looseObject({ format: v.literal(collectionFormat), schema: v.number() });
const collectionFields = v.strictObject({
  format: v.literal(collectionFormat),
  schema: v.literal(collectionSchema),
  app: v.pipe(v.string(), v.maxLength(200)),
  sessions: v.pipe(v.array(v.unknown()), v.maxLength(mostSessions)),
  checksum: v.string(),
});

/** The sessions of a text: one, or a collection of them. */
export const readSessions = (text: string): ReadSessions => {
  const given = parseJson(text);
  if (given === undefined)
    return refuse({ kind: text.length > largestRecordBytes ? 'too-large' : 'not-json' });
  const head = v.safeParse(headSchema, given);
  if (!head.success) return readAlone(text, given);
  if (head.output.schema > collectionSchema) return refuse({ kind: 'newer', schema: head.output.schema });
  const parsed = v.safeParse(collectionFields, given, { abortEarly: true });
  if (!parsed.success) return refuse({ kind: 'field', field: v.getDotPath(parsed.issues[0]) ?? 'sessions' });
  const { app, sessions, checksum } = parsed.output;
  const read = sessions.map(recordOf);
  const checksums = sessions.map((session) => (session as { checksum?: unknown } | null)?.checksum);
  return {
    ok: true,
    records: read.flatMap((one) => (one.ok ? [one.record] : [])),
    faults: read.flatMap((one) => (one.ok ? [] : [one.fault])),
    whole: checksumOfAll(app, checksums) === checksum,
  };
};

const readAlone = (text: string, given: unknown): ReadSessions => {
  if (text.length > largestRecordBytes) return refuse({ kind: 'too-large' });
  const read = recordOf(given);
  return read.ok ? { ok: true, records: [read.record], faults: [], whole: true } : read;
};

/** The sessions of a file that someone chose, whatever is in it. Never rejects. */
export const readSessionsFile = async (file: Blob): Promise<ReadSessions> => {
  const read = await readTextFile(file, largestCollectionBytes);
  return read.ok ? readSessions(read.text) : read;
};
