import { useEffect, useRef, useState } from 'preact/hooks';
import { reversedTurn, settleDirection, startTimer } from '../../../calculators/index.ts';
import { nowMs } from '../../../device/clock.ts';
import type { RecordedEvent, SignOff } from '../../../device/session-record.ts';
import {
  openSessionStore,
  type SessionHead,
  type SessionStore,
  type StoredSession,
} from '../../../device/session-store.ts';

/** Whether what the screen shows is also on the device. */
export type Saved = 'saved' | 'saving' | 'not-saved' | 'memory';

export type BenchState = {
  readonly ready: boolean;
  readonly saved: Saved;
  readonly sessions: readonly StoredSession[];
  readonly current: StoredSession | null;
  /** A direction that the last reading has just shown. */
  readonly shown: { readonly screw: number; readonly opens: 'clockwise' | 'anticlockwise' } | null;
};

export type BenchActions = {
  readonly open: (session: StoredSession | null) => void;
  readonly begin: (session: StoredSession) => void;
  readonly addSession: (session: StoredSession) => Promise<void>;
  readonly record: (events: readonly RecordedEvent[]) => void;
  readonly undo: () => void;
  readonly correct: (index: number, event: RecordedEvent) => void;
  readonly changeHead: (change: Partial<SessionHead>) => void;
  readonly remove: (id: string) => Promise<void>;
};

/** The sessions of this device and the open one. The screen changes at once; “saved” follows when the store has it. */
export const useBench = (): readonly [BenchState, BenchActions] => {
  const [state, setState] = useState<BenchState>({
    ready: false,
    saved: 'saved',
    sessions: [],
    current: null,
    shown: null,
  });
  const store = useRef<SessionStore | null>(null);
  const current = useRef<StoredSession | null>(null);
  const writes = useRef(Promise.resolve());

  const change = (update: Partial<BenchState>): void => setState((now) => ({ ...now, ...update }));

  const refresh = async (): Promise<void> => {
    if (store.current) change({ sessions: await store.current.list() });
  };

  useEffect(() => {
    const open = async (): Promise<void> => {
      store.current = await openSessionStore();
      const sessions = await store.current.list();
      change({ ready: true, sessions, saved: store.current.keeps ? 'saved' : 'memory' });
    };
    void open();
  }, []);

  const show = (session: StoredSession | null, shown: BenchState['shown'] = null): void => {
    current.current = session;
    change({ current: session, shown });
  };

  /** Writes follow each other; the last one to end says whether all is saved. */
  const write = (work: (to: SessionStore) => Promise<void>): void => {
    const to = store.current;
    if (!to) return;
    if (to.keeps) change({ saved: 'saving' });
    const turn = writes.current.then(() => work(to));
    writes.current = turn.then(
      () => {
        if (writes.current === settled) change({ saved: to.keeps ? 'saved' : 'memory' });
      },
      () => change({ saved: 'not-saved' }),
    );
    const settled = writes.current;
  };

  const changeHead = (update: Partial<SessionHead>): void => {
    const session = current.current;
    if (!session) return;
    const head = { ...session.head, ...update };
    show({ ...session, head });
    write((to) => to.putHead(head));
  };

  const settle = (session: StoredSession): { session: StoredSession; shown: BenchState['shown'] } => {
    const found = settleDirection(session.head.setUp, session.events);
    const turn = found && session.events[found.turnEvent];
    if (!found || turn?.kind !== 'turn') return { session, shown: null };
    const event = found.reversed ? reversedTurn(turn) : turn;
    const events = session.events.map((old, k) => (k === found.turnEvent ? event : old));
    const head = { ...session.head, setUp: found.setUp };
    write((to) => to.putEvent(head.id, found.turnEvent, event));
    write((to) => to.putHead(head));
    return { session: { head, events }, shown: { screw: found.screw, opens: found.opens } };
  };

  return [
    state,
    {
      open: (session) => {
        show(session);
        if (session === null) void refresh();
      },
      begin: (session) => {
        show(session);
        write((to) => to.putSession(session));
      },
      addSession: async (session) => {
        await store.current?.putSession(session);
        await refresh();
      },
      record: (added) => {
        const before = current.current;
        if (!before) return;
        const head = withRunning(before.head, added);
        const first = before.events.length;
        if (head !== before.head) write((to) => to.putHead(head));
        added.forEach((event, k) => write((to) => to.putEvent(head.id, first + k, event)));
        const { session, shown } = settle({ head, events: [...before.events, ...added] });
        show(session, shown);
      },
      undo: () => {
        const session = current.current;
        const last = (session?.events.length ?? 0) - 1;
        if (!session || last < 0) return;
        const head = withRoundUpTo(session.head, last);
        if (head !== session.head) write((to) => to.putHead(head));
        write((to) => to.dropEvent(head.id, last));
        show({ head, events: session.events.slice(0, -1) });
      },
      correct: (index, event) => {
        const session = current.current;
        if (!session) return;
        write((to) => to.putEvent(session.head.id, index, event));
        const corrected = {
          head: session.head,
          events: session.events.map((old, k) => (k === index ? event : old)),
        };
        const settled = settle(corrected);
        show(settled.session, settled.shown);
      },
      changeHead,
      remove: async (id) => {
        await store.current?.remove(id);
        if (current.current?.head.id === id) show(null);
        await refresh();
      },
    },
  ];
};

/** The engine's time starts with the first event; a turn ends a sign-off round. */
const withRunning = (head: SessionHead, added: readonly RecordedEvent[]): SessionHead => {
  const turned = added.some((event) => event.kind === 'turn');
  const signOff: SignOff | null = turned ? null : head.signOff;
  const timer = startTimer(head.timer, nowMs());
  return signOff === head.signOff && timer === head.timer ? head : { ...head, signOff, timer };
};

/** A round that began after the events that are left has not begun. */
const withRoundUpTo = (head: SessionHead, events: number): SessionHead =>
  head.signOff && head.signOff.fromEvent > events ? { ...head, signOff: null } : head;
