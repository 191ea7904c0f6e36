import { readFileSync } from 'node:fs';
import { brotliCompressSync, constants } from 'node:zlib';

const kept = new Map();

/** A file as a host sends it that packs each file once, as tightly as it can: brotli 11. Packed once a run. */
export function packed(path) {
  if (!kept.has(path)) {
    const options = { params: { [constants.BROTLI_PARAM_QUALITY]: 11 } };
    kept.set(path, brotliCompressSync(readFileSync(path), options));
  }
  return kept.get(path);
}
