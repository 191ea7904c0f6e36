import { useEffect, useRef, useState } from 'preact/hooks';
import { reopenTimer, reversedTurn, settleDirection, startTimer } from '../../../calculators/index.ts';
import { nowMs } from '../../../device/clock.ts';
import { askForLastingStorage, lastingStorage, type Lasting } from '../../../device/lasting-storage.ts';
import { claimSession, type HeldClaim } from '../../../device/one-writer.ts';
import { whenPageIsLeft } from '../../../device/page-left.ts';
import { sessionKeeper, type Saved, type SessionKeeper } from '../../../device/session-keeper.ts';
import type { RecordedEvent, SignOff } from '../../../device/session-record.ts';
import type { SessionStore } from '../../../device/session-store.ts';
import {
  isEnded,
  type DamagedSession,
  type SessionHead,
  type StoredSession,
} from '../../../device/stored-session.ts';

export type BenchState = {
  readonly ready: boolean;
  readonly saved: Saved;
  /** Whether the browser may clear what is kept; null until it was asked. */
  readonly lasting: Lasting | null;
  readonly sessions: readonly StoredSession[];
  readonly damaged: readonly DamagedSession[];
  readonly current: StoredSession | null;
  /** Another window writes this session; here it is only shown. */
  readonly elsewhere: boolean;
  /** The engine's time stood still for so long since nobody watched it; 0 where there is nothing to ask. */
  readonly unwatchedMs: number;
  /** A direction that the last reading has just shown. */
  readonly shown: { readonly screw: number; readonly opens: 'clockwise' | 'anticlockwise' } | null;
};

export type BenchActions = {
  readonly open: (session: StoredSession | null) => void;
  readonly begin: (session: StoredSession) => void;
  readonly addSessions: (sessions: readonly StoredSession[]) => Promise<void>;
  /** The sessions as they stand now: another window may have gone on with one. */
  readonly lookAgain: () => Promise<readonly StoredSession[]>;
  readonly rename: (id: string, name: string) => Promise<void>;
  readonly record: (events: readonly RecordedEvent[]) => void;
  readonly undo: () => void;
  readonly correct: (index: number, event: RecordedEvent) => void;
  readonly changeHead: (change: Partial<SessionHead>) => void;
  readonly remove: (id: string) => Promise<void>;
  readonly tryAgain: () => void;
  /** The engine's timer as it was put right, and for how long nobody watched it. */
  readonly seeTimer: (timer: SessionHead['timer'], unwatchedMs: number) => void;
};

const nothing: BenchState = {
  ready: false,
  saved: 'saved',
  lasting: null,
  sessions: [],
  damaged: [],
  current: null,
  elsewhere: false,
  unwatchedMs: 0,
  shown: null,
};

