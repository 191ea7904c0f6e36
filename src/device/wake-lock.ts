/** Keeps the screen on while asked to, where the browser can; quiet where it refuses. Returns the way to let go. */
export const keepScreenOn = (): (() => void) => {
  let lock: WakeLockSentinel | null = null;
  let wanted = true;
  const ask = async (): Promise<void> => {
    if (!wanted || document.visibilityState !== 'visible' || !('wakeLock' in navigator)) return;
    try {
      lock = await navigator.wakeLock.request('screen');
      if (!wanted) await lock.release();
    } catch {
      lock = null;
    }
  };
  const onReturn = (): void => void ask();
  void ask();
  document.addEventListener('visibilitychange', onReturn);
  return () => {
    wanted = false;
    document.removeEventListener('visibilitychange', onReturn);
    void lock?.release();
  };
};
