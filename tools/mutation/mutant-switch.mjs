/**
 * What every place of the code that Stryker has changed asks: `isActive`, is this the mutant that runs? It stands for the
 * functions that Stryker writes at the head of each file, which look up more each time: the loops of the practice engine
 * take half the time with it. One is made for each mutant.
 *
 * `hitLimit`: how often the mutant may be come to before its loop is taken for one that never ends.
 */
export function mutantSwitch(hitLimit = Infinity) {
  let active;
  let hitsLeft = hitLimit;
  let hits;

  return {
    isActive(mutant) {
      if (mutant !== active) return false;
      hitsLeft -= 1;
      if (hitsLeft < 0) throw new Error('Hit limit reached.');
      return true;
    },
    cover(...mutants) {
      if (hits === undefined) return;
      for (const mutant of mutants) hits[mutant] = (hits[mutant] ?? 0) + 1;
    },
    activate(mutant) {
      active = mutant;
    },
    hitLimitReached: () => hitsLeft < 0,
    /** How often each mutant was come to since the last call, by its number; nothing is counted before the first. */
    takeHits() {
      const taken = hits;
      hits = {};
      return taken;
    },
  };
}
