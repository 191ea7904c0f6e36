import { DamagedSessions } from './DamagedSessions.tsx';
import { RecordList } from './RecordList.tsx';
import type { BenchActions, BenchState } from './use-bench.ts';
import type { Removal } from './use-removal.ts';
import type { Mark } from './words.ts';

interface Props {
  readonly state: BenchState;
  readonly actions: BenchActions;
  readonly removal: Removal;
  readonly mark: Mark;
}

/** What this device has of sessions. */
export default function Records({ state: { sessions, damaged }, actions, removal, mark }: Props) {
  return (
    <>
      <RecordList sessions={sessions} actions={actions} removal={removal} mark={mark} />
      <DamagedSessions damaged={damaged} />
    </>
  );
}
