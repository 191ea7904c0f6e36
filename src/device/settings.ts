/** Small settings that a page remembers, such as the unit last used. Not for readings: those go to the session store. */

const prefix = 'evendraw-';

/** Holds the settings of this page while there is no storage (private windows, storage switched off or full). */
const inMemory = new Map<string, string>();

/** The setting, or null. Never throws. */
export function readSetting(name: string): string | null {
  const kept = inMemory.get(name);
  if (kept !== undefined) return kept;
  try {
    return localStorage.getItem(prefix + name);
  } catch {
    return null;
  }
}

/** Keeps the setting; without storage it holds for this page. Never throws. */
export function writeSetting(name: string, value: string): void {
  try {
    localStorage.setItem(prefix + name, value);
    inMemory.delete(name);
  } catch {
    inMemory.set(name, value);
  }
}
