/* The build writes one line before this: const saved = { version, megabytes, base, files }. Tested whole, in a browser. */
/* global saved */

const family = `evendraw ${saved.base} `;
const cacheName = family + saved.version;
const addressOf = (file) => new URL(saved.base + file, self.location.origin).href;

self.addEventListener('install', (event) => event.waitUntil(saveEverything()));
self.addEventListener('activate', (event) => {
  event.waitUntil(dropOldVersions().then(() => self.clients.claim()));
});
self.addEventListener('message', (event) => {
  // Never of its own accord: an open page may still need files of the version it was loaded from.
  if (event.data?.type === 'take-over') event.waitUntil(self.skipWaiting());
  if (event.data?.type === 'describe')
    event.ports[0]?.postMessage({ version: saved.version, megabytes: saved.megabytes });
});
self.addEventListener('fetch', (event) => {
  const { request } = event;
  const url = new URL(request.url);
  const isOurs = url.origin === self.location.origin && url.pathname.startsWith(saved.base);
  if (request.method !== 'GET' || !isOurs) return;
  if (request.mode === 'navigate') {
    event.respondWith(answerPage(request, url));
    event.waitUntil(dropOldVersions());
  } else event.respondWith(answerFile(request));
});

/** All files or none: with one missing the installation fails and the earlier version stays. */
async function saveEverything() {
  const cache = await caches.open(cacheName);
  try {
    // `reload` passes by the browser's own cache, which may hold a file of an older version.
    await cache.addAll(saved.files.map((file) => new Request(addressOf(file), { cache: 'reload' })));
  } catch (error) {
    await caches.delete(cacheName);
    throw error;
  }
}

/**
 * Old versions go when at most one window is open: of several, one may still run on old files. The names are read
 * before asking for a newer worker, so that a cache which one is filling just now can never be among them.
 */
async function dropOldVersions() {
  const old = (await caches.keys()).filter((name) => name.startsWith(family) && name !== cacheName);
  const { installing, waiting } = self.registration;
  const windows = await self.clients.matchAll({ type: 'window', includeUncontrolled: true });
  if (installing || waiting || windows.length > 1) return;
  await Promise.all(old.map((name) => caches.delete(name)));
}

/** From this version, else from an older one that is still kept. Nothing here depends on a query. */
async function findSaved(address) {
  const options = { ignoreSearch: true, ignoreVary: true };
  const cache = await caches.open(cacheName);
  return (await cache.match(address, options)) ?? caches.match(address, options);
}

async function answerFile(request) {
  return (await findSaved(request.url)) ?? fetch(request);
}

async function answerPage(request, url) {
  const page = await findSaved(url.href.replace(/index\.html(?=$|[?#])/, ''));
  if (page) return page;
  const withSlash = `${url.origin}${url.pathname}/`;
  if (await findSaved(withSlash)) return Response.redirect(withSlash + url.search, 301);
  try {
    return await fetch(request);
  } catch {
    const missing = await findSaved(addressOf('404.html'));
    const headers = { 'content-type': 'text/html; charset=utf-8' };
    return new Response(missing?.body ?? null, { status: 404, statusText: 'Not Found', headers });
  }
}
