import { siteAddress } from './site-address.ts';
import { passOurAddresses } from './trusted-addresses.ts';

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
  /**
   * A newer version is saved and waits. `load` ends the old one and loads this page anew, if this is the only window of
   * the site; else it reports again, with the number of others.
   */
  | { kind: 'new-version'; otherWindows: number; load: () => void };

/**
 * Registers the worker that keeps the whole site on this device, once the page itself is all there, and reports how that
 * goes. Never throws.
 */
export async function keepOffline(report: (state: OfflineState) => void): Promise<void> {
  if (import.meta.env.DEV) return report({ kind: 'not-offered', reason: 'development' });
  if (!window.isSecureContext) return report({ kind: 'not-offered', reason: 'insecure' });
  if (!('serviceWorker' in navigator)) return report({ kind: 'not-offered', reason: 'no-worker' });
  try {
    await pageLoaded();
    passOurAddresses();
    const registration = await navigator.serviceWorker.register(siteAddress('/sw.js'), {
      scope: siteAddress('/'),
    });
    await watch(registration, report);
  } catch {
    report({ kind: 'failed' });
  }
}

function pageLoaded(): Promise<void> {
  if (document.readyState === 'complete') return Promise.resolve();
  return new Promise((resolve) => addEventListener('load', () => setTimeout(resolve), { once: true }));
}

async function watch(
  registration: ServiceWorkerRegistration,
  report: (state: OfflineState) => void,
): Promise<void> {
  const offer = (otherWindows = 0) => report({ kind: 'new-version', otherWindows, load });
  const load = async () => {
    if (!registration.waiting) return;
    const reload = () => location.reload();
    navigator.serviceWorker.addEventListener('controllerchange', reload);
    const { otherWindows } = await ask<{ otherWindows: number }>(registration.waiting, 'take-over');
    if (otherWindows === 0) return;
    navigator.serviceWorker.removeEventListener('controllerchange', reload);
    offer(otherWindows);
  };
  const follow = (worker: ServiceWorker) => {
    const isFirst = registration.active === null;
    if (isFirst) report({ kind: 'saving' });
    worker.addEventListener('statechange', async () => {
      if (worker.state === 'installed' && !isFirst) offer();
      if (worker.state === 'activated' && isFirst)
        report({ kind: 'saved', saved: await describe(worker), before: false });
      if (worker.state === 'redundant' && isFirst) report({ kind: 'failed' });
    });
  };

  registration.addEventListener('updatefound', () => {
    if (registration.installing) follow(registration.installing);
  });
  if (registration.installing) follow(registration.installing);
  if (registration.active) {
    report({ kind: 'saved', saved: await describe(registration.active), before: true });
    if (registration.waiting) offer();
  }
}

const describe = (worker: ServiceWorker) => ask<SavedVersion>(worker, 'describe');

function ask<Answer>(worker: ServiceWorker, type: 'describe' | 'take-over'): Promise<Answer> {
  return new Promise((resolve) => {
    const channel = new MessageChannel();
    channel.port1.onmessage = (event: MessageEvent<Answer>) => resolve(event.data);
    worker.postMessage({ type }, [channel.port2]);
  });
}
