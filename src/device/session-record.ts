import * as v from 'valibot';
import { checkSession, generations, pressureUnits, type BenchSetUp } from '../calculators/index.ts';
import { checksumOf } from './checksum.ts';
import { readTextFile, type TextFileFault } from './read-text-file.ts';

/** Version of the record's form. A record of schema 1 opens for ever. */
export const schemaNumber = 1;
export const recordFormat = 'evendraw-session';
/** Larger than a session of years could be; a longer text is refused before it is read. */
export const largestRecordBytes = 1_000_000;

const finite = v.pipe(v.number(), v.finite());
const count = v.pipe(finite, v.integer(), v.minValue(1), v.maxValue(8));
const shortText = v.pipe(v.string(), v.maxLength(200));
const turnsLeftSchema = v.strictObject({ closing: finite, opening: finite });
const directions = ['clockwise', 'anticlockwise', 'unknown'] as const;

/** The set-up in the protocol's terms, and what only the bench needs: see the page "Method". */
export const setUpSchema = v.strictObject({
  carburettors: count,
  screws: v.pipe(
    v.array(
      v.strictObject({
        moves: v.pipe(v.array(finite), v.maxLength(8)),
        turnsLeft: v.exactOptional(turnsLeftSchema),
      }),
    ),
    v.maxLength(16),
  ),
  tolerancePa: finite,
  confidence: v.exactOptional(finite),
  gauge: v.strictObject({ resolutionPa: finite, flutterPa: finite }),
  targetRpm: v.exactOptional(finite),
  ambientPa: v.exactOptional(finite),
  lockShiftTurns: v.exactOptional(finite),
  effectPaPerTurn: v.exactOptional(finite),
  /** The carburettor without a screw. */
  fixed: v.exactOptional(count),
  /** Which way opens each screw, seen from the screwdriver. */
  opens: v.pipe(v.array(v.picklist(directions)), v.maxLength(16)),
});

const minute = v.exactOptional(finite);
/** What was typed, to the letter. */
const typed = v.exactOptional(shortText);
/** Index of a carburettor or screw. */
const index = v.pipe(finite, v.integer(), v.minValue(1), v.maxValue(16));

export const eventSchema = v.variant('kind', [
  v.strictObject({
    kind: v.literal('reading'),
    carburettor: index,
    depressionPa: finite,
    rpm: v.exactOptional(finite),
    minute,
    typed,
  }),
  v.strictObject({ kind: v.literal('turn'), screw: index, turns: finite, minute, typed }),
]);

/** The sign-off round: the event from which every carburettor is read once more, and how it ended. */
export const signOffSchema = v.strictObject({
  fromEvent: v.pipe(finite, v.integer(), v.minValue(0)),
  verdict: v.picklist(['under-way', 'within', 'not-within']),
  at: v.exactOptional(shortText),
});

const instant = v.pipe(
  v.string(),
  v.maxLength(40),
  v.regex(/^\d{4}-\d\d-\d\dT\d\d:\d\d(:\d\d(\.\d+)?)?(Z|[+-]\d\d:\d\d)$/),
);

const recordFields = {
  app: shortText,
  id: v.pipe(v.string(), v.regex(/^[a-z0-9-]{8,60}$/)),
  name: shortText,
  notes: v.pipe(v.string(), v.maxLength(10_000)),
  startedAt: instant,
  generation: v.picklist(generations),
  unit: v.picklist(pressureUnits.map(({ id }) => id)),
  setUp: setUpSchema,
  events: v.pipe(v.array(eventSchema), v.maxLength(5_000)),
  signOff: v.nullable(signOffSchema),
};

const recordSchema = v.strictObject({
  format: v.literal(recordFormat),
  schema: v.literal(schemaNumber),
  ...recordFields,
  checksum: v.pipe(v.string(), v.regex(/^[0-9a-f]{8}$/)),
});

export type RecordedEvent = v.InferOutput<typeof eventSchema>;
export type SignOff = v.InferOutput<typeof signOffSchema>;
type ParsedRecord = v.InferOutput<v.StrictObjectSchema<typeof recordFields, undefined>>;
/** A session as it is kept on the device. */
export type SessionRecord = Readonly<Omit<ParsedRecord, 'setUp' | 'events'>> & {
  readonly setUp: BenchSetUp;
  readonly events: readonly RecordedEvent[];
};

