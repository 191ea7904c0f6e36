import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { listFiles } from './list-files.mjs';

/**
 * What a page may do, but for scripts and styles. The meta tag of every page says it, with the hashes of what stands
 * inline; the header file says it once more.
 */
export const directives = [
  "default-src 'none'",
  "img-src 'self'",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "object-src 'none'",
  "require-trusted-types-for 'script'",
  'trusted-types default', // src/device/trusted-addresses.ts
];

/** What the site needs of a device, and what it closes for itself and for whatever should get into it. */
const used = ['clipboard-write', 'screen-wake-lock'];
const closed = [
  'accelerometer',
  'autoplay',
  'camera',
  'clipboard-read',
  'display-capture',
  'encrypted-media',
  'fullscreen',
  'gamepad',
  'geolocation',
  'gyroscope',
  'hid',
  'idle-detection',
  'local-fonts',
  'magnetometer',
  'microphone',
  'midi',
  'payment',
  'picture-in-picture',
  'publickey-credentials-create',
  'publickey-credentials-get',
  'serial',
  'storage-access',
  'sync-xhr',
  'usb',
  'window-management',
  'xr-spatial-tracking',
];
const permissions = [...used.map((name) => `${name}=(self)`), ...closed.map((name) => `${name}=()`)].join(
  ', ',
);

export const headersFile = '_headers';

const charset = '<meta charset="utf-8">';
export const policyTag = /(<meta http-equiv="content-security-policy" content=")([^"]+)">/;
const inline = /<(?:script|style)\b(?![^>]*\ssrc=)[^>]*>(.+?)<\/(?:script|style)>/gs;
const hashOf = (text) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;

/**
 * Takes out of the policy of each page the hashes of what does not stand in it: a page may run its own scripts only. Puts
 * the policy first, so that it holds for all of the page; a browser asks for nothing that is named before it has read it.
 */
export function tightenPolicies(folder) {
  for (const file of listFiles(folder).filter((name) => name.endsWith('.html'))) {
    const path = join(folder, file);
    const html = readFileSync(path, 'utf8');
    const own = new Set([...html.matchAll(inline)].map(([, text]) => hashOf(text)));
    const [tag, before, policy] = policyTag.exec(html) ?? [];
    if (!tag) throw new Error(`${file} has no policy.`);
    const narrowed = policy.replace(/ '(?:sha256|sha384|sha512)-[^']+'/g, (hash) =>
      own.has(hash.trim()) ? hash : '',
    );
    writeFileSync(path, html.replace(tag, '').replace(charset, `${charset}${before}${narrowed}">`));
  }
}

/** What any page may do: the sources that one names of each directive, those of all pages together. */
function policyOfAll(folder) {
  const sources = new Map();
  for (const file of listFiles(folder).filter((name) => name.endsWith('.html'))) {
    const html = readFileSync(join(folder, file), 'utf8');
    const policy = policyTag.exec(html)?.[2];
    if (!policy) throw new Error(`${file} has no policy.`);
    for (const directive of policy.split(';').filter((text) => text.trim() !== '')) {
      const [name, ...values] = directive.trim().split(/\s+/);
      sources.set(name, new Set([...(sources.get(name) ?? []), ...values]));
    }
  }
  return [...sources].map(([name, values]) => `${[name, ...values].join(' ')};`).join('');
}

/**
 * Writes `_headers`, the form that common hosts of static sites read, at the root of the output. Its policy is that of
 * all pages together, since a browser holds a page to both, and says who may frame it, which only a header can.
 */
export function writeHeaders(folder, base) {
  const lines = [
    `${base}*`,
    `  Content-Security-Policy: ${policyOfAll(folder)}frame-ancestors 'none'`,
    `  Permissions-Policy: ${permissions}`,
    '  Referrer-Policy: no-referrer',
    '  X-Content-Type-Options: nosniff',
    '',
  ];
  writeFileSync(join(folder, headersFile), lines.join('\n'));
}

/** The headers that `_headers` of a built folder gives to every file. None when it is not there. */
export function readHeaders(folder) {
  let text;
  try {
    text = readFileSync(join(folder, headersFile), 'utf8');
  } catch {
    return {};
  }
  return Object.fromEntries(
    [...text.matchAll(/^ {2}([\w-]+): (.*)$/gm)].map(([, name, value]) => [name.toLowerCase(), value]),
  );
}
