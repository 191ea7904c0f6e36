import { checksumOf } from './checksum.ts';
import { canonical, type RecordedEvent, type SessionRecord } from './session-record.ts';

/** Longest notes that a record may hold. */
export const longestNotes = 10_000;

/** What reading a record does to those that are here; `record` is what has to be written. */
export type Merged =
  /** It is here already, and nothing changes; or it is here and has gone on since. */
  | { readonly kind: 'same' | 'behind'; readonly id: string }
  | { readonly kind: 'added'; readonly record: SessionRecord }
  | { readonly kind: 'extended'; readonly record: SessionRecord }
  /** Two devices went on with one session differently: the record is added beside it, under an id that follows from it. */
  | { readonly kind: 'diverged'; readonly record: SessionRecord };

/**
 * How a record from a file goes into those that are here. Nothing that is here is lost, and the same record read again
 * changes nothing. `note` says in words that a session differs from an event on, counted from 1.
 */
export const mergeRecord = (
  known: readonly SessionRecord[],
  given: SessionRecord,
  note: (event: number) => string,
): Merged => {
  const family = known.filter(({ id }) => id === given.id || isCopyOf(id, given.id));
  const relations = family.map((one) => joined(one, given));
  const related = relations.find(({ kind }) => kind !== 'apart');
  if (related && related.kind !== 'apart') return related;
  const original = family.find(({ id }) => id === given.id);
  if (!original) return { kind: 'added', record: given };
  const notes = [note(firstDifference(original, given) + 1), given.notes].filter(Boolean).join('\n');
  const record = { ...given, id: copyId(given), notes: notes.slice(0, longestNotes) };
  return { kind: 'diverged', record };
};

const copyId = (given: SessionRecord): string => `${copyStart(given.id)}${checksumOf(canonical(given))}`;
/** An id has at most 60 characters, the checksum 8. */
const copyStart = (id: string): string => `${id.slice(0, 51)}-`;
const isCopyOf = (id: string, original: string): boolean =>
  id.startsWith(copyStart(original)) && id.length === copyStart(original).length + 8;

/** One session from two records of it, or that they are apart. */
const joined = (
  here: SessionRecord,
  given: SessionRecord,
): Exclude<Merged, { kind: 'added' | 'diverged' }> | { readonly kind: 'apart' } => {
  const [notes, ahead] = [joinedNotes(here.notes, given.notes), given.events.length - here.events.length];
  const [shorter, longer] = ahead > 0 ? [here, given] : [given, here];
  if (notes === null || !sameEngine(here, given) || firstDifference(shorter, longer) < shorter.events.length)
    return { kind: 'apart' };
  const signOff = ahead === 0 ? (here.signOff ?? given.signOff) : longer.signOff;
  const name = here.name || given.name;
  const record = { ...longer, id: here.id, name, notes, signOff };
  if (canonical(record) !== canonical(here)) return { kind: 'extended', record };
  return { kind: ahead < 0 ? 'behind' : 'same', id: here.id };
};

/** Both notes, or null where they find no room. */
const joinedNotes = (here: string, given: string): string | null => {
  if (here.includes(given)) return here;
  if (given.includes(here)) return given;
  const both = `${here}\n${given}`;
  return both.length > longestNotes ? null : both;
};

const sameEngine = (one: SessionRecord, other: SessionRecord): boolean =>
  one.startedAt === other.startedAt &&
  one.generation === other.generation &&
  canonical(one.setUp.screws.map(({ moves }) => moves)) ===
    canonical(other.setUp.screws.map(({ moves }) => moves));

/** Index of the first event of the first record that the other has not, or the number of its events. */
const firstDifference = (first: SessionRecord, other: SessionRecord): number => {
  const unequal = first.events.findIndex((event, k) => {
    const beside = other.events[k];
    return beside === undefined || !isSameEvent(event, beside, first);
  });
  return unequal < 0 ? first.events.length : unequal;
};

/** A turn whose direction was not known yet may have been put right since. */
const isSameEvent = (event: RecordedEvent, later: RecordedEvent, { setUp }: SessionRecord): boolean => {
  const open = event.kind === 'turn' && setUp.opens[event.screw - 1] === 'unknown';
  return (
    canonical(event) === canonical(later) ||
    (open && later.kind === 'turn' && canonical({ ...event, turns: -event.turns }) === canonical(later))
  );
};
