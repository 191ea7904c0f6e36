import { useState } from 'preact/hooks';
import type { StoredSession } from '../../../device/stored-session.ts';
import type { BenchActions } from './use-bench.ts';

/** Sessions that were deleted, and can be brought back until the page is left. */
export type Removal = {
  readonly removed: readonly StoredSession[];
  readonly remove: (session: StoredSession) => Promise<void>;
  readonly bringBack: (session: StoredSession) => Promise<void>;
};

export const useRemoval = (actions: BenchActions): Removal => {
  const [removed, setRemoved] = useState<readonly StoredSession[]>([]);
  return {
    removed,
    remove: async (session) => {
      await actions.remove(session.head.id);
      setRemoved((now) => [session, ...now]);
    },
    bringBack: async (session) => {
      await actions.addSessions([session]);
      setRemoved((now) => now.filter((one) => one !== session));
    },
  };
};
