import { expect, type Page } from '@playwright/test';

/** Share of the throttle's reach to a revolution per minute, roughly: what a person learns in the first minute. */
const reachPerRpm = 1 / 4500;
const throttleStep = 0.0025;
const goodTap = '0.15';

/** Somebody at the practice engine: sees what stands on the screen, and presses what can be pressed. */
export class PracticePerson {
  readonly page: Page;

  constructor(page: Page) {
    this.page = page;
  }

  async open(fragment = ''): Promise<void> {
    await this.page.goto(`./practice-engine/${fragment}`);
    await this.page.locator('astro-island:not([ssr])').first().waitFor({ state: 'attached' });
  }

  /** To the engine, with time passing as fast as it can. */
  async begin(lesson?: string): Promise<void> {
    if (lesson === undefined) await this.press('Go to the engine');
    else await this.page.locator(`[data-lesson="${lesson}"]`).getByRole('button').click();
    await this.side('Engine');
    await this.page.getByRole('button', { name: 'Time ×16' }).click();
    await this.side('Gauge');
  }

  async press(name: string): Promise<void> {
    await this.page.getByRole('button', { name, exact: true }).click();
  }

  /** One of the three panels, where there is no room for all. */
  async side(name: 'Gauge' | 'Screws' | 'Engine'): Promise<void> {
    await this.page.locator('#move').waitFor();
    const button = this.page.locator('.sides').getByRole('button', { name });
    if (await button.isVisible()) await button.click();
  }

  /** What the page says is to be done. */
  async move(): Promise<string> {
    return ((await this.page.locator('#move').textContent()) ?? '').replaceAll(/\s/gu, ' ');
  }

  async seconds(): Promise<number> {
    const [minutes = 0, seconds = 0] = ((await this.page.locator('.practice .bar b').textContent()) ?? '')
      .split(':')
      .map(Number);
    return 60 * minutes + seconds;
  }

  /** Waits so long by the engine's clock. */
  async wait(engineSeconds: number): Promise<void> {
    const until = (await this.seconds()) + engineSeconds;
    await expect.poll(() => this.seconds(), { intervals: [50], timeout: 60_000 }).toBeGreaterThan(until);
  }

  async rpm(): Promise<number> {
    return Number.parseInt((await this.page.locator('.tachometer output').textContent()) ?? '', 10);
  }

  async holdSpeed(): Promise<void> {
    const throttle = this.page.getByRole('slider', { name: 'Throttle' });
    for (let tries = 0; tries < 40; tries += 1) {
      const words = (await this.page.locator('.tachometer .aside').textContent()) ?? '';
      if (words === 'speed is right') return;
      const off = Number.parseInt(words, 10) * (words.includes('slow') ? 1 : -1);
      const steps = Math.round((off * reachPerRpm) / throttleStep) || Math.sign(off);
      const reach = Number(await throttle.inputValue()) + steps * throttleStep;
      await throttle.fill(String(Math.max(0, Math.round(reach / throttleStep) * throttleStep)));
      await this.wait(2);
    }
    throw new Error('the speed cannot be held');
  }

  async warmUp(): Promise<void> {
    await this.holdSpeed();
    await expect(this.page.locator('.practice .bar')).toContainText('warm', { timeout: 120_000 });
    await this.side('Engine');
    await this.press('Fan');
    await this.side('Gauge');
  }

  /** Vents, connects a carburettor, brings the speed back, waits and writes down what the needle shows. */
  async read(carburettor: number): Promise<void> {
    const { page } = this;
    await this.side('Gauge');
    await page.getByRole('slider', { name: 'Tap' }).fill(goodTap);
    await this.press('shut');
    await this.press('Vent');
    await page.getByRole('button', { name: new RegExp(`^Carburettor ${carburettor}\\b`, 'u') }).click();
    await this.holdSpeed();
    await this.wait(3);
    await this.press('Write down this reading');
  }

  /** Turns by counted steps, and locks it with the screw held. */
  async turn(way: 'Open' | 'Close', sixtieths: number): Promise<void> {
    const { page } = this;
    await this.press('Loosen the nut');
    for (const [step, name] of [
      [30, '1/2'],
      [15, '1/4'],
      [1, '1/60'],
    ] as const)
      for (; sixtieths >= step; sixtieths -= step)
        await page.getByRole('button', { name: `${way} by ${name} turn`, exact: true }).click();
    await this.press('Hold and tighten');
  }

  /** Does what the bench session says, once. Returns whether that was the last. */
  async followAdvice(): Promise<'go-on' | 'signed-off' | 'stop'> {
    const move = await this.move();
    const read = /^Read carburettor (\d)/u.exec(move);
    const turn = /^(Open|Close) .* by (?:(\d+) )?(?:(\d+)\/(\d+)|(\d+)) turns?$/u.exec(move);
    if (read) await this.read(Number(read[1]));
    else if (turn) {
      const [, way, whole = 0, top, bottom, only] = turn;
      const turns = only === undefined ? Number(top) / Number(bottom) : Number(only);
      await this.page.locator('#move button').click();
      await this.turn(way as 'Open' | 'Close', Math.round(60 * (Number(whole) + turns)));
    } else if (move.startsWith('Stop here')) await this.press('Start the sign-off round');
    else if (move.startsWith('Balanced')) return 'signed-off';
    else if (move.startsWith('Stop')) return 'stop';
    else throw new Error(`what is “${move}”?`);
    return 'go-on';
  }

  /** Until the bench session has signed off. Returns how many steps it took. */
  async followAdviceToTheEnd(): Promise<number> {
    for (let steps = 0; steps < 60; steps += 1) {
      const end = await this.followAdvice();
      expect(end, `after ${steps} steps`).not.toBe('stop');
      if (end === 'signed-off') return steps;
    }
    throw new Error('the advice does not come to an end');
  }

  async showTruth(): Promise<void> {
    await this.side('Engine');
    await this.press('Show the truth');
  }
}
