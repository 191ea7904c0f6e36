import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { readHeaders } from '../../tools/build/policy.mjs';
import { attribute, type BuiltPage, builds, faultsOn, pagesOf } from './built-site.ts';

const policySelector = 'meta[http-equiv="content-security-policy"]';

const policyOf = ({ document }: BuiltPage) =>
  policyOfText(attribute(document.querySelector(policySelector), 'content'));

/** Each directive with its sources in order, hashes apart. */
function policyOfText(text: string) {
  const sources = new Map<string, string[]>();
  const hashes = new Set<string>();
  for (const directive of text.split(';')) {
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

  it('allows this origin only, and nothing inline but what is hashed', () => {
    for (const page of pages)
      expect(policyOf(page).sources, page.address).toEqual({
        'default-src': ["'none'"],
        'script-src': ["'self'"],
        'style-src': ["'self'"],
        'img-src': ["'self'"],
        'font-src': ["'self'"],
        'connect-src': ["'self'"],
        'worker-src': ["'self'"],
        'manifest-src': ["'self'"],
        'base-uri': ["'none'"],
        'form-action': ["'none'"],
        'object-src': ["'none'"],
        'require-trusted-types-for': ["'script'"],
        'trusted-types': ['default'],
      });
  });

  it('stands in the file for hosts too, with who may frame a page', () => {
    const headers = readHeaders(build.folder);
    expect(Object.keys(headers).sort()).toEqual([
      'content-security-policy',
      'permissions-policy',
      'referrer-policy',
      'x-content-type-options',
    ]);
    const { 'frame-ancestors': framedBy, ...sources } = policyOfText(
      headers['content-security-policy'] ?? '',
    ).sources;
    expect(framedBy).toEqual(["'none'"]);
    expect(sources).toEqual(policyOf(pages[0]!).sources);
    expect(headers['permissions-policy']).toMatch(
      /^clipboard-write=\(self\), screen-wake-lock=\(self\)(, [a-z-]+=\(\)){20,}$/,
    );
    expect(headers['referrer-policy']).toBe('no-referrer');
    expect(headers['x-content-type-options']).toBe('nosniff');
    const lines = readFileSync(join(build.folder, '_headers'), 'utf8').split('\n');
    expect(lines[0]).toBe(`${build.base}*`);
    // The shortest limit of a line that a common host sets is 2,000 characters; from memory.
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThan(2000);
  });

  it('has in that file the hashes of all pages, and no other', () => {
    const header = policyOfText(readHeaders(build.folder)['content-security-policy'] ?? '');
    const ofPages = new Set(pages.flatMap((page) => [...policyOf(page).hashes]));
    expect(header.hashes).toEqual(ofPages);
    expect(header.hashes.size).toBeGreaterThan(2);
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

  it('knows no other hash: what does not stand in the page may not run in it', () => {
    const faults = faultsOn(pages, (page) => {
      const own = new Set(
        (['script', 'style'] as const).flatMap((element) =>
          inlineTexts(page.html, element).map((text) => `${element}-src ${hashOf(text)}`),
        ),
      );
      return [...policyOf(page).hashes].map((hash) => !own.has(hash) && `${hash} is of nothing here`);
    });
    expect(faults).toEqual([]);
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
