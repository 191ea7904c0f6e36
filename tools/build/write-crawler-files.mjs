import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { listFiles } from './list-files.mjs';

/** robots.txt, and with SITE the sitemap: it needs absolute addresses. */
export function writeCrawlerFiles(folder, base, site) {
  const lines = ['User-agent: *', 'Allow: /'];
  if (site) {
    const addresses = listFiles(folder)
      .filter((file) => file.endsWith('index.html'))
      .filter(
        (file) =>
          !readFileSync(join(folder, file), 'utf8').includes('<meta name="robots" content="noindex">'),
      )
      .map((file) => new URL(base + file.replace(/index\.html$/, ''), site).href);
    const urls = addresses.map((address) => `  <url><loc>${address.replaceAll('&', '&amp;')}</loc></url>`);
    writeFileSync(
      join(folder, 'sitemap.xml'),
      [
        '<?xml version="1.0" encoding="UTF-8"?>',
        '<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">',
        ...urls,
        '</urlset>',
        '',
      ].join('\n'),
    );
    lines.push(`Sitemap: ${new URL(`${base}sitemap.xml`, site).href}`);
  }
  writeFileSync(join(folder, 'robots.txt'), `${lines.join('\n')}\n`);
}
