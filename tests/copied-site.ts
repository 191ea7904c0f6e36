import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { createServer, request as ask, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { serveFolder } from '../tools/serve.mjs';

/** A copy of the built site that may be changed, served until the work is done. */
export async function withCopy(
  folder: string,
  use: (site: { copy: string; address: string }) => Promise<void>,
): Promise<void> {
  const copy = mkdtempSync(join(tmpdir(), 'evendraw-'));
  cpSync(folder, copy, { recursive: true });
  const server = await serveFolder({ folder: copy });
  try {
    await use({ copy, address: server.address });
  } finally {
    await server.close();
    rmSync(copy, { recursive: true });
  }
}

/** A server between the page and the site, which answers otherwise where `instead` says that it has. */
export async function withFaults(
  site: string,
  instead: (path: string, answer: ServerResponse) => boolean,
  use: (address: string) => Promise<void>,
): Promise<void> {
  const server = createServer((request, answer) => {
    if (instead(request.url ?? '', answer)) return;
    const passed = ask(new URL(request.url ?? '', site), { headers: request.headers }, (given) => {
      answer.writeHead(given.statusCode ?? 500, given.headers);
      given.pipe(answer);
    });
    passed.on('error', () => answer.destroy());
    passed.end();
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  try {
    await use(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`);
  } finally {
    server.closeAllConnections();
    server.close();
  }
}

/** Ways in which a new version of the worker can be answered with something that is none. */
export const wrongWorkers = [
  { what: 'answers 500', status: 500, type: 'text/plain', body: 'Out of order' },
  { what: 'is some other page', status: 200, type: 'text/html', body: '<h1>Sign in to the network</h1>' },
  { what: 'is a script that breaks', status: 200, type: 'text/javascript', body: 'throw new Error("no");' },
];
