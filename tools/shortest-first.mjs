import { BaseSequencer } from 'vitest/node';

/** Longest time that each file has taken so far: a run that a failure ends early says little. */
const longestMs = new Map();

/** Short test files first, so that a mutant which any of them notices does not wait for a long one. */
export class ShortestFirst extends BaseSequencer {
  async sort(files) {
    for (const file of files) {
      const ms = this.ctx.cache.getTestSpecificationResult(file)?.duration ?? 0;
      longestMs.set(file.moduleId, Math.max(ms, longestMs.get(file.moduleId) ?? 0));
    }
    return files.toSorted((a, b) => longestMs.get(a.moduleId) - longestMs.get(b.moduleId));
  }
}
