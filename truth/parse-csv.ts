/** The records of comma-separated text. RFC 4180: quoted cells may hold commas, line ends and doubled quotes. */
export function parseCsv(text: string): string[][] {
  const records: string[][] = [];
  let record: string[] = [];
  let cell = '';
  let quoted = false;
  for (let at = 0; at < text.length; at += 1) {
    const character = text[at];
    if (quoted) {
      if (character !== '"') cell += character;
      else if (text[at + 1] === '"') {
        cell += '"';
        at += 1;
      } else quoted = false;
    } else if (character === '"') quoted = true;
    else if (character === ',') {
      record.push(cell);
      cell = '';
    } else if (character === '\n') {
      records.push([...record, cell]);
      record = [];
      cell = '';
    } else if (character !== '\r') cell += character;
  }
  if (quoted) throw new Error('unclosed quote');
  if (cell !== '' || record.length > 0) records.push([...record, cell]);
  return records;
}
