import { useLayoutEffect, useState } from 'preact/hooks';
import { checklistVersion } from '../../../calculators/index.ts';
import { nowText } from '../../../device/clock.ts';
import { readKeptForm, writeKeptForm } from '../../../device/kept-form.ts';

type Kept = { readonly since: string; readonly ticked: readonly string[] };
const nothing: Kept = { since: '', ticked: [] };

/** Ticks of another version say nothing of the lines that stand here now. */
function keptOf(list: string): Kept {
  const { version, since = '', ticked = '' } = readKeptForm(list);
  return version === checklistVersion && ticked !== '' ? { since, ticked: ticked.split(' ') } : nothing;
}

export type Ticks = {
  readonly isTicked: (line: string) => boolean;
  readonly tick: (line: string, done: boolean) => void;
  /** Takes the ticks off these lines. */
  readonly clear: (lines: readonly string[]) => void;
  readonly startAfresh: () => void;
  readonly any: boolean;
  /** When the first of them was set, if that was before this page was opened. */
  readonly earlier: string | null;
};

/** The ticks of a list, kept on this device. */
export function useTicks(listId: string): Ticks {
  const list = `checklist-${listId}`;
  const [kept, setKept] = useState(nothing);
  const [earlier, setEarlier] = useState<string | null>(null);

  useLayoutEffect(() => {
    const before = keptOf(list);
    setKept(before);
    setEarlier(before.since === '' ? null : before.since);
  }, [list]);

  function keep(ticked: readonly string[]) {
    const next =
      ticked.length === 0 ? nothing : { since: kept.since === '' ? nowText() : kept.since, ticked };
    setKept(next);
    if (next === nothing) setEarlier(null);
    writeKeptForm(list, { version: checklistVersion, since: next.since, ticked: next.ticked.join(' ') });
  }

  return {
    isTicked: (line) => kept.ticked.includes(line),
    tick: (line, done) => keep(done ? [...kept.ticked, line] : kept.ticked.filter((other) => other !== line)),
    clear: (lines) => keep(kept.ticked.filter((other) => !lines.includes(other))),
    startAfresh: () => keep([]),
    any: kept.ticked.length > 0,
    earlier,
  };
}
