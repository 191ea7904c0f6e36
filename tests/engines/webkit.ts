import { once } from 'node:events';
import { spawn, type ChildProcess } from 'node:child_process';
import { mkdirSync } from 'node:fs';
import { createServer, type AddressInfo } from 'node:net';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import { Builder, Capabilities, type WebDriver, type WebElement } from 'selenium-webdriver';
import { callOf, findShown, patienceMs, type Engine, type EngineWindow } from './browser.ts';

const program = fileURLToPath(new URL('webkit-window.js', import.meta.url));

const freePort = async (): Promise<number> => {
  const server = createServer().listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = server.address() as AddressInfo;
  server.close();
  await once(server, 'close');
  return port;
};

const listens = async (address: string): Promise<void> => {
  const end = Date.now() + patienceMs;
  while (!(await fetch(`${address}/status`).catch(() => null))?.ok) {
    if (Date.now() > end) throw new Error('WebKitWebDriver does not answer');
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
};

const windowOf = (driver: WebDriver, handle: string): EngineWindow => {
  const here = async (): Promise<WebDriver> => {
    await driver.switchTo().window(handle);
    return driver;
  };
  const elementOf = async (selector: string, words = ''): Promise<WebElement> => {
    await here();
    const look = () => driver.executeScript<WebElement | null>(findShown, selector, words);
    return driver.wait(look, patienceMs, `${selector} “${words}” is not shown`) as Promise<WebElement>;
  };
  return {
    open: async (address) => (await here()).get(address),
    reload: async () => (await here()).navigate().refresh(),
    click: async (selector, words) => (await elementOf(selector, words)).click(),
    type: async (selector, text) => {
      const field = await elementOf(selector);
      await field.clear();
      await field.sendKeys(text);
    },
    choose: async (selector, file) => {
      const field = await (await here()).findElement({ css: selector });
      await field.sendKeys(file);
    },
    evaluate: async (work, ...given) => (await here()).executeScript(`return ${callOf(work, given)}`),
    picture: async () => Buffer.from(await (await here()).takeScreenshot(), 'base64'),
    close: async () => (await here()).close(),
  };
};

/** What WebKit writes of the consoles: `CONSOLE ERROR …`, `http://…:23:1: CONSOLE SECURITY WARN …`. */
const collectComplaints = (driver: ChildProcess): string[] => {
  const complaints: string[] = [];
  createInterface(driver.stderr!).on('line', (line) => {
    if (/\bCONSOLE (\S+ )?(ERROR|WARN)/u.test(line)) complaints.push(line);
  });
  return complaints;
};

/** WebKitGTK as Debian carries it, the engine of Safari; needs a screen. */
export const webkit: Engine = {
  name: 'WebKit',
  start: async ({ profile, beforeLoad }) => {
    const downloads = join(profile, 'downloads');
    mkdirSync(downloads, { recursive: true });
    const port = await freePort();
    const process = spawn('/usr/bin/WebKitWebDriver', [`--port=${port}`, '--host=127.0.0.1'], {
      stdio: ['ignore', 'ignore', 'pipe'],
    });
    const complaints = collectComplaints(process);
    const address = `http://127.0.0.1:${port}`;
    await listens(address);
    const args = ['-m', program, profile, ...(beforeLoad ? [beforeLoad] : [])];
    const wanted = { browserName: 'WebKitGTK', 'webkitgtk:browserOptions': { binary: '/usr/bin/gjs', args } };
    const driver = await new Builder()
      .usingServer(address)
      .withCapabilities(new Capabilities(wanted))
      .build();
    let isFirst = true;
    return {
      version: (await driver.getCapabilities()).getBrowserVersion() ?? '',
      downloads,
      complaints,
      newWindow: async () => {
        if (!isFirst) await driver.switchTo().newWindow('window');
        isFirst = false;
        return windowOf(driver, await driver.getWindowHandle());
      },
      close: async () => {
        await driver.quit();
        process.kill();
        await once(process, 'exit');
      },
    };
  },
};
