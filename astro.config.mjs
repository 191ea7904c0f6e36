import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { satteri } from '@astrojs/markdown-satteri';
import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { defineConfig } from 'astro/config';
import { askTogether } from './tools/build/ask-together.mjs';
import { basePath } from './tools/build/base-path.mjs';
import { codeSplitting } from './tools/build/code-splitting.mjs';
import { islandStarts } from './tools/build/island-starts.mjs';
import { formulae, linksUnder } from './tools/build/markdown-plugins.mjs';
import { writeNotices } from './tools/build/notices.mjs';
import { directives } from './tools/build/policy.mjs';

const base = basePath();
const themeAtStart = readFileSync(new URL('./src/device/theme-at-start.js', import.meta.url));

export default defineConfig({
  base,
  ...(process.env.SITE ? { site: process.env.SITE } : {}),
  outDir: process.env.OUT_DIR ?? 'dist',
  trailingSlash: 'always',
  build: { format: 'directory', inlineStylesheets: 'always' }, // a style sheet of its own costs a phone one more wait
  devToolbar: { enabled: false },
  integrations: [mdx(), preact(), islandStarts],
  markdown: {
    syntaxHighlight: false, // its colours are inline styles, which the policy forbids
    processor: satteri({ features: { math: true }, mdastPlugins: [formulae, linksUnder(base)] }),
  },
  vite: {
    plugins: [writeNotices(), askTogether(base)],
    resolve: {
      alias: {
        '@astrojs/preact/client.js': fileURLToPath(
          new URL('./src/components/islands/arriving/hydrate-island.ts', import.meta.url),
        ),
      },
    },
    environments: { client: { build: { rolldownOptions: { output: { codeSplitting } } } } },
    build: {
      rolldownOptions: {
        // Astro's own mark on pages of a collection; the bundler warns of each, and the pages come out right.
        onLog: (level, log, handle) => log.code === 'MODULE_LEVEL_DIRECTIVE' || handle(level, log),
      },
    },
  },
  security: {
    csp: {
      directives,
      scriptDirective: {
        resources: ["'self'"],
        hashes: [`sha256-${createHash('sha256').update(themeAtStart).digest('base64')}`],
      },
      styleDirective: { resources: ["'self'"] },
    },
  },
});
