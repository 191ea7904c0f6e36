import { spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { connect, createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { serveFolder } from '../../tools/serve.mjs';

describe('serveFolder', () => {
  let folder = '';
  let site: Awaited<ReturnType<typeof serveFolder>>;
  const page = 'x'.repeat(2000);
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'evendraw-'));
    mkdirSync(join(folder, 'site', '_astro'), { recursive: true });
    mkdirSync(join(folder, 'site', 'safety'));
    writeFileSync(join(folder, 'secret.txt'), 'secret');
    writeFileSync(join(folder, 'site', 'index.html'), page);
    writeFileSync(join(folder, 'site', '404.html'), 'no such page');
    writeFileSync(join(folder, 'site', 'safety', 'index.html'), 'safety');
    writeFileSync(join(folder, 'site', 'sw.js'), '//');
    writeFileSync(join(folder, 'site', '_astro', 'a.B1c2.js'), '//');
    writeFileSync(join(folder, 'site', 'manifest.webmanifest'), '{}');
    site = await serveFolder({ folder: join(folder, 'site'), base: '/club/' });
  });
  afterAll(async () => {
    await site.close();
    rmSync(folder, { recursive: true });
  });
  const get = (path: string, init?: RequestInit) =>
    fetch(new URL(path, site.address), { redirect: 'manual', ...init });

  it.each([
    ['/club/', 200, 'text/html; charset=utf-8', 'no-cache'],
    ['/club/?from=here', 200, 'text/html; charset=utf-8', 'no-cache'],
    ['/club/safety/', 200, 'text/html; charset=utf-8', 'no-cache'],
    ['/club/sw.js', 200, 'text/javascript; charset=utf-8', 'no-cache'],
    ['/club/manifest.webmanifest', 200, 'application/manifest+json', 'no-cache'],
    ['/club/_astro/a.B1c2.js', 200, 'text/javascript; charset=utf-8', 'public, max-age=31536000, immutable'],
    ['/club/none/', 404, 'text/html; charset=utf-8', 'no-cache'],
    ['/club/sw.js/', 404, 'text/html; charset=utf-8', 'no-cache'],
    ['/safety/', 404, 'text/html; charset=utf-8', 'no-cache'],
    ['/club/%zz', 404, 'text/html; charset=utf-8', 'no-cache'],
  ])('%s is answered with %i, %s, %s', async (path, status, type, caching) => {
    const response = await get(path);
    expect(response.status).toBe(status);
    expect(response.headers.get('content-type')).toBe(type);
    expect(response.headers.get('cache-control')).toBe(caching);
    expect(response.headers.get('x-content-type-options')).toBe('nosniff');
  });

  it.each([
    ['/club/safety', '/club/safety/'],
    ['/club', '/club/'],
  ])('%s leads to %s', async (path, target) => {
    const response = await get(path);
    expect(response.status).toBe(301);
    expect(response.headers.get('location')).toBe(target);
  });

  it('packs text for those who ask, and sends the same text', async () => {
    const packed = await get('/club/', { headers: { 'accept-encoding': 'br' } });
    expect(packed.headers.get('content-encoding')).toBe('br');
    expect(await packed.text()).toBe(page);
    const plain = await get('/club/', { headers: { 'accept-encoding': 'identity' } });
    expect(plain.headers.get('content-encoding')).toBeNull();
    expect(plain.headers.get('content-length')).toBe('2000');
  });

  it.each([
    '/club/../secret.txt',
    '/club/%2e%2e/secret.txt',
    '/club/..%2fsecret.txt',
    '/club/safety/../../secret.txt',
    '/club/%00',
  ])('nothing outside the folder is sent: %s', async (path) => {
    // As raw bytes: a URL of the language would resolve the dots before they are sent.
    const answer = await new Promise<string>((resolve, reject) => {
      const socket = connect(site.port, '127.0.0.1', () =>
        socket.write(`GET ${path} HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n`),
      );
      let text = '';
      socket.on('data', (chunk) => (text += String(chunk)));
      socket.on('end', () => resolve(text)).on('error', reject);
    });
    expect(answer).toMatch(/^HTTP\/1\.1 404 /);
    expect(answer).not.toContain('secret');
  });

  it('sends the headers that the folder asks for, with pages, files and what is missing, and not the list', async () => {
    writeFileSync(
      join(folder, 'site', '_headers'),
      "/club/*\n  Content-Security-Policy: default-src 'none'\n  Referrer-Policy: same-origin\n",
    );
    const other = await serveFolder({ folder: join(folder, 'site'), base: '/club/' });
    for (const path of ['', 'sw.js', 'none/']) {
      const { headers } = await fetch(other.address + path);
      expect(headers.get('content-security-policy')).toBe("default-src 'none'");
      expect(headers.get('referrer-policy')).toBe('same-origin');
      expect(headers.get('x-content-type-options')).toBe('nosniff');
    }
    expect((await fetch(`${other.address}_headers`)).status).toBe(404);
    await other.close();
  });

  it('only reads', async () => {
    const response = await get('/club/', { method: 'POST' });
    expect(response.status).toBe(405);
    expect(response.headers.get('allow')).toBe('GET, HEAD');
    const head = await get('/club/', { method: 'HEAD' });
    expect(head.status).toBe(200);
    expect(await head.text()).toBe('');
  });

  it('says when the port is taken', async () => {
    await expect(serveFolder({ folder, port: site.port })).rejects.toMatchObject({ code: 'EADDRINUSE' });
  });
});

describe('npm start', () => {
  const outDir = 'dist-start';
  afterAll(() => rmSync(outDir, { recursive: true, force: true }));

  it('builds, takes the next free port, says alone on a line where it is, and ends with 0', async () => {
    // Taken by us, or by someone else already.
    const holder = createServer()
      .on('error', () => undefined)
      .listen(4321, '127.0.0.1');
    const env = { ...process.env, OUT_DIR: outDir, BASE: '/club/', SITE: '', PORT: '' };
    const child = spawn(process.execPath, ['tools/start.mjs', '--host'], { env });
    const ended = new Promise<number | null>((resolve) => child.on('exit', resolve));
    let words = '';
    for await (const chunk of child.stdout) {
      words += String(chunk);
      if (/^Ready: .*\n/m.test(words)) break;
    }
    const address = /^Ready: (http:\/\/127\.0\.0\.1:\d+\/club\/)$/m.exec(words)?.[1] ?? '';
    expect(Number(new URL(address).port)).toBeGreaterThan(4321);
    expect((await fetch(address)).status).toBe(200);
    expect(words).toContain('use without a network needs an https address');
    child.kill('SIGTERM');
    expect(await ended).toBe(0);
    holder.close();
  }, 120_000);
});
