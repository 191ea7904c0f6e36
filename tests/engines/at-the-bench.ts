import { expect } from 'vitest';
import type { EngineWindow } from './browser.ts';
import { answersReady, wordsOf } from './on-the-page.ts';

/** A session of an invented set, as a link. */
const link = 'bench-session/#v=1&g=all-adjustable&n=4&o=a&u=mmHg&tol=10';

export const savedOnDevice = 'Saved on this device only.';
export const savedLine = (window: EngineWindow) => wordsOf(window, '.log [role=status]');
/** What has to be known before the next reading; none where there is nothing. */
export const banner = (window: EngineWindow) => wordsOf(window, '.entry-side [role=alert]');
export const entries = (window: EngineWindow): Promise<string[]> =>
  window.evaluate(() =>
    [...document.querySelectorAll('.log .entries > li > span:nth-of-type(2)')]
      .map((line) => line.textContent ?? '')
      .toReversed(),
  );
/** The next step as the page says it. */
export const nextStep = (window: EngineWindow) => wordsOf(window, '#move');

export const openBench = async (window: EngineWindow, address: string): Promise<void> => {
  await window.open(`${address}bench-session/`);
  await expect.poll(() => answersReady(window)).toBe(true);
};

export const begin = async (window: EngineWindow, address: string): Promise<void> => {
  await window.open(address + link);
  await window.click('button', 'Start the session');
  await expect.poll(() => nextStep(window)).not.toBe('');
};

export const goOn = async (window: EngineWindow, address: string): Promise<void> => {
  await openBench(window, address);
  await window.click('button', 'Go on with');
  await expect.poll(() => nextStep(window)).not.toBe('');
};

export const enter = async (window: EngineWindow, reading: number): Promise<void> => {
  const before = await entries(window);
  await window.type('#reading', String(reading));
  await window.click('.entry [type=submit]');
  await expect.poll(async () => (await entries(window)).length).toBe(before.length + 1);
};

/** Enters a reading and waits until it is called saved. */
export const enterAndKeep = async (window: EngineWindow, reading: number): Promise<void> => {
  await enter(window, reading);
  await expect.poll(() => savedLine(window)).toBe(savedOnDevice);
};
