import { nowText } from '../../../device/clock.ts';
import { saveFile } from '../../../device/save-file.ts';
import { rememberInFiles } from '../../../device/sessions-in-files.ts';
import { siteVersion } from '../../../device/site-version.ts';
import type { StoredSession } from '../../../device/stored-session.ts';
import { fileName, recordFrom } from './sessions.ts';

/** Offers all sessions as one file, or as many as they need. What writes them is loaded only now. */
export const saveAll = async (sessions: readonly StoredSession[]): Promise<void> => {
  const { writeCollections } = await import('../../../device/session-collection.ts');
  const files = writeCollections(sessions.map(recordFrom), `evendraw ${siteVersion}`);
  const name = fileName(nowText(), 'all sessions');
  files.forEach((text, k) => {
    const part = files.length === 1 ? '' : `-${k + 1}-of-${files.length}`;
    saveFile(`${name}${part}.json`, text, 'application/json');
  });
  rememberInFiles(sessions.map(({ head, events }) => ({ id: head.id, events: events.length })));
};

/** Offers sessions as a table for spreadsheets, which know UTF-8 by the byte order mark. */
export const saveTable = async (sessions: readonly StoredSession[]): Promise<void> => {
  const { sessionsCsv } = await import('./sessions-table.ts');
  const [only, ...others] = sessions.map(({ head }) => head);
  const name =
    only && others.length === 0 ? fileName(only.startedAt, only.name) : fileName(nowText(), 'all sessions');
  saveFile(`${name}.csv`, `\ufeff${sessionsCsv(sessions.map(recordFrom))}`, 'text/csv');
};
