import { beforeAll, describe, expect, it } from 'vitest';
import { attribute, type BuiltPage, builds, faultsOn, pagesOf, validator } from './built-site.ts';

/** Astro writes it before the first island, where HTML does not want a style sheet; every browser takes it. */
const astrosOwn = '<style>astro-island,astro-slot,astro-static-slot{display:contents}</style>';

describe.each(builds)('pages of $folder', (build) => {
  let pages: BuiltPage[] = [];
  beforeAll(async () => {
    pages = await pagesOf(build);
  });
  const expectNoFaults = (faultsOf: (page: BuiltPage) => (string | false)[]) =>
    expect(faultsOn(pages, faultsOf)).toEqual([]);

  it('has the front page, the search and the page for a wrong address', () => {
    expect(pages.map((page) => page.address)).toEqual(expect.arrayContaining(['', 'search/', '404.html']));
  });

  it('each page has one first heading, its language, a viewport and a place to skip to', () => {
    expectNoFaults(({ document }) => [
      document.querySelectorAll('h1').length !== 1 && `${document.querySelectorAll('h1').length} h1`,
      attribute(document.querySelector('html'), 'lang') !== 'en-GB' && 'language',
      !attribute(document.querySelector('meta[name="viewport"]'), 'content').includes('width=device-width') &&
        'viewport',
      document.querySelectorAll('main#main').length !== 1 && 'main',
      document.querySelector('a[href="#main"]') === null && 'skip link',
    ]);
  });

  it('each page has a title and a description of its own', () => {
    const titles = pages.map(({ document }) => document.querySelector('title')?.textContent ?? '');
    const descriptions = pages.map(({ document }) =>
      attribute(document.querySelector('meta[name="description"]'), 'content'),
    );
    for (const title of titles) expect(title).toMatch(/^\S.* · Evendraw$/);
    for (const description of descriptions) expect(description).toMatch(/^\S.{20,}[.?]$/s);
    expect(new Set(titles).size).toBe(pages.length);
    expect(new Set(descriptions).size).toBe(pages.length);
  });

  it('no two pages have the same first heading', () => {
    const headings = pages.map(({ document }) => document.querySelector('h1')?.textContent.trim() ?? '');
    expect(headings.filter((heading, place) => headings.indexOf(heading) !== place)).toEqual([]);
  });

  it('each drawing says the same in words, or is left out for those who hear the page', () => {
    let seen = 0;
    expectNoFaults(({ document }) =>
      document.querySelectorAll('svg, img, canvas').map((drawing) => {
        seen += 1;
        const named = attribute(drawing, 'aria-labelledby')
          .split(/\s+/)
          .map((id) => (id === '' ? null : document.querySelector(`[id="${id}"]`)))
          .some((element) => (element?.textContent.trim() ?? '') !== '');
        const words = [attribute(drawing, 'aria-label'), attribute(drawing, 'alt')].some(
          (text) => text.trim().length > 2,
        );
        const isHidden = drawing.closest('[aria-hidden="true"]') !== null;
        if (isHidden || named || words) return false;
        return `${drawing.tagName} ${attribute(drawing, 'class')} has no text`;
      }),
    );
    expect(seen).toBeGreaterThan(pages.length);
  });

  it('each figure has a caption', () => {
    expectNoFaults(({ document }) =>
      document
        .querySelectorAll('figure')
        .map(
          (figure) => (figure.querySelector('figcaption')?.textContent.trim() ?? '') === '' && 'no caption',
        ),
    );
  });

  it('each table names its columns or its rows', () => {
    expectNoFaults(({ document }) =>
      document
        .querySelectorAll('table')
        .map((table) => table.querySelector('th') === null && 'a table without a heading'),
    );
  });

  it('each page marks where it stands, if the head names that place', () => {
    expectNoFaults(({ document, address }) => {
      const here = document
        .querySelectorAll('.head nav a')
        .find((link) => attribute(link, 'href') === build.base + address);
      const marked = document.querySelectorAll('.head nav a[aria-current]');
      return [
        here !== undefined && attribute(here, 'aria-current') !== 'page' && 'its own link is not marked',
        marked.length > 1 && 'several links are marked',
      ];
    });
  });

  it('each page is well-formed HTML', async () => {
    const faults: string[] = [];
    for (const { address, html } of pages) {
      const { results } = await validator.validateString(html.replace(astrosOwn, ''), 'page.html');
      for (const { messages } of results)
        faults.push(
          ...messages.map(
            (one) => `${address}: ${one.message} (${one.ruleId}, ${one.selector ?? one.offset})`,
          ),
        );
    }
    expect(faults).toEqual([]);
  });
});
