// A static server for the built site, and nothing else.
//   node tools/serve.mjs FOLDER [--port 4321] [--host 127.0.0.1] [--base /club/]
import { createReadStream, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, resolve, sep } from 'node:path';
import { pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import { createBrotliCompress, createGzip, constants } from 'node:zlib';
import { packed } from './build/packed.mjs';
import { basePath } from './build/base-path.mjs';
import { headersFile, readHeaders } from './build/policy.mjs';

const types = {
  '.css': 'text/css; charset=utf-8',
  '.csv': 'text/csv; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json',
  '.pdf': 'application/pdf',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain; charset=utf-8',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json',
  '.webp': 'image/webp',
  '.woff2': 'font/woff2',
  '.xml': 'application/xml',
  '.zip': 'application/zip',
};
const packs = new Set(['.css', '.csv', '.html', '.js', '.json', '.svg', '.txt', '.webmanifest', '.xml']);
const isHashed = (file) => file.includes(`${sep}_astro${sep}`);

const isFile = (path) => statSync(path, { throwIfNoEntry: false })?.isFile() ?? false;
const isFolder = (path) => statSync(path, { throwIfNoEntry: false })?.isDirectory() ?? false;

/** What a path asks for: a file, a folder that wants its slash, or nothing. Never outside the folder. */
function locate(folder, base, path) {
  let decoded;
  try {
    decoded = decodeURIComponent(path);
  } catch {
    return {};
  }
  if (decoded === base.slice(0, -1)) return { redirect: base };
  if (!decoded.startsWith(base) || decoded.includes('\0')) return {};
  const file = resolve(folder, decoded.slice(base.length));
  if (file !== folder && !file.startsWith(folder + sep)) return {};
  if (isFolder(file)) {
    if (!decoded.endsWith('/')) return { redirect: `${path}/` };
    const index = join(file, 'index.html');
    return isFile(index) ? { file: index } : {};
  }
  if (file === join(folder, headersFile)) return {};
  return isFile(file) && !decoded.endsWith('/') ? { file } : {};
}

function packer(request, file, packsOnce) {
  const accepted = request.headers['accept-encoding'] ?? '';
  if (!packs.has(extname(file))) return undefined;
  if (/\bbr\b/.test(accepted))
    return packsOnce
      ? { name: 'br', bytes: packed(file) }
      : { name: 'br', stream: createBrotliCompress({ params: { [constants.BROTLI_PARAM_QUALITY]: 5 } }) };
  if (/\bgzip\b/.test(accepted)) return { name: 'gzip', stream: createGzip() };
  return undefined;
}

function send(request, response, file, status, { headers, packsOnce }) {
  const packing = packer(request, file, packsOnce);
  response.writeHead(status, {
    'content-type': types[extname(file)] ?? 'application/octet-stream',
    'cache-control': isHashed(file) ? 'public, max-age=31536000, immutable' : 'no-cache',
    'x-content-type-options': 'nosniff',
    'referrer-policy': 'no-referrer',
    ...headers,
    vary: 'accept-encoding',
    ...(packing ? { 'content-encoding': packing.name } : { 'content-length': statSync(file).size }),
  });
  if (request.method === 'HEAD') return response.end();
  if (packing?.bytes) return response.end(packing.bytes);
  const source = createReadStream(file);
  source.on('error', () => response.destroy());
  if (packing) source.pipe(packing.stream).pipe(response);
  else source.pipe(response);
}

/**
 * Serves a folder under a base path, with the headers that its `_headers` asks for. Resolves when it listens; rejects when the port is taken.
 * Port 0 takes a free one. `packsOnce`: as tightly as it goes, and each file once; for a folder that does not change. `close` ends at once, open connections too.
 */
export function serveFolder({ folder, base = '/', port = 0, host = '127.0.0.1', packsOnce = false }) {
  const root = resolve(folder);
  const under = basePath(base);
  const sending = { headers: readHeaders(root), packsOnce };
  const server = createServer((request, response) => {
    if (request.method !== 'GET' && request.method !== 'HEAD')
      return response.writeHead(405, { allow: 'GET, HEAD' }).end();
    const path = (request.url ?? '/').replace(/[?#].*$/, '');
    const { file, redirect } = locate(root, under, path);
    if (redirect) return response.writeHead(301, { location: redirect }).end();
    if (file) return send(request, response, file, 200, sending);
    const notFound = join(root, '404.html');
    if (isFile(notFound)) return send(request, response, notFound, 404, sending);
    response.writeHead(404, { 'content-type': 'text/plain' }).end('There is no such page.');
  });
  return new Promise((accept, reject) => {
    server.once('error', reject);
    server.listen(port, host, () => {
      const { port: taken } = server.address();
      accept({
        address: `http://${host === '0.0.0.0' ? '127.0.0.1' : host}:${taken}${under}`,
        port: taken,
        close: () =>
          new Promise((done) => {
            server.close(() => done());
            server.closeAllConnections();
          }),
      });
    });
  });
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: { port: { type: 'string' }, host: { type: 'string' }, base: { type: 'string' } },
  });
  const { address, close } = await serveFolder({
    folder: positionals[0] ?? 'dist',
    port: Number(values.port ?? 4321),
    ...(values.host && { host: values.host }),
    ...(values.base && { base: values.base }),
  });
  console.log(`Serving ${address}`);
  for (const signal of ['SIGINT', 'SIGTERM'])
    process.on(signal, () => void close().then(() => process.exit(0)));
}