export type RecordFault =
  | TextFileFault
  | { readonly kind: 'not-json' }
  | { readonly kind: 'not-a-session' }
  | { readonly kind: 'newer'; readonly schema: number }
  | { readonly kind: 'field'; readonly field: string }
  | { readonly kind: 'checksum' };

/** The record with its form and its checksum, as it stands in a file. */
export const sealRecord = (record: SessionRecord) => {
  const body = { format: recordFormat, schema: schemaNumber, ...record };
  return { ...body, checksum: checksumOf(canonical(body)) };
};

/** The record as text, to be saved as a file. */
export const writeRecord = (record: SessionRecord): string =>
  `${JSON.stringify(sealRecord(record), null, 2)}\n`;

export type ReadRecord =
  { readonly ok: true; readonly record: SessionRecord } | { readonly ok: false; readonly fault: RecordFault };

/** A record from a file that someone chose, whatever is in it. Never rejects. */
export const readRecordFile = async (file: Blob): Promise<ReadRecord> => {
  const read = await readTextFile(file, largestRecordBytes);
  return read.ok ? readRecord(read.text) : read;
};

/** What stands in a text as JSON; undefined where it is none, or has a key that every object has. */
export const parseJson = (text: string): unknown => {
  try {
    const given: unknown = JSON.parse(text);
    return hasInheritedKey(given) ? undefined : given;
  } catch {
    return undefined;
  }
};

/**
 * Names that every object has are no keys of ours: a schema that asks whether it knows a key would take them. It goes as
 * deep as the text does, without calling itself, and in a tenth of the time that a reviver of `JSON.parse` needs.
 */
const hasInheritedKey = (given: unknown): boolean => {
  const inherited = Object.getOwnPropertyNames(Object.prototype);
  const open = [given];
  while (open.length > 0) {
    const value = open.pop();
    if (typeof value !== 'object' || value === null) continue;
    if (inherited.some((name) => !Array.isArray(value) && Object.hasOwn(value, name))) return true;
    for (const inner of Object.values(value)) if (typeof inner === 'object') open.push(inner);
  }
  return false;
};

/** A record from text: checked for size, form, meaning and damage; every object in it is made anew. */
export const readRecord = (text: string): ReadRecord => {
  if (text.length > largestRecordBytes) return { ok: false, fault: { kind: 'too-large' } };
  const given = parseJson(text);
  return given === undefined ? { ok: false, fault: { kind: 'not-json' } } : recordOf(given);
};

/** The same from what stood in the text. */
export const recordOf = (given: unknown): ReadRecord => {
  const head = v.safeParse(v.looseObject({ format: v.literal(recordFormat), schema: finite }), given);
  if (!head.success) return { ok: false, fault: { kind: 'not-a-session' } };
  if (head.output.schema > schemaNumber)
    return { ok: false, fault: { kind: 'newer', schema: head.output.schema } };
  const parsed = v.safeParse(recordSchema, given, { abortEarly: true });
  if (!parsed.success)
    return { ok: false, fault: { kind: 'field', field: v.getDotPath(parsed.issues[0]) ?? 'schema' } };
  const { format, schema, checksum, ...record } = parsed.output;
  if (checksumOf(canonical({ format, schema, ...record })) !== checksum)
    return { ok: false, fault: { kind: 'checksum' } };
  const problem = checkRecord(record);
  return problem ? { ok: false, fault: { kind: 'field', field: problem } } : { ok: true, record };
};

/** The field of a record that its computation would refuse, or null. */
export const checkRecord = (record: SessionRecord): string | null => {
  if (record.setUp.opens.length !== record.setUp.screws.length) return 'setUp.opens';
  const problem = checkSession(record.setUp, record.events);
  if (!problem) return null;
  return 'field' in problem && problem.field ? problem.field : problem.kind;
};

/** A record that a link or the form made passes the same schema as one from a file. */
export const isRecord = (record: unknown): record is SessionRecord =>
  v.is(v.strictObject(recordFields), record) && checkRecord(record) === null;

/** The same text for the same content, whatever the order of its keys. Depth is bounded: the schema has passed. */
export const canonical = (value: unknown): string => {
  if (Array.isArray(value)) return `[${value.map(canonical).join(',')}]`;
  if (value !== null && typeof value === 'object')
    return `{${Object.entries(value)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, entry]) => `${JSON.stringify(key)}:${canonical(entry)}`)
      .join(',')}}`;
  return JSON.stringify(value) ?? 'null';
};