/** The sessions of this device and the open one. The screen changes at once; “saved” follows when the store has it. */
export const useBench = (): readonly [BenchState, BenchActions] => {
  const [state, setState] = useState(nothing);
  const keeper = useRef<SessionKeeper | null>(null);
  const current = useRef<StoredSession | null>(null);
  const claim = useRef<HeldClaim | null>(null);
  const mayWrite = useRef(true);
  const asked = useRef(false);

  const change = (update: Partial<BenchState>): void => setState((now) => ({ ...now, ...update }));

  const refresh = async (): Promise<readonly StoredSession[]> => {
    if (!keeper.current) return [];
    const found = await keeper.current.list();
    change(found);
    return found.sessions;
  };

  const show = (session: StoredSession | null, shown: BenchState['shown'] = null): void => {
    current.current = session;
    change({ current: session, shown });
  };

  /** What other windows have written since this one last looked. */
  const readAnew = async (): Promise<void> => {
    const before = current.current;
    const stored = before && (await keeper.current?.load(before.head.id));
    if (!stored || current.current !== before) return;
    show(stored);
  };

  const letGo = (): void => {
    claim.current?.release();
    claim.current = null;
  };
  const takeHold = (isNew: boolean): void => {
    letGo();
    const session = current.current;
    mayWrite.current = true;
    change({ elsewhere: false, unwatchedMs: 0 });
    if (!session) return;
    claim.current = claimSession(session.head.id, {
      elsewhere: () => {
        mayWrite.current = false;
        change({ elsewhere: true });
        void readAnew();
      },
      ours: () => {
        mayWrite.current = true;
        change({ elsewhere: false });
        if (!isNew) void readAnew().then(askAboutGap);
      },
      news: () => void readAnew(),
    });
  };

  useEffect(() => {
    const own = sessionKeeper(
      (saved) => {
        change({ saved });
        if (saved === 'saved') claim.current?.tell();
      },
      () => void refresh(),
    );
    keeper.current = own;
    void own.list().then((found) => change({ ready: true, ...found }));
    void lastingStorage().then((lasting) => lasting === 'granted' && change({ lasting }));
    return whenPageIsLeft(
      () => {
        letGo();
        own.rest();
      },
      () => {
        takeHold(false);
        if (!current.current) void refresh();
      },
    );
  }, []);

  const askLasting = async (): Promise<void> => {
    if (asked.current) return;
    asked.current = true;
    change({ lasting: await askForLastingStorage() });
  };

  /** Takes the session as it is to be, and writes what has changed of it. */
  const keep = (
    session: StoredSession,
    work: (to: SessionStore) => Promise<void>,
    shown: BenchState['shown'] = null,
  ): void => {
    show(session, shown);
    void keeper.current?.write(session, work);
  };

  const changeHead = (update: Partial<SessionHead>): void => {
    const session = current.current;
    if (!session || !mayWrite.current) return;
    const head = { ...session.head, ...update };
    keep({ ...session, head }, (to) => to.putHead(head));
  };

  const seeTimer: BenchActions['seeTimer'] = (timer, unwatchedMs) => {
    if (!mayWrite.current) return;
    changeHead({ timer });
    change({ unwatchedMs });
  };
  /** The engine's time went on while the session was closed; only the person knows whether the engine did. */
  const askAboutGap = (): void => {
    const session = current.current;
    if (!session || isEnded(session.head)) return;
    const { timer, unwatchedMs } = reopenTimer(session.head.timer, session.events, nowMs());
    if (unwatchedMs > 0) seeTimer(timer, unwatchedMs);
  };

  /** Shows what was entered, with the direction that it proves, and writes it. */
  const enter = ({ head, events }: StoredSession, work: (to: SessionStore) => Promise<void>): void => {
    const found = settleDirection(head.setUp, events);
    const turn = found && events[found.turnEvent];
    if (!found || turn?.kind !== 'turn') return keep({ head, events }, work);
    const event = found.reversed ? reversedTurn(turn) : turn;
    const settled = {
      head: { ...head, setUp: found.setUp },
      events: events.map((old, k) => (k === found.turnEvent ? event : old)),
    };
    keep(
      settled,
      async (to) => {
        await work(to);
        await to.putEvent(head.id, found.turnEvent, event);
        await to.putHead(settled.head);
      },
      { screw: found.screw, opens: found.opens },
    );
  };

  return [
    state,
    {
      open: (session) => {
        show(session);
        takeHold(false);
        if (session === null) void refresh();
      },
      begin: (session) => {
        keep(session, (to) => to.putSession(session));
        takeHold(true);
        void askLasting();
      },
      addSessions: async (sessions) => {
        for (const session of sessions) await keeper.current?.write(session, (to) => to.putSession(session));
        await refresh();
      },
      lookAgain: refresh,
      rename: async (id, name) => {
        const session = await keeper.current?.load(id);
        if (session) {
          const head = { ...session.head, name };
          await keeper.current?.write({ ...session, head }, (to) => to.putHead(head));
        }
        await refresh();
      },
      record: (added) => {
        const before = current.current;
        if (!before || !mayWrite.current) return;
        const head = withRunning(before.head, added);
        const first = before.events.length;
        enter({ head, events: [...before.events, ...added] }, async (to) => {
          if (head !== before.head) await to.putHead(head);
          for (const [k, event] of added.entries()) await to.putEvent(head.id, first + k, event);
        });
        change({ unwatchedMs: 0 });
      },
      undo: () => {
        const session = current.current;
        const last = (session?.events.length ?? 0) - 1;
        if (!session || last < 0 || !mayWrite.current) return;
        const head = withRoundUpTo(session.head, last);
        keep({ head, events: session.events.slice(0, -1) }, async (to) => {
          if (head !== session.head) await to.putHead(head);
          await to.dropEvent(head.id, last);
        });
      },
      correct: (index, event) => {
        const session = current.current;
        if (!session || !mayWrite.current) return;
        const events = session.events.map((old, k) => (k === index ? event : old));
        enter({ head: session.head, events }, (to) => to.putEvent(session.head.id, index, event));
      },
      changeHead,
      remove: async (id) => {
        await keeper.current?.remove(id);
        if (current.current?.head.id === id) {
          show(null);
          takeHold(false);
        }
        await refresh();
      },
      tryAgain: () => void keeper.current?.tryAgain(),
      seeTimer,
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
