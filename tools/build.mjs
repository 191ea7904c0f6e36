// The whole production build: pages, then the search index over them, then the worker that saves both.
import './check-node.mjs';
import { pathToFileURL } from 'node:url';

/** Builds into OUT_DIR (dist), under BASE (/), for SITE (none). */
export async function buildSite() {
  const { basePath } = await import('./build/base-path.mjs');
  const { runAstro } = await import('./build/run-astro.mjs');
  const { tightenPolicies, writeHeaders } = await import('./build/policy.mjs');
  const { writeCrawlerFiles } = await import('./build/write-crawler-files.mjs');
  const { preloadParts } = await import('./build/preload-parts.mjs');
  const { writeSearchIndex } = await import('./build/write-search-index.mjs');
  const { writeWorker } = await import('./build/write-worker.mjs');
  const folder = process.env.OUT_DIR ?? 'dist';
  const base = basePath();

  await runAstro();
  tightenPolicies(folder);
  preloadParts(folder, base);
  const pages = await writeSearchIndex(folder, base);
  writeHeaders(folder, base);
  writeCrawlerFiles(folder, base, process.env.SITE);
  const { version, files, megabytes } = writeWorker(folder, base);
  console.log(
    `Built ${folder} at ${base}: ${pages} pages in the search index, ${files.length} files (${megabytes} MB) for use offline, version ${version}.`,
  );
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) await buildSite();
