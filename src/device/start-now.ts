import { startIsland, type IslandStart } from './start-island.ts';

/** `client:now`: the island starts with the page, and takes what was typed before it could. */
const startNow: IslandStart = (load, _options, island) => void startIsland(load, island);

export default startNow;
