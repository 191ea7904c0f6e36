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
  if (event.data?.type === 'take-over') event.waitUntil(takeOver(event.ports[0]));
  if (event.data?.type === 'describe')
    event.ports[0]?.postMessage({ version: saved.version, megabytes: saved.megabytes });
});
self.addEventListener('fetch', (event) => {
  const { request } = event;
  const url = new URL(request.url);
  const isOurs = url.origin === self.location.origin && url.pathname.startsWith(saved.base);
  if (request.method !== 'GET' || !isOurs) return;
  event.respondWith(request.mode === 'navigate' ? answerPage(request, url) : answerFile(request));
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
 * Never of its own accord, and only for the one window that asks: another may be in the middle of a session, with files
 * of the version that it was loaded from. Answers how many other windows there are.
 */
async function takeOver(port) {
  const windows = await self.clients.matchAll({ type: 'window', includeUncontrolled: true });
  const otherWindows = windows.filter((one) => one.url.startsWith(addressOf(''))).length - 1;
  port?.postMessage({ otherWindows });
  if (otherWindows === 0) await self.skipWaiting();
}

async function dropOldVersions() {
  const names = (await caches.keys()).filter((name) => name.startsWith(family) && name !== cacheName);
  await Promise.all(names.map((name) => caches.delete(name)));
}

/** Nothing here depends on a query. */
async function findSaved(address) {
  const cache = await caches.open(cacheName);
  return cache.match(address, { ignoreSearch: true, ignoreVary: true });
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
