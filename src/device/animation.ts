/** What passed between two frames; after a pause of the browser the rest of it is left out. */
const longestFrameSeconds = 0.1;

/** `elapsedSeconds` since the last frame, at most a tenth; `nowSeconds` of a clock that only goes forward. */
export type Frame = { readonly elapsedSeconds: number; readonly nowSeconds: number };

/** Calls back for every frame that the screen draws while the page is shown; hidden, nothing passes. Returns the way to stop it. */
export function everyFrame(draw: (frame: Frame) => void): () => void {
  let request = 0;
  let lastMs: number | null = null;
  const onFrame = (nowMs: number): void => {
    const elapsedSeconds = lastMs === null ? 0 : Math.min((nowMs - lastMs) / 1000, longestFrameSeconds);
    lastMs = nowMs;
    request = requestAnimationFrame(onFrame);
    draw({ elapsedSeconds, nowSeconds: nowMs / 1000 });
  };
  const onVisibility = (): void => {
    cancelAnimationFrame(request);
    lastMs = null;
    if (document.visibilityState === 'visible') request = requestAnimationFrame(onFrame);
  };
  document.addEventListener('visibilitychange', onVisibility);
  onVisibility();
  return () => {
    cancelAnimationFrame(request);
    document.removeEventListener('visibilitychange', onVisibility);
  };
}

/** Says yes at most so many times a second. */
export function atMost(timesPerSecond: number): (nowSeconds: number) => boolean {
  let lastSeconds = -Infinity;
  return (nowSeconds) => {
    if (nowSeconds - lastSeconds < 1 / timesPerSecond) return false;
    lastSeconds = nowSeconds;
    return true;
  };
}

const reduced = '(prefers-reduced-motion: reduce)';

/** Tells whether the reader wants little movement, now and when that changes. Returns the way to stop it. */
export function watchReducedMotion(tell: (wanted: boolean) => void): () => void {
  const query = matchMedia(reduced);
  const onChange = (): void => tell(query.matches);
  onChange();
  query.addEventListener('change', onChange);
  return () => query.removeEventListener('change', onChange);
}

/** Calls back when the browser has nothing else to do, or soon. Returns the way to stop it. */
export function whenIdle(work: () => void): () => void {
  if ('requestIdleCallback' in globalThis) {
    const request = requestIdleCallback(work, { timeout: 500 });
    return () => cancelIdleCallback(request);
  }
  const timer = setTimeout(work, 20);
  return () => clearTimeout(timer);
}
