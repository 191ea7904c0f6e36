import { plainLine } from '../../../calculators/index.ts';
import type { Merged } from '../../../device/merge-record.ts';
import type { RecordFault } from '../../../device/session-record.ts';

export type MergeCounts = Record<Merged['kind'], number>;

/** The note of a session that was here already and went on otherwise. */
export const differsWords = (event: number): string =>
  `Read from a file: it differs from the other record of this session from event ${event} on.`;

/** What became of the sessions of a file. */
export const mergeWords = (
  file: string,
  { added, extended, diverged, same, behind }: MergeCounts,
  damaged: number,
  whole: boolean,
): string => {
  const parts = [
    [added, 'added'],
    [extended, 'taken further than it was here'],
    [diverged, 'added beside the one that is here, because they differ; its notes say where'],
    [same, 'already here'],
    [behind, 'already here, with more entries'],
    [damaged, 'damaged and left out'],
  ] as const;
  const said = parts.flatMap(([count, words]) => (count === 0 ? [] : [`${count} ${words}`]));
  const written = added + extended + diverged;
  return [
    `Read from the file. “${plainLine(file)}”: ${said.length === 0 ? 'no session in it' : said.join('; ')}.`,
    ...(written === 0 ? ['Nothing was changed.'] : []),
    ...(whole ? [] : ['The file is not whole: sessions were taken out of it or put into it.']),
  ].join(' ');
};

export const faultWords = (fault: RecordFault, file: string): string => {
  switch (fault.kind) {
    case 'too-large':
      return `“${plainLine(file)}” is larger than a session can be, or a file of many. Nothing was changed.`;
    case 'empty':
      return `“${plainLine(file)}” is empty. Nothing was changed.`;
    case 'unreadable':
      return `“${plainLine(file)}” could not be read. Choose it once more. Nothing was changed.`;
    case 'not-text':
    case 'not-json':
    case 'not-a-session':
      return `“${plainLine(file)}” is not a session that was saved here. Nothing was changed.`;
    case 'newer':
      return `“${plainLine(file)}” was written by a newer version of this site (form ${fault.schema}). Open it with a page that is up to date. Nothing was changed.`;
    case 'field':
      return `“${plainLine(file)}” is damaged: ${fault.field} is not what it should be. Nothing was changed.`;
    case 'checksum':
      return `“${plainLine(file)}” is damaged: its checksum does not fit its content. Nothing was changed.`;
  }
};
