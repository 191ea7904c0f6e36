import { describeTurnSize, formatFixed, plainLine } from '../../../calculators/index.ts';
import type { RecordedEvent } from '../../../device/session-record.ts';
import type { StoredSession } from '../../../device/stored-session.ts';
import { generationWords } from './generation-words.ts';
import { figure, screwName, type Figures } from './words.ts';

/** A line of the log. */
export const eventWords = (event: RecordedEvent, figures: Figures): string => {
  if (event.kind === 'reading') {
    const other = event.typed !== undefined && /[a-z″"]/iu.test(event.typed) ? ` (${event.typed})` : '';
    const rpm = event.rpm === undefined ? '' : ` at ${formatFixed(event.rpm, 0)} rpm`;
    return `Read carburettor ${event.carburettor}: ${figure(event.depressionPa, figures)}${other}${rpm}`;
  }
  const verb = event.turns < 0 ? 'Closed' : 'Opened';
  return `${verb} ${screwName(figures.setUp, event.screw)} by ${describeTurnSize(event.turns)}`;
};

/** A date as it is read: 25 November 2026, 14:05. */
export const dateWords = (instant: string): string =>
  new Date(instant).toLocaleString('en-GB', { dateStyle: 'long', timeStyle: 'short' });

export const verdictWords = {
  'under-way': 'sign-off round under way',
  within: 'signed off as within',
  'not-within': 'ended, not within',
} as const;

/** A session as the list calls it: by its engine, or by its day. */
export const sessionName = ({ head }: StoredSession): string =>
  plainLine(head.name) || dateWords(head.startedAt);

/** What the list says beside it. */
export const detailsWords = ({ head, events }: StoredSession): string => {
  const readings = events.filter(({ kind }) => kind === 'reading').length;
  const turns = events.length - readings;
  return [
    ...(plainLine(head.name) ? [dateWords(head.startedAt)] : []),
    `${head.setUp.carburettors} carburettors`,
    generationWords[head.generation].toLowerCase(),
    `${readings} ${readings === 1 ? 'reading' : 'readings'}`,
    `${turns} ${turns === 1 ? 'turn' : 'turns'}`,
    head.signOff ? verdictWords[head.signOff.verdict] : 'open',
  ].join(' · ');
};
