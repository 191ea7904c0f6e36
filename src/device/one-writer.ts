/** What becomes of the claim of this window to be the one that writes a session. */
export type Claim = {
  /** Another window writes; this one is told of its entries, and has its turn when the other lets go. */
  readonly elsewhere: () => void;
  /** This window writes. `before`: another one did until now. */
  readonly ours: (before: boolean) => void;
  /** The other window has written something. */
  readonly news: () => void;
};

export type HeldClaim = {
  /** Tells the other windows that something was written. */
  readonly tell: () => void;
  readonly release: () => void;
};

/** False where the browser cannot tell the windows apart: then every window writes. */
export const knowsOtherWindows = (): boolean => 'locks' in navigator;

/** Asks for the right to write one session, and keeps it until it is released or the window is closed. */
export const claimSession = (id: string, claim: Claim): HeldClaim => {
  if (!knowsOtherWindows()) {
    claim.ours(false);
    return { tell: () => {}, release: () => {} };
  }
  const name = `evendraw ${id}`;
  const channel = new BroadcastChannel(name);
  channel.onmessage = () => claim.news();
  const leaving = new AbortController();
  let letGo = (): void => {};
  const hold = (before: boolean) => (): Promise<void> => {
    if (leaving.signal.aborted) return Promise.resolve();
    claim.ours(before);
    return new Promise((resolve) => {
      letGo = resolve;
    });
  };
  const ask = async (): Promise<void> => {
    const isFree = await navigator.locks.request(name, { ifAvailable: true }, async (lock) => {
      if (lock) await hold(false)();
      return lock !== null;
    });
    if (isFree || leaving.signal.aborted) return;
    claim.elsewhere();
    await navigator.locks.request(name, { signal: leaving.signal }, hold(true));
  };
  void ask().catch(() => {}); // given up: the window has left the session while it waited
  return {
    tell: () => channel.postMessage('written'),
    release: () => {
      leaving.abort();
      letGo();
      channel.close();
    },
  };
};
