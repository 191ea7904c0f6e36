import { h, hydrate, type ComponentType } from 'preact';

/**
 * Wakes an island that stands in the page: the client side of the renderer. In place of that of the library, which
 * also carries signals, and markup inside an island.
 */
const hydrateIsland =
  (island: HTMLElement) =>
  async (view: ComponentType, props: object): Promise<void> => {
    if (island.hasAttribute('ssr')) hydrate(h(view, props), island);
  };

export default hydrateIsland;
