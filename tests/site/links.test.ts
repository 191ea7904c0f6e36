import { beforeAll, describe, expect, it } from 'vitest';
import { addressOf } from '../../tools/build/write-worker.mjs';
import { attribute, type BuiltPage, builds, faultsOn, filesOf, pagesOf } from './built-site.ts';

const origin = 'https://this.site.example';

/** Addresses that a page loads or leads to. */
function addressesOn({ document }: BuiltPage): string[] {
  return ['href', 'src', 'component-url', 'renderer-url', 'before-hydration-url'].flatMap((name) =>
    document.querySelectorAll(`[${name}]`).map((element) => attribute(element, name)),
  );
}

describe.each(builds)('links of $folder', (build) => {
  let pages: BuiltPage[] = [];
  let files = new Set<string>();
  const anchors = new Map<string, Set<string>>();
  beforeAll(async () => {
    pages = await pagesOf(build);
    files = new Set(filesOf(build).map(addressOf));
    for (const page of pages)
      anchors.set(
        page.address,
        new Set(page.document.querySelectorAll('[id]').map((one) => attribute(one, 'id'))),
      );
  });

  it('lead to files that are there, and to places that are on them', () => {
    let checked = 0;
    const faults = faultsOn(pages, (page) =>
      addressesOn(page).map((address) => {
        const url = new URL(address, origin + build.base + page.address);
        if (url.origin !== origin) return false;
        checked += 1;
        if (!url.pathname.startsWith(build.base)) return `${address} is outside ${build.base}`;
        const target = decodeURIComponent(url.pathname.slice(build.base.length));
        if (!files.has(target)) return `${address} leads nowhere`;
        const place = decodeURIComponent(url.hash.slice(1));
        // A fragment of the form key=value is the state of a calculator, not a place.
        const isPlace = place !== '' && !place.includes('=');
        return isPlace && !anchors.get(target)?.has(place) && `${address} names a place that is not there`;
      }),
    );
    expect(faults).toEqual([]);
    expect(checked).toBeGreaterThan(10 * pages.length);
  });

  it('lead from the front page to every page that asks to be found', () => {
    const linked = new Map(
      pages.map((page) => [
        page.address,
        page.document
          .querySelectorAll('a[href]')
          .map((link) => new URL(attribute(link, 'href'), origin + build.base + page.address))
          .filter((url) => url.origin === origin && url.pathname.startsWith(build.base))
          .map((url) => decodeURIComponent(url.pathname.slice(build.base.length))),
      ]),
    );
    const reached = new Set(['']);
    for (const address of reached) for (const next of linked.get(address) ?? []) reached.add(next);
    const wanted = pages.filter(({ document }) => document.querySelector('[data-pagefind-body]'));
    expect(wanted.map(({ address }) => address).filter((address) => !reached.has(address))).toEqual([]);
    expect(reached.size).toBeGreaterThan(20);
  });

  it('load nothing from another origin; only a reader who follows a link leaves', () => {
    const faults = faultsOn(pages, ({ document }) =>
      document.querySelectorAll('[src], link[href], [srcset], form[action]').map((element) => {
        const relation = attribute(element, 'rel');
        const address =
          attribute(element, 'src') || attribute(element, 'href') || attribute(element, 'action');
        if (relation === 'canonical') return false;
        return (
          new URL(address, origin).origin !== origin && !address.startsWith('data:') && `loads ${address}`
        );
      }),
    );
    expect(faults).toEqual([]);
  });

  it(
    build.site ? 'carry the absolute address that SITE gave' : 'carry no absolute address of this site',
    () => {
      for (const page of pages) {
        const isPublic = page.document.querySelector('meta[name="robots"]') === null;
        const expected = build.site && isPublic ? build.site + build.base + page.address : '';
        expect(attribute(page.document.querySelector('link[rel="canonical"]'), 'href')).toBe(expected);
        expect(attribute(page.document.querySelector('meta[property="og:url"]'), 'content')).toBe(expected);
      }
      expect(files.has('sitemap.xml')).toBe(build.site !== undefined);
    },
  );
});
