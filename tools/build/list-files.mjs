import { readdirSync } from 'node:fs';
import { join, relative, sep } from 'node:path';

/** All files below a folder, with forward slashes, in one order everywhere. */
export function listFiles(folder) {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .sort();
}
