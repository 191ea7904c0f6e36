import { build } from 'astro';

/** Pages, formulae, islands and styles. Reads astro.config.mjs, and through it BASE, SITE and OUT_DIR. */
export async function runAstro() {
  await build({ logLevel: 'warn' });
}
