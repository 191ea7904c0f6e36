import { readKeptForm } from './kept-form.ts';
import { startIsland, type IslandStart } from './start-island.ts';

const signsOfUse = ['pointerover', 'pointerdown', 'focusin', 'keydown', 'input', 'change'];

/** Whether there is more to show than the worked example that stands in the page. */
const hasEntries = (slug: string | true, island: HTMLElement): boolean =>
  (slug !== true && (location.hash.length > 1 || Object.keys(readKeptForm(slug)).length > 0)) ||
  island.contains(document.activeElement);

/** Whether the parts are on this device, so that it costs nothing to fetch them. */
const isSaved = (): boolean => 'serviceWorker' in navigator && navigator.serviceWorker.controller !== null;

/**
 * `client:use`: the island stands as the page brought it until somebody uses it; with a slug, as in
 * `client:use="unit-converter"`, also until it comes with a link or has entries here.
 */
const startWhenUsed: IslandStart = (load, { value: slug }, island) => {
  if (isSaved() || hasEntries(slug, island)) return void startIsland(load, island);
  const start = async ({ type }: Event): Promise<void> => {
    for (const sign of signsOfUse) island.removeEventListener(sign, start);
    removeEventListener('hashchange', start);
    island.setAttribute('ssr', '');
    await startIsland(load, island);
    if (type === 'hashchange') dispatchEvent(new Event(type));
  };
  island.removeAttribute('ssr'); // From now on nothing that is done to it is lost.
  for (const sign of signsOfUse) island.addEventListener(sign, start);
  addEventListener('hashchange', start);
};

export default startWhenUsed;
