// Builds the site and serves it on this machine; with --host also to others on its network.
import './check-node.mjs';
import { networkInterfaces } from 'node:os';
import { parseArgs } from 'node:util';
import { basePath } from './build/base-path.mjs';
import { buildSite } from './build.mjs';
import { serveFolder } from './serve.mjs';

const usualPort = 4321;
const { values: options } = parseArgs({ options: { host: { type: 'boolean', default: false } } });

/** The port that PORT names, and only that one; else the first free one from the usual one upward. */
async function serveOnFreePort(site) {
  if (process.env.PORT) return serveFolder({ ...site, port: Number(process.env.PORT) });
  for (let port = usualPort; ; port++) {
    try {
      return await serveFolder({ ...site, port });
    } catch (error) {
      if (error.code !== 'EADDRINUSE' || port === usualPort + 100) throw error;
    }
  }
}

function sayWhereOthersFindIt(port, base) {
  const others = Object.values(networkInterfaces())
    .flat()
    .filter((one) => one && one.family === 'IPv4' && !one.internal);
  if (others.length === 0) console.log('This machine is on no network; other devices cannot reach it.');
  for (const { address } of others) console.log(`On this network: http://${address}:${port}${base}`);
  console.log(
    'Over plain http another device cannot save the site: use without a network needs an https address, or this machine itself.',
  );
}

for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => process.exit(0));

await buildSite();
const base = basePath();
const site = { folder: process.env.OUT_DIR ?? 'dist', base, host: options.host ? '0.0.0.0' : '127.0.0.1' };
const { port } = await serveOnFreePort(site).catch((error) => {
  console.error(
    error.code === 'EADDRINUSE'
      ? `Port ${process.env.PORT ?? usualPort} is taken. Free it, or set PORT to another.`
      : error.message,
  );
  process.exit(1);
});
if (options.host) sayWhereOthersFindIt(port, base);
console.log(`Ready: http://127.0.0.1:${port}${base}`);
