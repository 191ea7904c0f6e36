import { siteAddress } from './site-address.ts';

/** What the worker has saved, as the build counted it. */
export interface SavedVersion {
  version: string;
  megabytes: number;
}

/** What a page can say about use without a network. */
export type OfflineState =
  | { kind: 'not-offered'; reason: 'insecure' | 'no-worker' | 'development' }
  | { kind: 'saving' }
  | { kind: 'failed' }
  /** `before`: it was saved before this page was opened, so it is no news. */
  | { kind: 'saved'; saved: SavedVersion; before: boolean }
  /** A newer version is saved and waits; `load` ends the old one and loads this page anew. */
  | { kind: 'new-version'; load: () => void };

/** Registers the worker that keeps the whole site on this device, and reports how that goes. Never throws. */
export async function keepOffline(report: (state: OfflineState) => void): Promise<void> {
  if (import.meta.env.DEV) return report({ kind: 'not-offered', reason: 'development' });
  if (!window.isSecureContext) return report({ kind: 'not-offered', reason: 'insecure' });
  if (!('serviceWorker' in navigator)) return report({ kind: 'not-offered', reason: 'no-worker' });
  try {
    const registration = await navigator.serviceWorker.register(siteAddress('/sw.js'), {
      scope: siteAddress('/'),
    });
    await watch(registration, report);
  } catch {
    report({ kind: 'failed' });
  }
}

async function watch(
  registration: ServiceWorkerRegistration,
  report: (state: OfflineState) => void,
): Promise<void> {
  const container = navigator.serviceWorker;
  const offerReload = (load: () => void) => report({ kind: 'new-version', load });
  const offerWaiting = () =>
    offerReload(() => {
      container.addEventListener('controllerchange', () => location.reload(), { once: true });
      registration.waiting?.postMessage({ type: 'take-over' });
    });
  const follow = (worker: ServiceWorker) => {
    const isFirst = registration.active === null;
    if (isFirst) report({ kind: 'saving' });
    worker.addEventListener('statechange', async () => {
      if (worker.state === 'installed' && !isFirst) offerWaiting();
      if (worker.state === 'activated' && isFirst)
        report({ kind: 'saved', saved: await describe(worker), before: false });
      if (worker.state === 'redundant' && isFirst) report({ kind: 'failed' });
    });
  };

  // Another window asked for the new version: this page goes on as it is, and may load it when it likes.
  // The first worker of all takes over too, but from nobody.
  let isControlled = container.controller !== null;
  container.addEventListener('controllerchange', () => {
    if (isControlled) offerReload(() => location.reload());
    isControlled = true;
  });
  registration.addEventListener('updatefound', () => {
    if (registration.installing) follow(registration.installing);
  });
  if (registration.installing) follow(registration.installing);
  if (registration.active) {
    report({ kind: 'saved', saved: await describe(registration.active), before: true });
    if (registration.waiting) offerWaiting();
  }
}

function describe(worker: ServiceWorker): Promise<SavedVersion> {
  return new Promise((resolve) => {
    const channel = new MessageChannel();
    channel.port1.onmessage = (event: MessageEvent<SavedVersion>) => resolve(event.data);
    worker.postMessage({ type: 'describe' }, [channel.port2]);
  });
}
