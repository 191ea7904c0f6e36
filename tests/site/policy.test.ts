import { createHash } from 'node:crypto';
import { beforeAll, describe, expect, it } from 'vitest';
import { attribute, type BuiltPage, builds, faultsOn, pagesOf } from './built-site.ts';

const policySelector = 'meta[http-equiv="content-security-policy"]';

/** Each directive with its sources in order, hashes apart. */
function policyOf({ document }: BuiltPage) {
  const sources = new Map<string, string[]>();
  const hashes = new Set<string>();
  for (const directive of attribute(document.querySelector(policySelector), 'content').split(';')) {
    const [name, ...values] = directive.trim().split(/\s+/);
    if (!name) continue;
    sources.set(name, values.filter((value) => !value.startsWith("'sha")).sort());
    for (const value of values) if (value.startsWith("'sha")) hashes.add(`${name} ${value}`);
  }
  return { sources: Object.fromEntries(sources), hashes };
}

/** The text of every inline element of a kind, as it stands in the file: that is what a browser hashes. */
function inlineTexts(html: string, element: 'script' | 'style'): string[] {
  const texts = html.matchAll(new RegExp(`<${element}(?![^>]*\\ssrc=)[^>]*>(.*?)</${element}>`, 'gs'));
  return [...texts].map((match) => match[1] ?? '').filter((text) => text !== '');
}

const hashOf = (text: string) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;

describe.each(builds)('policy of $folder', (build) => {
  let pages: BuiltPage[] = [];
  beforeAll(async () => {
    pages = await pagesOf(build);
    expect(pages.length).toBeGreaterThan(2);
  });

  it('allows this origin only, nothing inline but what is hashed, and WebAssembly for the search', () => {
    for (const page of pages)
      expect(policyOf(page).sources, page.address).toEqual({
        'default-src': ["'none'"],
        'script-src': ["'self'", "'wasm-unsafe-eval'"],
        'style-src': ["'self'"],
        'img-src': ["'self'", 'data:'],
        'font-src': ["'self'"],
        'connect-src': ["'self'"],
        'worker-src': ["'self'"],
        'manifest-src': ["'self'"],
        'base-uri': ["'none'"],
        'form-action': ["'none'"],
        'object-src': ["'none'"],
      });
  });

  it('stands once, before anything that it has to hold', () => {
    const faults = faultsOn(pages, ({ html, document }) => [
      document.querySelectorAll(policySelector).length !== 1 && 'not one policy',
      html.search(/<link rel="stylesheet"|<script[^>]* src=|<style/) <
        html.indexOf('content-security-policy') &&
        /<link rel="stylesheet"|<script[^>]* src=|<style/.test(html) &&
        'something is loaded before the policy',
    ]);
    expect(faults).toEqual([]);
  });

  it('knows the hash of every inline script and style', () => {
    let seen = 0;
    const faults = faultsOn(pages, (page) => {
      const { hashes } = policyOf(page);
      return (['script', 'style'] as const).flatMap((element) =>
        inlineTexts(page.html, element).map((text) => {
          seen += 1;
          return (
            !hashes.has(`${element}-src ${hashOf(text)}`) &&
            `${element} not in the policy: ${text.slice(0, 60)}`
          );
        }),
      );
    });
    expect(faults).toEqual([]);
    expect(seen).toBeGreaterThanOrEqual(pages.length); // the script that sets the colours is on every page
  });

  it('finds no inline style, no inline handler and no script address', () => {
    const faults = faultsOn(pages, ({ document }) =>
      document.querySelectorAll('*').flatMap((element) =>
        element.attributes.map(({ key, value }) => {
          const isFault = key === 'style' || /^on/.test(key) || /^\s*javascript:/i.test(String(value ?? ''));
          return isFault && `${element.tagName} has ${key}="${String(value)}"`;
        }),
      ),
    );
    expect(faults).toEqual([]);
  });
});
