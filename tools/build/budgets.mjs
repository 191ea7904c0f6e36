/**
 * Budgets in bytes, by kind of page. `all` counts everything that the page asks for as it is opened, `scripts` the
 * JavaScript of it, `inUse` the JavaScript once every part of the page has been used.
 */
export const budgets = {
  prose: { all: 20_000 },
  formulae: { all: 30_000, first: 20_000, nodes: 6000 },
  calculator: { all: 35_000, scripts: 20_000, inUse: 45_000 },
  'bench session': { all: 60_000, scripts: 40_000, inUse: 80_000 },
  'practice engine': { all: 70_000, scripts: 50_000, inUse: 60_000 },
};
