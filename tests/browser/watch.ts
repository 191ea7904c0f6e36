import AxeBuilder from '@axe-core/playwright';
import { type Page, test } from '@playwright/test';

const standards = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22a', 'wcag22aa'];

/** Collects what must not happen: errors, breaches of the policy, requests to anywhere else. */
export async function watch(page: Page): Promise<string[]> {
  const faults: string[] = [];
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) faults.push(`console: ${message.text()}`);
  });
  page.on('pageerror', (error) => faults.push(`error: ${error.message}`));
  page.context().on('request', (request) => {
    const { origin, protocol } = new URL(request.url());
    const isOurs = origin === new URL(test.info().project.use.baseURL!).origin;
    if (!isOurs && !['data:', 'blob:'].includes(protocol)) faults.push(`request: ${request.url()}`);
  });
  await page.exposeFunction('reportBreach', (text: string) => faults.push(text));
  await page.addInitScript(() => {
    addEventListener('securitypolicyviolation', (event) => {
      const report = (globalThis as unknown as { reportBreach(text: string): void }).reportBreach;
      report(
        `policy: ${event.violatedDirective} ${event.blockedURI} ${event.sourceFile}:${event.lineNumber}`,
      );
    });
  });
  return faults;
}

/** What axe finds on the page, or one part of it, as it stands, as lines; and how many of its rules were passed. */
export async function axeFindings(page: Page, part = 'html'): Promise<{ found: string[]; passes: number }> {
  const { violations, passes } = await new AxeBuilder({ page }).include(part).withTags(standards).analyze();
  const found = violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(' ')}`);
  return { found, passes: passes.length };
}
