import { readFileSync } from 'node:fs';
import { expect, type Page } from '@playwright/test';
import type { TestEngine } from '../engine/engine.ts';
import type { Random } from '../engine/random.ts';

/** Conventional millimetre of mercury in pascals (ISO 80000-4). */
const mmHg = 133.322387415;

export type PersonsEngine = {
  readonly engine: TestEngine;
  /** Name of each screw as the page calls it. */
  readonly screws: readonly string[];
  /** Which way really opens the screws. */
  readonly opens: 'clockwise' | 'anticlockwise';
};

/**
 * Somebody at the bench: reads the screen, does with the engine what it says, types what the gauge shows. It knows of the
 * advice only what stands on the screen.
 */
export class BenchPerson {
  readonly page: Page;
  private readonly random: Random;
  private readonly keys: boolean;
  private time = new Date('2026-11-14T09:00:00Z').getTime();

  constructor(page: Page, random: Random, options: { keys: boolean }) {
    this.page = page;
    this.random = random;
    this.keys = options.keys;
  }

  /** One action a time, 24 seconds apart. */
  async tick(): Promise<void> {
    this.time += 24_000;
    await this.page.clock.setFixedTime(this.time);
  }

  async open(address = './bench-session/'): Promise<void> {
    await this.page.clock.setFixedTime(this.time);
    await this.page.goto(address);
    await this.page.locator('astro-island:not([ssr])').first().waitFor({ state: 'attached' });
  }

  async move(): Promise<string> {
    return ((await this.page.locator('#move').textContent()) ?? '').replaceAll(/\s/gu, ' ');
  }

  /** A reading of the engine as this gauge shows it, typed in one of three ways. */
  asTyped(depressionPa: number): string {
    const value = Math.round(depressionPa / mmHg);
    return this.random.pick([`${value}`, `${value} mmHg`, `${value / 10} cmHg`.replace('.', ',')]);
  }

  async record(text: string): Promise<void> {
    if (this.keys && /^[\d.,/ ]+$/u.test(text))
      for (const key of text)
        await this.page.locator('.entry').getByRole('button', { name: key, exact: true }).click();
    else await this.page.locator('#reading').fill(text);
    const lines = this.page.locator('.log .entries > li');
    const events = await lines.count();
    await this.page.locator('.entry [type=submit]').click();
    await lines.nth(events).waitFor();
  }

  /** Does one step. Returns what the step was. */
  async step({
    engine,
    screws,
    opens,
  }: PersonsEngine): Promise<'read' | 'turn' | 'done' | 'sign-off' | 'stop'> {
    await this.tick();
    const move = await this.move();
    if (move.startsWith('Stop here')) {
      await this.page.getByRole('button', { name: 'Start the sign-off round' }).click();
      return 'done';
    }
    if (move.startsWith('Balanced')) {
      await this.page.getByRole('button', { name: 'Sign off', exact: true }).click();
      return 'sign-off';
    }
    if (move.startsWith('Stop')) return 'stop';
    if (move.includes('moved the wrong way')) {
      await this.page.getByRole('button', { name: 'It is right as recorded' }).click();
      return this.step({ engine, screws, opens });
    }
    const turned = await this.turnAsShown(move, { engine, screws, opens });
    const label = (await this.page.locator('.reading b').textContent()) ?? '';
    const carburettor = Number(/\d+/u.exec(label)?.[0]);
    engine.wait(0.4);
    await this.record(this.asTyped(engine.read(carburettor).depressionPa));
    return turned ? 'turn' : 'read';
  }

  private async turnAsShown(move: string, { engine, screws, opens }: PersonsEngine): Promise<boolean> {
    const amount = /by (?:(\d+) )?(?:(\d+)\/(\d+)|(\d+)) turns?/u.exec(move);
    if (!amount) return false;
    const [, whole, top, bottom, only] = amount;
    const size = Number(whole ?? 0) + (only ? Number(only) : Number(top) / Number(bottom));
    const screw = screws.findIndex((name) => move.includes(name)) + 1;
    expect(screw, `a screw in “${move}”`).toBeGreaterThan(0);
    const caption = ((await this.page.locator('.turn figcaption').textContent()) ?? '').replaceAll(
      '\u00ad',
      '',
    );
    const way = caption.startsWith('anticlockwise') ? 'anticlockwise' : 'clockwise';
    engine.turn(screw, way === opens ? size : -size);
    return true;
  }

  /** Saves the session to a file and gives its text. */
  async saveFile(): Promise<string> {
    const download = this.page.waitForEvent('download');
    await this.page.getByRole('button', { name: 'Save to a file' }).first().click();
    return readFileSync(await (await download).path(), 'utf8');
  }
}
