import { readSetting, writeSetting } from './settings.ts';

const nameOf = (slug: string): string => `form-${slug}`;

/** What was last entered in a calculator on this device, as the keys of its link; empty if nothing was. Never throws. */
export function readKeptForm(slug: string): Readonly<Record<string, string>> {
  try {
    const kept: unknown = JSON.parse(readSetting(nameOf(slug)) ?? '{}');
    if (typeof kept !== 'object' || kept === null) return {};
    return Object.fromEntries(
      Object.entries(kept).filter((entry): entry is [string, string] => typeof entry[1] === 'string'),
    );
  } catch {
    return {};
  }
}

/** Keeps the entries of a calculator on this device. Never throws. */
export const writeKeptForm = (slug: string, record: Readonly<Record<string, string>>): void =>
  writeSetting(nameOf(slug), JSON.stringify(record));
