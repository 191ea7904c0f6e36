import type { EngineWindow } from './browser.ts';

export const savedWords =
  /^Saved for use without a network: version \d+\.\d+\.\d+-[0-9a-f]{8}, \d+(\.\d)? MB\.$/u;

/** The words of the first element of a selector, or none where there is no such element; without what only helps to break lines. */
export const wordsOf = async (window: EngineWindow, selector: string): Promise<string> => {
  const text = await window.evaluate(
    (given: string) => document.querySelector(given)?.textContent ?? '',
    selector,
  );
  return text.replaceAll('\u00ad', '').replaceAll(/\s+/gu, ' ').trim();
};

export const heading = (window: EngineWindow): Promise<string> => wordsOf(window, 'h1');
export const offlineLine = (window: EngineWindow): Promise<string> => wordsOf(window, '#offline');

/** Whether every island of the page answers, those aside that start when they are seen. */
export const answersReady = (window: EngineWindow): Promise<boolean> =>
  window.evaluate(
    () =>
      document.querySelector('astro-island') !== null &&
      document.querySelector('astro-island[ssr]:not([client="visible"])') === null,
  );
